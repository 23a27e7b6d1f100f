package ringout.repair;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import ringout.check.Catalogue;
import ringout.check.Review;
import ringout.check.form.Check;
import ringout.check.form.CheckInfo;
import ringout.finding.Finding;
import ringout.finding.Headline;
import ringout.finding.Report;
import ringout.finding.Severity;
import ringout.graph.Circuit;
import ringout.graph.Wiring;
import ringout.model.Aircraft;
import ringout.model.edit.Edit;
import ringout.model.edit.Edited;
import ringout.model.edit.Edits;

/** Makes edits on a copy and reviews the copy: first by the check that found the mistake, then by all. */
final class Trial {
    private final Aircraft aircraft;
    private final String today;
    private final Set<String> before = new HashSet<>();
    private final Set<String> openBefore = new HashSet<>();

    Trial(Aircraft aircraft, Report report, String today) {
        this.aircraft = aircraft;
        this.today = today;
        grave(report).map(Finding::id).forEach(before::add);
        open(report).forEach(openBefore::add);
    }

    /** The mended aircraft, if the edits clear the headline and harm nothing. */
    Optional<Aircraft> mended(List<Edit> edits, Headline headline) {
        Edited edited = Edits.apply(aircraft, edits);
        if (!edited.problems().isEmpty()) {
            return Optional.empty();
        }
        List<Circuit> circuits = Circuit.all(Wiring.of(edited.aircraft()));
        Report alone = Review.of(circuits, List.of(check(headline.finding().code())), today);
        boolean better = clears(alone, headline) && harmless(alone);
        return better && sound(Review.of(circuits, Catalogue.all(), today), headline)
                ? Optional.of(edited.aircraft())
                : Optional.empty();
    }

    private boolean sound(Report after, Headline headline) {
        return clears(after, headline) && harmless(after);
    }

    /** Neither the headline nor what it explains is found any more. */
    private static boolean clears(Report after, Headline headline) {
        Set<String> gone = new HashSet<>();
        gone.add(headline.finding().id());
        headline.alsoExplains().forEach(also -> gone.add(also.id()));
        return all(after).map(Finding::id).noneMatch(gone::contains);
    }

    private boolean harmless(Report after) {
        return grave(after).map(Finding::id).allMatch(before::contains)
                && open(after).allMatch(openBefore::contains);
    }

    private static Stream<Finding> grave(Report report) {
        return all(report).filter(finding -> finding.severity().atLeast(Severity.S3));
    }

    private static Stream<Finding> all(Report report) {
        return Stream.concat(report.headlines().stream(), report.waived().stream())
                .flatMap(headline -> Stream.concat(Stream.of(headline.finding()), headline.alsoExplains().stream()));
    }

    /** What a check could not tell, by check and objects; what a new lead still lacks counts with its check. */
    private static Stream<String> open(Report report) {
        return report.cannotTell().stream().map(open -> open.code() + " " + open.objects());
    }

    private static Check check(String code) {
        return Catalogue.all().stream()
                .filter(check ->
                        check.getClass().getAnnotation(CheckInfo.class).code().equals(code))
                .findFirst()
                .orElseThrow();
    }
}
