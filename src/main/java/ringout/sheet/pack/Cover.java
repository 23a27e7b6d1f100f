package ringout.sheet.pack;

import java.util.ArrayList;
import java.util.List;
import ringout.finding.Headline;
import ringout.finding.NextDatum;
import ringout.finding.Report;
import ringout.finding.Severity;
import ringout.model.Aircraft;
import ringout.sheet.Cautions;
import ringout.sheet.document.Block;
import ringout.sheet.document.Caution;
import ringout.sheet.document.Column;
import ringout.sheet.document.Document;
import ringout.sheet.document.KeyValues;
import ringout.sheet.document.Paragraph;
import ringout.sheet.document.Row;
import ringout.sheet.document.Section;
import ringout.sheet.document.Table;
import ringout.sheet.document.TableBuilder;

/** The first sheet: what this pack is about, where it stands, what is open, and what is in it. */
final class Cover {
    private static final int MOST_DATA = 12;

    private Cover() {}

    /**
     * The cover of a pack.
     *
     * @param others the documents that follow it, in order
     */
    static Document of(PackSource from, List<Document> others, List<String> left) {
        List<Section> sections = new ArrayList<>();
        sections.add(new Section("", List.of(facts(from), new Paragraph(standing(from)), new Caution(Cautions.PACKS))));
        sections.add(new Section("Open findings", List.of(findings(from))));
        sections.add(new Section("Waivers in force", List.of(waived(from))));
        List<Block> data = new ArrayList<>();
        data.add(new Paragraph(
                "Nothing below counts as a pass. The data that decide most, the best first; all of them on the"
                        + " sheet Findings and waivers."));
        data.add(nextData(from));
        sections.add(new Section("What could not be decided", data));
        List<Block> contents = new ArrayList<>(List.of(contents(others)));
        left.forEach(words -> contents.add(new Paragraph(words)));
        contents.add(from.signOff());
        sections.add(new Section("Contents", contents));
        return from.upright("cover", "Cover and status", sections);
    }

    private static KeyValues facts(PackSource from) {
        Aircraft aircraft = from.aircraft();
        Report report = from.report();
        List<KeyValues.Pair> pairs = new ArrayList<>();
        pairs.add(new KeyValues.Pair("aircraft", from.mark().aircraft()));
        pairs.add(new KeyValues.Pair("tail", aircraft.tail().or("none: this is the type")));
        pairs.add(new KeyValues.Pair(
                "revision",
                "type " + aircraft.typeRevision().or("not given") + ", as-built "
                        + aircraft.tailRevision().or("not given")));
        pairs.add(new KeyValues.Pair("state", from.mark().state()));
        pairs.add(new KeyValues.Pair("states reviewed", String.join(", ", report.states())));
        pairs.add(new KeyValues.Pair(
                "data", from.mark().hash() + ", on every page: a page with another hash is of other data"));
        aircraft.record().asOf().known().ifPresent(day -> pairs.add(new KeyValues.Pair("record of", day)));
        aircraft.record()
                .flightHours()
                .known()
                .ifPresent(hours -> pairs.add(new KeyValues.Pair("flight hours", hours.toString())));
        pairs.add(new KeyValues.Pair(
                "aboard",
                aircraft.units().size() + " units, " + aircraft.leads().size() + " leads, "
                        + from.wiring().wires().size() + " conductors, "
                        + aircraft.joints().size() + " joints"));
        pairs.add(new KeyValues.Pair(
                "checks",
                report.passed() + " passed, " + report.headlines().size() + " findings, "
                        + report.cannotTell().size() + " could not be decided, "
                        + report.waived().size() + " waived, " + report.notApplicable() + " not applicable"));
        return new KeyValues(pairs);
    }

    private static String standing(PackSource from) {
        long never = from.report().headlines().stream()
                .filter(h -> h.finding().severity() == Severity.S1)
                .count();
        int grave = from.grave().size();
        if (never > 0) {
            return "DO NOT POWER: " + never + " finding" + (never == 1 ? "" : "s")
                    + " of severity S1 open. No sheet of this" + " pack is to be signed.";
        }
        if (grave > 0) {
            return "DO NOT FLY: " + grave + " finding" + (grave == 1 ? "" : "s")
                    + " of severity S2 open. No sheet of this" + " pack is to be signed.";
        }
        int open = from.report().cannotTell().size();
        String undecided = open == 0
                ? ""
                : open + (open == 1 ? " question" : " questions") + " could not be decided and may hide one. ";
        return "No finding of S1 or S2 is open on the list. " + undecided
                + "That says nothing of the aircraft before it is rung out, measured"
                + " and signed, and nothing of what is not checked: see the last sheet.";
    }

    private static Table findings(PackSource from) {
        TableBuilder table = Table.named(
                "open-findings",
                Column.text("severity"),
                Column.text("check"),
                Column.text("finding"),
                Column.text("fix"));
        for (Headline headline : from.report().headlines()) {
            boolean grave = headline.finding().severity().atLeast(Severity.S2);
            table.row(
                    grave ? Row.Kind.GRAVE : Row.Kind.LINE,
                    headline.finding().severity().toString(),
                    headline.finding().code(),
                    headline.finding().title(),
                    headline.finding().fix());
        }
        return table.table();
    }

    private static Table waived(PackSource from) {
        TableBuilder table =
                Table.named("waived-findings", Column.text("severity"), Column.text("check"), Column.text("finding"));
        for (Headline headline : from.report().waived()) {
            table.row(
                    headline.finding().severity().toString(),
                    headline.finding().code(),
                    headline.finding().title());
        }
        return table.table();
    }

    private static Table nextData(PackSource from) {
        TableBuilder table = Table.named(
                "next-data",
                Column.text("datum"),
                Column.text("how to get it"),
                Column.number("time", "min"),
                Column.number("decides", ""),
                Column.text("of checks"));
        List<NextDatum> next = from.report().next();
        for (NextDatum datum : next.subList(0, Math.min(MOST_DATA, next.size()))) {
            table.row(
                    datum.missing(),
                    datum.how(),
                    Integer.toString(datum.minutes()),
                    Integer.toString(datum.verdicts()),
                    String.join(" ", datum.codes()));
        }
        return table.table();
    }

    private static Table contents(List<Document> others) {
        TableBuilder table = Table.named("contents", Column.number("sheet", ""), Column.text("document"));
        table.row("1", "Cover and status");
        for (int i = 0; i < others.size(); i++) {
            table.row(Integer.toString(i + 2), others.get(i).title());
        }
        return table.table();
    }
}
