package ringout.random;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import ringout.finding.Finding;
import ringout.finding.Headline;
import ringout.finding.Place;
import ringout.finding.Report;
import ringout.finding.Severity;

/** Holds what a review says against what was put in. */
final class Verdict {
    private Verdict() {}

    /** What is wrong with what the review says of an aircraft with one mistake; empty when it is right. */
    static List<String> of(Craft craft, Fault fault) {
        Report report = Told.review(craft.with(fault.edits()));
        if (report.headlines().isEmpty()) {
            return List.of("nothing found");
        }
        List<String> wrong = new ArrayList<>();
        Headline first = report.headlines().stream()
                .filter(headline -> headline.finding().severity().atLeast(Severity.S3))
                .findFirst()
                .orElseGet(() -> minor(report, fault));
        if (!fault.codes().contains(first.finding().code())) {
            wrong.add("not " + fault.codes() + " but " + Told.line(first.finding()));
        }
        for (Set<String> any : fault.names()) {
            if (any.stream().noneMatch(name -> names(first.finding(), name))) {
                wrong.add("does not name " + any + ": " + Told.line(first.finding()));
            }
        }
        report.headlines().stream()
                .filter(headline -> !headline.equals(first))
                .map(Headline::finding)
                .filter(finding -> finding.severity().atLeast(Severity.S3))
                .forEach(finding -> wrong.add("also " + Told.line(finding)));
        return wrong;
    }

    private static Headline minor(Report report, Fault fault) {
        return report.headlines().stream()
                .filter(headline -> fault.codes().contains(headline.finding().code()))
                .findFirst()
                .orElse(report.headlines().get(0));
    }

    /** Whether a thing stands among the objects or the rows at fault, itself or with a plug, pin or port of it. */
    private static boolean names(Finding finding, String thing) {
        return Stream.concat(finding.objects().stream(), finding.at().stream().map(Place::row))
                        .anyMatch(object -> object.equals(thing)
                                || object.equals("bus " + thing)
                                || object.startsWith(thing + "-")
                                || object.startsWith(thing + ":")
                                || List.of(object.split(" ")).contains(thing))
                || says(finding, thing);
    }

    /** Whether the words of a finding name a thing, not as a part of another name. */
    private static boolean says(Finding finding, String thing) {
        String words = finding.title() + " " + finding.evidence().sum() + " " + finding.fix();
        return Pattern.compile("(?<![\\w.])" + Pattern.quote(thing) + "(?!\\w)")
                .matcher(words)
                .find();
    }

    static String told(List<String> lines) {
        return lines.stream().collect(Collectors.joining("\n  ", "\n  ", ""));
    }
}
