package ringout.sheet.pack;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import ringout.graph.Wire;
import ringout.model.Lead;
import ringout.sheet.document.Column;
import ringout.sheet.document.Document;
import ringout.sheet.document.Paragraph;
import ringout.sheet.document.Section;
import ringout.sheet.document.Table;
import ringout.sheet.document.TableBuilder;
import ringout.sheet.harness.Conductors;

/** The wire list: one row a conductor, by zone in the order the list names the zones, within a zone in the order of the rows. */
final class WireList {
    private static final double PERCENT = 100;

    private WireList() {}

    static Document of(PackSource from) {
        Paragraph how =
                new Paragraph("One row a conductor, as it is listed. Spare is what the cut length has over the way it"
                        + " takes; colour letters by IEC 60757. A question mark was looked for and is not known, an empty cell was"
                        + " not asked.");
        return from.flat("wire-list", "Wire list", List.of(new Section("", List.of(how, table(from)))));
    }

    static Table table(PackSource from) {
        Conductors names = from.conductors();
        TableBuilder table = Table.named(
                        "wire-list",
                        Column.text("conductor"),
                        Column.text("from"),
                        Column.text("to"),
                        Column.text("signal"),
                        Column.text("size"),
                        Column.text("colour"),
                        Column.number("length", "mm"),
                        Column.number("spare", "%"),
                        Column.text("twist, shield"),
                        Column.text("bundle"),
                        Column.text("sleeve"),
                        Column.text("label"))
                .by("zone");
        byZone(from).forEach((zone, wires) -> {
            table.group(zone);
            for (Wire wire : wires) {
                table.row(
                        names.name(wire),
                        names.pin(wire.fromPin()),
                        names.pin(wire.toPin()),
                        names.signal(wire),
                        Conductors.size(wire),
                        names.colour(wire),
                        Conductors.length(wire),
                        spare(wire),
                        Conductors.cover(wire.lead()),
                        wire.lead().bundle().or(""),
                        wire.lead().sleeve().or(""),
                        labels(wire));
            }
        });
        return table.table();
    }

    private static Map<String, List<Wire>> byZone(PackSource from) {
        Map<String, List<Wire>> zones = new LinkedHashMap<>();
        for (Wire wire : from.wiring().wires()) {
            String zone = wire.lead().zone().or("not given");
            zones.computeIfAbsent(zone, key -> new ArrayList<>()).add(wire);
        }
        return zones;
    }

    private static String spare(Wire wire) {
        Lead lead = wire.lead();
        double route = lead.routeMm().or(0.0);
        return route > 0 && wire.lengthMm().isKnown()
                ? String.format(Locale.ROOT, "%.0f", PERCENT * (wire.lengthMm().or(0.0) / route - 1))
                : "";
    }

    private static String labels(Wire wire) {
        String from = Conductors.label(wire, wire.fromPin());
        String to = Conductors.label(wire, wire.toPin());
        return from.equals(to) ? from : from + " / " + to;
    }
}
