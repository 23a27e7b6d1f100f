package ringout.sheet.fault;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import ringout.sheet.Cautions;
import ringout.sheet.document.Block;
import ringout.sheet.document.Caution;
import ringout.sheet.document.Column;
import ringout.sheet.document.Document;
import ringout.sheet.document.KeyValues;
import ringout.sheet.document.Paragraph;
import ringout.sheet.document.RevisionMark;
import ringout.sheet.document.Section;
import ringout.sheet.document.Table;
import ringout.sheet.document.TableBuilder;
import ringout.trace.session.FaultReport;
import ringout.trace.session.Ranked;
import ringout.trace.session.SearchTree;
import ringout.trace.session.Way;

/** Makes the fault-finding sheet of a search, one page where it can be. */
public final class FaultSheet {
    /** Safety lines of a search. Common practice, no source. */
    private static final List<String> LINES = List.of(
            "propellers off before any pack is plugged; no rings; one pack plug at a time, cover the other; packs arc: eye"
                    + " protection; a swollen, dented or wet pack: stop",
            "ohms only with power off, packs out and capacitors down; meter jacks and range looked at before every measurement;"
                    + " fused leads; never a bare needle at a main power plug",
            "record every reading before anything is moved; what is cured by pulling and plugging alone is not cured; do not fly to"
                    + " see whether it comes back");

    private static final int MOST_FAULTS = 5;
    private static final double READING_MM = 22;

    private final FaultReport report;

    private FaultSheet(FaultReport report) {
        this.report = report;
    }

    /** The sheet of a search, with the tree of tests that starts where it stands. */
    public static Document of(FaultReport report, SearchTree tree, RevisionMark mark) {
        FaultSheet sheet = new FaultSheet(report);
        String what = String.join(
                ", ",
                report.scene().silent().isEmpty()
                        ? report.scene().dark()
                        : report.scene().silent());
        return new Document(
                "fault-finding",
                "Fault finding: " + what + " does not respond",
                mark,
                1,
                1,
                Document.Form.PORTRAIT,
                Cautions.FOOT,
                List.of(
                        new Section("", List.of(new Caution(LINES), sheet.seen())),
                        new Section("What explains it", List.of(sheet.faults())),
                        new Section(
                                "Tests",
                                List.of(
                                        new TreeRows().table(tree),
                                        new Paragraph(
                                                "Reading and initials go into the last column. Figures are computed for the plugs as the test"
                                                        + " says; another plug pulled gives other figures. Shares rest on weights by judgement."))),
                        new Section("After the repair, prove again", List.of(sheet.retest()))));
    }

    private Block seen() {
        List<KeyValues.Pair> pairs = new ArrayList<>();
        add(pairs, "silent", report.scene().silent());
        add(pairs, "dark", report.scene().dark());
        add(pairs, "lit", report.scene().lit());
        add(pairs, "changed last", report.scene().touched());
        for (Way way : report.ways()) {
            pairs.add(new KeyValues.Pair(
                    (way.power() ? "power of " : "signal of ") + way.unit(),
                    way.trail().words()));
        }
        report.progress()
                .readings()
                .forEach(reading -> pairs.add(new KeyValues.Pair("read", reading.test() + ": " + reading.value())));
        return new KeyValues(pairs);
    }

    private static void add(List<KeyValues.Pair> pairs, String key, Iterable<String> names) {
        String joined = String.join(", ", names);
        if (!joined.isEmpty()) {
            pairs.add(new KeyValues.Pair(key, joined));
        }
    }

    private Table faults() {
        TableBuilder table = Table.named(
                "fault-candidates",
                Column.number("share", "%"),
                Column.text("fault"),
                Column.text("repair"),
                Column.text("behind"));
        for (Ranked one : report.ranked().stream().limit(MOST_FAULTS).toList()) {
            table.row(
                    percent(one.share()),
                    one.candidate().title(),
                    one.candidate().repair().action(),
                    String.join(", ", one.candidate().opening().covers()));
        }
        double rest = 1
                - report.unknown()
                - report.ranked().stream()
                        .limit(MOST_FAULTS)
                        .mapToDouble(Ranked::share)
                        .sum();
        table.row(percent(Math.max(0, rest)), "others of the model, each less likely than these", "", "");
        table.row(percent(report.unknown()), "something not in the model", "", "");
        return table.table();
    }

    static String percent(double share) {
        return share < 0.005 ? "<1" : String.format(Locale.ROOT, "%.0f", Math.min(0.99, share) * 100);
    }

    private Table retest() {
        TableBuilder table = Table.named(
                "fault-retest",
                Column.text("object"),
                Column.text("prove"),
                Column.tick("done"),
                Column.writeIn("reading", "", READING_MM));
        report.retest().forEach(one -> table.row(one.object(), one.what(), "", ""));
        return table.table();
    }
}
