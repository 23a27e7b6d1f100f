package ringout.present.text;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import ringout.finding.CannotTell;
import ringout.finding.Evidence;
import ringout.finding.Finding;
import ringout.finding.Headline;
import ringout.finding.NextDatum;
import ringout.finding.Place;
import ringout.finding.Report;
import ringout.finding.Severity;
import ringout.model.Origin;

/** A report as text: counts first, then one block a headline, then what could not be decided and what to get next. */
public final class TextReport {
    private final StringBuilder text = new StringBuilder();
    private final boolean manyStates;

    private TextReport(Report report) {
        this.manyStates = report.states().size() > 1;
    }

    /** The whole report, lines ending in \n. */
    public static String of(Report report) {
        TextReport out = new TextReport(report);
        out.counts(report);
        report.headlines().forEach(headline -> out.headline(headline, report.states()));
        report.waived().forEach(headline -> out.waived(headline.finding()));
        report.lapsed()
                .forEach(waiver -> out.text
                        .append("W  waiver for ")
                        .append(waiver.finding())
                        .append(" does not hold: ")
                        .append(waiver.why())
                        .append('\n'));
        out.cannotTell(report.cannotTell());
        report.next().forEach(out::next);
        return out.text.toString();
    }

    /** One finding as a block, without what it also explains. */
    public static String of(Finding finding, List<String> allStates) {
        TextReport out = new TextReport(alone(allStates));
        out.finding(finding, allStates);
        return out.text.toString();
    }

    /** One line of something that could not be decided. */
    public static String of(CannotTell open) {
        TextReport out = new TextReport(alone(List.of()));
        out.cannotTell(open.code(), open);
        return out.text.toString();
    }

    private static Report alone(List<String> states) {
        return new Report(states, List.of(), List.of(), List.of(), List.of(), List.of(), 0, 0);
    }

    private void counts(Report report) {
        text.append(report.passed())
                .append(" passed, ")
                .append(plural(report.headlines().size(), "finding"))
                .append(", ")
                .append(report.cannotTell().size())
                .append(" could not be decided");
        if (!report.waived().isEmpty()) {
            text.append(", ").append(report.waived().size()).append(" waived");
        }
        text.append('\n');
    }

    private static String plural(int count, String word) {
        return count + " " + word + (count == 1 ? "" : "s");
    }

    private void headline(Headline headline, List<String> states) {
        Severity severity = headline.finding().severity();
        if (severity.atLeast(Severity.S3)) {
            finding(headline.finding(), states);
            headline.alsoExplains().forEach(this::folded);
        } else {
            text.append(LineReport.of(headline.finding())).append('\n');
        }
    }

    private void finding(Finding finding, List<String> states) {
        text.append(finding.severity())
                .append(' ')
                .append(finding.code())
                .append(' ')
                .append(finding.title())
                .append('\n');
        if (manyStates && finding.states().size() < states.size()) {
            field("state", String.join(", ", finding.states()));
        }
        for (Place place : finding.at()) {
            field("at", place.span().known() ? place.span().words() + ", " + place.words() : place.words());
        }
        Evidence evidence = finding.evidence();
        field("path", evidence.path().words());
        field("sum", sum(evidence));
        field("why", finding.why());
        field("meter", finding.meter());
        field("fix", finding.fix());
    }

    private static String sum(Evidence evidence) {
        if (evidence.sum().isEmpty()) {
            return "";
        }
        String origin = evidence.origin() == Origin.LIST
                ? ""
                : "; weakest input: " + evidence.origin().word();
        String turns = evidence.onAssumption() ? "; verdict depends on an assumption" : "";
        return evidence.sum() + " (" + evidence.source() + ")" + origin + turns;
    }

    private void field(String name, String value) {
        if (!value.isEmpty()) {
            text.append("   ")
                    .append(name)
                    .append(" ".repeat(7 - name.length()))
                    .append(value)
                    .append('\n');
        }
    }

    private void folded(Finding finding) {
        field("also", finding.severity() + " " + finding.code() + " " + finding.title());
    }

    private void waived(Finding finding) {
        text.append("W  ").append(LineReport.of(finding)).append('\n');
    }

    /** One line a missing datum: checks that lack the same one share it. */
    private void cannotTell(List<CannotTell> all) {
        Map<String, List<CannotTell>> byDatum = new LinkedHashMap<>();
        all.forEach(open -> byDatum.computeIfAbsent(open.missing() + open.objects(), key -> new ArrayList<>())
                .add(open));
        for (List<CannotTell> same : byDatum.values()) {
            String codes = String.join(
                    " ", same.stream().map(CannotTell::code).distinct().toList());
            cannotTell(codes, same.get(0));
        }
    }

    private void cannotTell(String codes, CannotTell open) {
        text.append("Q  ").append(codes).append(" cannot tell: ").append(open.missing());
        if (!open.objects().isEmpty()) {
            text.append(" (").append(String.join(", ", open.objects())).append(')');
        }
        text.append("; ").append(open.how()).append(", ").append(open.minutes()).append(" min\n");
    }

    /** A datum worth getting next, with what it decides. */
    private void next(NextDatum datum) {
        text.append("N  get next: ")
                .append(datum.missing())
                .append("; ")
                .append(datum.how())
                .append(", ")
                .append(datum.minutes())
                .append(" min, decides ")
                .append(plural(datum.verdicts(), "verdict"))
                .append(" of ")
                .append(String.join(" ", datum.codes()))
                .append('\n');
    }
}
