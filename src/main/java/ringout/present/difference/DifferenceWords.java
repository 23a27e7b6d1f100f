package ringout.present.difference;

import java.util.List;
import java.util.stream.Collectors;
import ringout.compare.fleet.Tail;
import ringout.compare.judge.Judged;
import ringout.compare.judge.Retest;
import ringout.finding.Finding;
import ringout.finding.Place;
import ringout.model.Aircraft;
import ringout.present.words.ReadingWords;

/** Parts of a difference in words. */
final class DifferenceWords {
    private DifferenceWords() {}

    /** An aircraft: designation or name, tail, revisions. */
    static String of(Aircraft aircraft) {
        String name = aircraft.designation().or(aircraft.name());
        String tail = aircraft.tail().known().map(told -> " tail " + told).orElse("");
        String revision =
                aircraft.typeRevision().known().map(letter -> " rev " + letter).orElse("");
        String built = aircraft.tailRevision()
                .known()
                .map(number -> " as-built " + number)
                .orElse("");
        return name + tail + revision + built;
    }

    static String of(Tail tail) {
        return tail.aircraft().tail().known().map(told -> "tail " + told).orElse(tail.name());
    }

    static String change(Judged judged) {
        return judged.difference().what() + ": " + judged.difference().change();
    }

    static String place(Place place) {
        return place.span().known() ? place.span().words() + ", " + place.words() : place.words();
    }

    static String places(List<Place> places) {
        return places.stream().map(DifferenceWords::place).collect(Collectors.joining("; "));
    }

    static String finding(Finding finding) {
        return finding.severity() + " " + finding.code() + " " + finding.title();
    }

    static String retest(Retest test) {
        String expected = expected(test);
        return test.kind().word() + " " + test.what() + (expected.isEmpty() ? "" : ": " + expected);
    }

    /** What the meter shows now, and when put back where that is something else. */
    static String expected(Retest test) {
        String now = test.expected().map(ReadingWords::of).orElse("");
        String back = test.putBack().map(ReadingWords::of).orElse(now);
        return back.equals(now) ? now : now + " as it is now, " + back + " when put back";
    }

    static String plural(long count, String word) {
        return count + " " + word + (count == 1 ? "" : "s");
    }
}
