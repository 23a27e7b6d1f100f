package ringout.draw.harness;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import ringout.draw.card.Card;
import ringout.draw.card.CardSheet;
import ringout.draw.card.CardSheets;
import ringout.draw.paper.SheetSize;
import ringout.finding.Report;
import ringout.graph.Circuit;
import ringout.graph.Wire;
import ringout.graph.Wiring;

/**
 * The drawings of all made-up leads, several to a sheet, in the order of the list. Rows of one name between the same two
 * plugs are one lead; rows of one name between several plugs are its parts.
 */
public final class LeadSheets {
    private static final String CUT =
            "lengths are those of the list, cut lengths from end to end of the conductor: add what the"
                    + " contacts of your plugs ask for";

    private LeadSheets() {}

    /**
     * The sheets, not yet numbered.
     *
     * @param report findings to mark
     * @param hash of the data, printed on every sheet
     */
    public static List<CardSheet> of(Circuit circuit, Report report, String hash) {
        SheetTitle title = new SheetTitle(circuit, report, hash);
        return CardSheets.of(
                title.info("leads", "lead drawing", 0), cards(circuit, report), SheetSize.A3, List.of(CUT));
    }

    private static List<Card> cards(Circuit circuit, Report report) {
        CardMarks marks = new CardMarks(circuit, report.headlines());
        Ids ids = new Ids();
        List<Card> cards = new ArrayList<>();
        for (Map<String, List<Wire>> parts : made(circuit.wiring()).values()) {
            int part = 0;
            for (List<Wire> wires : parts.values()) {
                part++;
                Wire first = wires.get(0);
                String lead = first.lead().id();
                String name = lead.isEmpty() ? "row" + (first.leadIndex() + 1) : lead;
                String words = parts.size() == 1 ? "" : "part " + part + " of " + parts.size();
                String id = ids.of("lead " + first.index(), name);
                cards.add(new LeadPicture(circuit, wires).card(id, words, marks.ofLead(lead)));
            }
        }
        return cards;
    }

    /** The conductors by name of the lead, then by its pair of plugs; a row without a name is a lead of its own. */
    private static Map<String, Map<String, List<Wire>>> made(Wiring wiring) {
        Map<String, Map<String, List<Wire>>> made = new LinkedHashMap<>();
        for (Wire wire : wiring.wires()) {
            String lead = wire.lead().id();
            String name = lead.isEmpty() ? "row " + wire.leadIndex() : "lead " + lead;
            made.computeIfAbsent(name, key -> new LinkedHashMap<>())
                    .computeIfAbsent(plugs(wiring, wire), key -> new ArrayList<>())
                    .add(wire);
        }
        return made;
    }

    private static String plugs(Wiring wiring, Wire wire) {
        return plug(wiring, wire.fromPin()) + " " + plug(wiring, wire.toPin());
    }

    private static String plug(Wiring wiring, int pin) {
        return wiring.unitOf(pin) + "-" + wiring.plugIndex(pin);
    }
}
