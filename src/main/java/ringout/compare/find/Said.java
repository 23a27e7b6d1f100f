package ringout.compare.find;

import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import ringout.compare.difference.Difference;
import ringout.compare.difference.Kind;
import ringout.compare.difference.Touched;
import ringout.finding.Place;

/** Puts fields that differ into one difference. */
final class Said {
    private Said() {}

    static Difference of(
            Kind kind,
            String object,
            List<FieldChange> changes,
            List<Place> at,
            List<Place> there,
            Set<String> causes,
            Touched touched) {
        boolean alone = changes.size() == 1;
        String what = alone ? object + " " + changes.get(0).what() : object + " " + kind.word();
        return new Difference(
                kind,
                object,
                what.strip(),
                words(changes, FieldChange::before),
                words(changes, FieldChange::after),
                List.of(),
                at,
                there,
                causes,
                touched);
    }

    private static String words(List<FieldChange> changes, Function<FieldChange, String> side) {
        if (changes.size() == 1) {
            return side.apply(changes.get(0));
        }
        return changes.stream()
                .map(change -> change.what() + " " + (side.apply(change).isEmpty() ? "not given" : side.apply(change)))
                .collect(Collectors.joining(", "));
    }

    /** Before and after in one line. */
    static String change(FieldChange change) {
        String before = change.before().isEmpty() ? "not given" : change.before();
        return before + " -> " + (change.after().isEmpty() ? "not given" : change.after());
    }
}
