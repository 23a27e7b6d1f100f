package ringout.present.difference;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import ringout.compare.difference.Difference;
import ringout.compare.fleet.Fleet;
import ringout.compare.fleet.Tail;
import ringout.compare.fleet.Trend;
import ringout.compare.judge.Case;
import ringout.compare.judge.Judged;
import ringout.compare.judge.Judgement;
import ringout.compare.judge.Retest;
import ringout.finding.CannotTell;
import ringout.finding.Finding;
import ringout.finding.Severity;
import ringout.present.words.Cautions;

/** Differences as text for a person: the dangerous ones first, each with its rows, findings, fate and the tests it asks for. */
public final class CompareText {
    private final StringBuilder text = new StringBuilder();

    private CompareText() {}

    /** One aircraft held against another, or a fleet: then the table of all tails comes first. */
    public static String of(Fleet fleet) {
        CompareText out = new CompareText();
        if (fleet.tails().size() > 1) {
            out.text.append(FleetText.of(fleet)).append('\n');
        }
        for (Tail tail : fleet.tails()) {
            out.tail(fleet, tail);
        }
        out.foot();
        return out.text.toString();
    }

    private void tail(Fleet fleet, Tail tail) {
        Judgement judgement = tail.judgement();
        List<Judged> told =
                judgement.all().stream().filter(judged -> !judged.ofRecord()).toList();
        int record = judgement.all().size() - told.size();
        text.append(DifferenceWords.of(tail.aircraft()))
                .append(" (")
                .append(tail.name())
                .append(") against ")
                .append(DifferenceWords.of(fleet.base()))
                .append(" (")
                .append(fleet.baseName())
                .append("): ")
                .append(DifferenceWords.plural(told.size(), "difference"))
                .append(", ")
                .append(dangerous(tail))
                .append(" dangerous");
        if (record > 0) {
            text.append(", ").append(record).append(" of the record only");
        }
        text.append('\n');
        List<Trend> grave = tail.trends().stream()
                .filter(trend -> trend.severity().atLeast(Severity.S2))
                .toList();
        told.stream().filter(Judged::dangerous).forEach(judged -> difference(told.indexOf(judged) + 1, judged));
        grave.forEach(this::trend);
        told.stream()
                .filter(judged -> !judged.dangerous())
                .forEach(judged -> difference(told.indexOf(judged) + 1, judged));
        tail.trends().stream().filter(trend -> !grave.contains(trend)).forEach(this::trend);
        rest(judgement);
        record(judgement);
        retests(told);
        text.append('\n');
    }

    private static long dangerous(Tail tail) {
        return tail.cases().stream().filter(Case::dangerous).count()
                + tail.trends().stream()
                        .filter(trend -> trend.severity().atLeast(Severity.S2))
                        .count();
    }

    private void difference(int number, Judged judged) {
        Difference difference = judged.difference();
        text.append(judged.severity())
                .append(" (")
                .append(number)
                .append(") ")
                .append(named(difference) ? difference.kind().word() + ": " : "")
                .append(difference.what())
                .append(": ")
                .append(difference.change())
                .append('\n');
        field("base", DifferenceWords.places(difference.at()));
        field("now", DifferenceWords.places(difference.there()));
        field("nets", String.join("; ", difference.effects()));
        judged.appear().forEach(finding -> field("comes", DifferenceWords.finding(finding)));
        judged.vanish().forEach(finding -> field("goes", DifferenceWords.finding(finding)));
        field("usual", judged.fate().words());
        field("change", judged.change().orElse(undocumented(judged)));
        if (!judged.lapsing().isEmpty()) {
            field("lapses", String.join("; ", judged.lapsing()));
        }
    }

    /** Whether the object alone does not say what differs. */
    private static boolean named(Difference difference) {
        return difference.kind().ofConnections() || difference.what().equals(difference.object());
    }

    private static String undocumented(Judged judged) {
        return judged.difference().kind().ofRecord() ? "" : "none on record";
    }

    private void trend(Trend trend) {
        text.append(trend.severity())
                .append(" reading ")
                .append(trend.where())
                .append(": ")
                .append(TrendWords.readings(trend))
                .append('\n');
        field("now", trend.at().known() ? trend.at().words() : "");
        field("limit", TrendWords.limit(trend));
        if (trend.over()) {
            field(
                    "usual",
                    "open, clean or replace the contact, close it to its torque, and measure again at the same current");
        }
    }

    private void rest(Judgement judgement) {
        for (Finding finding : judgement.otherwise()) {
            text.append("   also   ").append(DifferenceWords.finding(finding)).append('\n');
        }
        for (CannotTell open : judgement.blind()) {
            text.append("Q  ")
                    .append(open.code())
                    .append(" can no longer be told: ")
                    .append(open.missing())
                    .append("; ")
                    .append(open.how())
                    .append('\n');
        }
    }

    private void record(Judgement judgement) {
        List<String> rows = judgement.all().stream()
                .filter(Judged::ofRecord)
                .map(judged -> judged.difference().what())
                .toList();
        if (!rows.isEmpty()) {
            text.append("record only: ").append(String.join(", ", rows)).append('\n');
        }
    }

    /** Each test once, whatever number of differences ask for it. */
    private void retests(List<Judged> told) {
        Set<Retest> tests = new LinkedHashSet<>();
        told.forEach(judged -> tests.addAll(judged.retests()));
        if (tests.isEmpty()) {
            return;
        }
        text.append("test again: ")
                .append(DifferenceWords.plural(tests.size(), "line"))
                .append('\n');
        for (Retest.Kind kind : Retest.Kind.values()) {
            tests.stream()
                    .filter(test -> test.kind() == kind)
                    .forEach(test -> text.append("   [ ] ")
                            .append(DifferenceWords.retest(test))
                            .append('\n'));
        }
        Set<String> lapsing = told.stream()
                .flatMap(judged -> judged.lapsing().stream())
                .collect(Collectors.toCollection(LinkedHashSet::new));
        if (!lapsing.isEmpty()) {
            text.append("signatures that lapse: ")
                    .append(String.join("; ", lapsing))
                    .append('\n');
        }
    }

    private void foot() {
        text.append("ohms: ")
                .append(String.join("; ", Cautions.OHMS.subList(0, 2)))
                .append('\n');
        text.append("volts: ").append(Cautions.VOLTS.get(0)).append('\n');
        text.append(
                "not compared: workmanship, software logic, and whatever neither list tells; remarks and the order of rows"
                        + " do not count\n");
    }

    private void field(String name, String value) {
        if (!value.isEmpty()) {
            text.append("   ")
                    .append(name)
                    .append(" ".repeat(Math.max(1, 7 - name.length())))
                    .append(value)
                    .append('\n');
        }
    }
}
