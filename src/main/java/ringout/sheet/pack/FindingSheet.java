package ringout.sheet.pack;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import ringout.finding.CannotTell;
import ringout.finding.Finding;
import ringout.finding.Headline;
import ringout.finding.Severity;
import ringout.model.Waiver;
import ringout.sheet.document.Column;
import ringout.sheet.document.Document;
import ringout.sheet.document.Paragraph;
import ringout.sheet.document.Row;
import ringout.sheet.document.Section;
import ringout.sheet.document.Table;
import ringout.sheet.document.TableBuilder;
import ringout.sheet.harness.Conductors;

/** All findings with their status, all waivers, and all that could not be decided. */
final class FindingSheet {
    private FindingSheet() {}

    static Document of(PackSource from) {
        Paragraph how = new Paragraph(
                "Severity: S1 do not power, S2 do not fly, S3 fix before hand-over, S4 tidy, S5 note. What a"
                        + " finding also explains is named behind it and goes when it goes.");
        Paragraph never = new Paragraph("A check that lacked a datum has not passed.");
        return from.flat(
                "findings",
                "Findings and waivers",
                List.of(
                        new Section("Findings", List.of(how, findings(from))),
                        new Section(
                                "Waivers",
                                List.of(
                                        new Paragraph(
                                                from.aircraft().waivers().isEmpty()
                                                        ? "No finding was waived."
                                                        : "Waivers held against " + from.today() + "."),
                                        waivers(from),
                                        lapsed(from))),
                        new Section("What could not be decided", List.of(never, open(from)))));
    }

    static Table findings(PackSource from) {
        TableBuilder table = Table.named(
                "findings",
                Column.text("status"),
                Column.text("severity"),
                Column.text("check"),
                Column.text("finding"),
                Column.text("arithmetic"),
                Column.text("measure"),
                Column.text("fix"));
        from.report().headlines().forEach(headline -> row(table, "open", headline));
        from.report().waived().forEach(headline -> row(table, "waived", headline));
        return table.table();
    }

    private static void row(TableBuilder table, String status, Headline headline) {
        Finding finding = headline.finding();
        String also = headline.alsoExplains().isEmpty()
                ? ""
                : "; also explains "
                        + headline.alsoExplains().stream()
                                .map(Finding::code)
                                .distinct()
                                .collect(Collectors.joining(" "));
        boolean grave = status.equals("open") && finding.severity().atLeast(Severity.S2);
        table.row(
                grave ? Row.Kind.GRAVE : Row.Kind.LINE,
                status,
                finding.severity().toString(),
                finding.code(),
                finding.title() + also + states(finding.states()),
                finding.evidence().sum(),
                finding.meter(),
                finding.fix());
    }

    private static String states(List<String> states) {
        return states.isEmpty() ? "" : " (" + String.join(", ", states) + ")";
    }

    static Table waivers(PackSource from) {
        Map<String, String> lapsed = new HashMap<>();
        from.report().lapsed().forEach(one -> lapsed.put(one.finding(), "lapsed: " + one.why()));
        TableBuilder table = Table.named(
                "waivers",
                Column.text("finding"),
                Column.text("check"),
                Column.text("reason"),
                Column.text("measure"),
                Column.text("by"),
                Column.text("second"),
                Column.text("date"),
                Column.text("ends"),
                Column.text("status"));
        for (Waiver waiver : from.aircraft().waivers()) {
            table.row(
                    waiver.finding(),
                    waiver.code().or(""),
                    waiver.reason().or(""),
                    waiver.measure().or(""),
                    waiver.by().or(""),
                    waiver.second().or(""),
                    waiver.date().or(""),
                    ends(waiver),
                    lapsed.getOrDefault(waiver.finding(), "in force"));
        }
        return table.table();
    }

    static String ends(Waiver waiver) {
        List<String> ends = new ArrayList<>();
        waiver.ends().known().ifPresent(ends::add);
        if (waiver.endsHours().isKnown()) {
            ends.add(Conductors.cell(waiver.endsHours()) + " flight hours");
        }
        if (!waiver.untilChanged().isEmpty()) {
            ends.add("change of " + String.join(" ", waiver.untilChanged()));
        }
        return String.join(", ", ends);
    }

    private static Table lapsed(PackSource from) {
        TableBuilder table = Table.named("lapsed-waivers", Column.text("finding"), Column.text("why it does not hold"))
                .titled("Waivers that do not hold");
        from.report().lapsed().forEach(one -> table.row(one.finding(), one.why()));
        return table.table();
    }

    static Table open(PackSource from) {
        TableBuilder table = Table.named(
                "not-decided",
                Column.text("check"),
                Column.text("what"),
                Column.text("missing"),
                Column.text("how to get it"),
                Column.number("time", "min"));
        for (CannotTell one : from.report().cannotTell()) {
            table.row(
                    one.code(),
                    one.name().replace('-', ' ') + " " + String.join(" ", one.objects()) + states(one.states()),
                    one.missing(),
                    one.how(),
                    Integer.toString(one.minutes()));
        }
        return table.table();
    }
}
