package ringout.sheet.pack;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import ringout.graph.Directory;
import ringout.graph.Wiring;
import ringout.sheet.Cautions;
import ringout.sheet.document.Caution;
import ringout.sheet.document.Column;
import ringout.sheet.document.Document;
import ringout.sheet.document.Paragraph;
import ringout.sheet.document.Section;
import ringout.sheet.document.Table;
import ringout.sheet.document.TableBuilder;
import ringout.sheet.harness.HarnessNet;
import ringout.sheet.harness.HarnessNets;

/** The short and insulation sheet: each net of the bare harness against all others, then neighbours in each plug. */
final class ShortSheet {
    private static final double READING_MM = 24;
    private static final double INITIALS_MM = 16;

    private ShortSheet() {}

    static Document of(PackSource from) {
        List<HarnessNet> nets = HarnessNets.of(from.wiring());
        Paragraph how = new Paragraph(
                "Bare harness, every unit unplugged, on a dry bench. Tie all nets together with clips; take"
                        + " one out, measure it against the rest, put it back: " + nets.size() + " tests for "
                        + nets.size()
                        + " nets. Expected: more than 1 Mohm at the meter's own voltage. Dirt, flux and damp read in between: clean,"
                        + " dry and measure again.");
        Paragraph then =
                new Paragraph("When nets cannot be tied together, neighbours in each plug find most shorts: solder"
                        + " bridges, whiskers, a pin bent onto the next. It is the weaker test: a short between distant contacts"
                        + " is not seen. One row a plug; write the lowest reading.");
        return from.upright(
                "short-sheet",
                "Short and insulation sheet",
                Cautions.FOOT_OHMS,
                List.of(
                        new Section(
                                "Each net against all others",
                                List.of(new Caution(Cautions.INSULATION), how, against(from, nets))),
                        new Section("Neighbours in each plug", List.of(then, neighbours(from, nets), from.signOff()))));
    }

    static Table against(PackSource from, List<HarnessNet> nets) {
        TableBuilder table = Table.named(
                "net-against-all",
                Column.number("no", ""),
                Column.text("net at"),
                Column.text("carries"),
                Column.number("contacts", ""),
                Column.writeIn("reading", "Mohm, above 1", READING_MM),
                Column.writeIn("initials", "", INITIALS_MM));
        for (HarnessNet net : nets) {
            int first = net.pins().get(0);
            table.row(
                    Integer.toString(table.size() + 1),
                    from.conductors().pin(first),
                    net.pins().stream()
                            .flatMap(pin -> from.conductors().signal(pin).stream())
                            .findFirst()
                            .orElse(""),
                    Integer.toString(net.pins().size()),
                    "",
                    "");
        }
        return table.table();
    }

    static Table neighbours(PackSource from, List<HarnessNet> nets) {
        Map<Integer, Integer> netOf = new HashMap<>();
        for (int i = 0; i < nets.size(); i++) {
            int number = i;
            nets.get(i).pins().forEach(pin -> netOf.put(pin, number));
        }
        TableBuilder table = Table.named(
                "neighbours",
                Column.text("plug"),
                Column.text("between pins"),
                Column.writeIn("lowest reading", "Mohm, above 1", READING_MM),
                Column.writeIn("initials", "", INITIALS_MM));
        Wiring wiring = from.wiring();
        Directory directory = wiring.directory();
        for (int unit = 0; unit < directory.count(); unit++) {
            int plugs =
                    directory.isJoint(unit) ? 0 : directory.type(unit).plugs().size();
            for (int plug = 0; plug < plugs; plug++) {
                List<String> pairs = pairs(wiring, unit, plug, netOf);
                if (!pairs.isEmpty()) {
                    table.row(wiring.plugName(unit, plug), String.join(", ", pairs), "", "");
                }
            }
        }
        return table.table();
    }

    /** Contacts of different nets next to each other; contacts without a conductor are stepped over. */
    private static List<String> pairs(Wiring wiring, int unit, int plug, Map<Integer, Integer> netOf) {
        List<String> pairs = new ArrayList<>();
        int last = -1;
        for (int pin = wiring.firstPin(unit, plug); pin < wiring.endPin(unit, plug); pin++) {
            Integer net = netOf.get(pin);
            if (net != null) {
                if (last >= 0 && !net.equals(netOf.get(last))) {
                    pairs.add(wiring.pin(last).number() + "-" + wiring.pin(pin).number());
                }
                last = pin;
            }
        }
        return pairs;
    }
}
