package ringout.repair;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import ringout.check.Catalogue;
import ringout.check.Rehearsal;
import ringout.check.form.Check;
import ringout.check.form.CheckInfo;
import ringout.check.form.Gathering;
import ringout.check.form.Trying;
import ringout.finding.Finding;
import ringout.finding.Headline;
import ringout.finding.Report;
import ringout.finding.Severity;
import ringout.model.Aircraft;
import ringout.model.Lead;
import ringout.model.Unit;
import ringout.model.edit.Edit;

/** Makes edits on a copy and reviews the copy: first by the check that found the mistake, then by all. */
final class Trial {
    private static final Set<String> GATHERING = Catalogue.all().stream()
            .filter(Gathering.class::isInstance)
            .map(check -> check.getClass().getAnnotation(CheckInfo.class).code())
            .collect(Collectors.toUnmodifiableSet());

    private final Aircraft aircraft;
    private final String today;
    private final Set<String> before = new HashSet<>();
    private final Set<String> openBefore = new HashSet<>();

    Trial(Aircraft aircraft, Report report, String today) {
        this.aircraft = aircraft;
        this.today = today;
        grave(report).map(Finding::id).forEach(before::add);
        open(report, Set.of()).forEach(openBefore::add);
    }

    /** Whether a headline tells of what could be plugged wrongly, not of a mistake in the list. */
    static boolean ofTrying(Headline headline) {
        return check(headline.finding().code()) instanceof Trying;
    }

    /** The mended aircraft, if the edits clear the headline and harm nothing. */
    Optional<Aircraft> mended(List<Edit> edits, Headline headline) {
        return Rehearsal.of(aircraft, edits)
                .filter(copy -> helps(copy, headline, fresh(edits)))
                .map(Rehearsal::aircraft);
    }

    private boolean helps(Rehearsal copy, Headline headline, Set<String> fresh) {
        Report alone = copy.review(List.of(check(headline.finding().code())), today);
        return clears(alone, headline)
                && harmless(alone, fresh)
                && sound(copy.review(Catalogue.looking(), today), headline, fresh);
    }

    private boolean sound(Report after, Headline headline, Set<String> fresh) {
        return clears(after, headline) && harmless(after, fresh);
    }

    /**
     * Nothing is left of what the headline explains, and of the headline itself at most a note: a field that turns the compass by
     * 66 deg and then by 5 deg is mended.
     */
    private static boolean clears(Report after, Headline headline) {
        Map<String, Severity> left = new HashMap<>();
        all(after).forEach(finding -> left.put(finding.id(), finding.severity()));
        Severity now = left.get(headline.finding().id());
        boolean lighter = now == null
                || (!now.atLeast(Severity.S3) && headline.finding().severity().atLeast(Severity.S3));
        return lighter && headline.alsoExplains().stream().map(Finding::id).noneMatch(left::containsKey);
    }

    private boolean harmless(Report after, Set<String> fresh) {
        return grave(after).map(Finding::id).allMatch(before::contains)
                && open(after, fresh).allMatch(openBefore::contains);
    }

    private static Stream<Finding> grave(Report report) {
        return all(report).filter(finding -> finding.severity().atLeast(Severity.S3));
    }

    private static Stream<Finding> all(Report report) {
        return Stream.concat(report.headlines().stream(), report.waived().stream())
                .flatMap(headline -> Stream.concat(Stream.of(headline.finding()), headline.alsoExplains().stream()));
    }

    /** Names of leads and units the edits make: what nobody knows of them yet is no harm, it is to be filled in. */
    private static Set<String> fresh(List<Edit> edits) {
        Set<String> names = new HashSet<>();
        for (Edit edit : edits) {
            if (edit instanceof Edit.Add add && add.item() instanceof Lead lead) {
                names.add(lead.id());
            }
            if (edit instanceof Edit.Add add && add.item() instanceof Unit unit) {
                names.add(unit.ref());
            }
        }
        return names;
    }

    /** What a check could not tell, object by object; checks that only gather what others lack count for nothing. */
    private static Stream<String> open(Report report, Set<String> fresh) {
        return report.cannotTell().stream()
                .filter(open -> !GATHERING.contains(open.code()))
                .flatMap(open -> open.objects().isEmpty()
                        ? Stream.of(open.code() + " " + open.missing())
                        : open.objects().stream()
                                .filter(object -> fresh.stream().noneMatch(name -> names(object, name)))
                                .map(object -> open.code() + " " + object));
    }

    /** Whether an object is a thing made anew, or an end or plug of it: {@code NEW1 at RG6-IN}. */
    private static boolean names(String object, String thing) {
        return object.equals(thing) || object.startsWith(thing + " ") || object.startsWith(thing + "-");
    }

    private static Check check(String code) {
        return Catalogue.all().stream()
                .filter(check ->
                        check.getClass().getAnnotation(CheckInfo.class).code().equals(code))
                .findFirst()
                .orElseThrow();
    }
}
