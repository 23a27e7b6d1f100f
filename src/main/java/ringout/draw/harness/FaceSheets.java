package ringout.draw.harness;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import ringout.draw.card.Card;
import ringout.draw.card.CardSheet;
import ringout.draw.card.CardSheets;
import ringout.draw.card.TextTable;
import ringout.draw.face.PlugCard;
import ringout.draw.paper.SheetSize;
import ringout.finding.Report;
import ringout.graph.Circuit;
import ringout.graph.Wire;
import ringout.graph.Wiring;
import ringout.graph.wire.WireColour;
import ringout.model.Plug;

/** The faces of all plugs with a wire, several to a sheet, in the order of the units. */
public final class FaceSheets {
    private static final String UNTOLD =
            "where the list does not tell how contacts lie they are drawn in one row, the first"
                    + " on the left of the wire side: the mark on the housing decides";

    private final Wiring wiring;
    private final CardMarks marks;
    private final PlugFaces faces;
    private boolean untold;

    private FaceSheets(Circuit circuit, Report report) {
        this.wiring = circuit.wiring();
        this.marks = new CardMarks(circuit, report.headlines());
        this.faces = new PlugFaces(circuit);
    }

    /**
     * The sheets, not yet numbered.
     *
     * @param report findings to mark
     * @param hash of the data, printed on every sheet
     */
    public static List<CardSheet> of(Circuit circuit, Report report, String hash) {
        FaceSheets sheets = new FaceSheets(circuit, report);
        List<Card> cards = sheets.cards();
        SheetTitle title = new SheetTitle(circuit, report, hash);
        List<String> notes = sheets.untold ? List.of(UNTOLD) : List.of();
        return CardSheets.of(title.info("plugs", "plug face sheet", 0), cards, SheetSize.A4, notes);
    }

    private List<Card> cards() {
        List<Card> cards = new ArrayList<>();
        for (int unit = 0; unit < wiring.directory().count(); unit++) {
            int plugs = wiring.directory().isJoint(unit)
                    ? 0
                    : wiring.directory().type(unit).plugs().size();
            for (int plug = 0; plug < plugs; plug++) {
                if (!wires(unit, plug).isEmpty()) {
                    cards.add(card(unit, plug));
                }
            }
        }
        return cards;
    }

    private List<Wire> wires(int unit, int plug) {
        List<Wire> wires = new ArrayList<>();
        for (int pin = wiring.firstPin(unit, plug); pin < wiring.endPin(unit, plug); pin++) {
            for (int w : wiring.wiresAt(pin)) {
                wires.add(wiring.wires().get(w));
            }
        }
        return wires;
    }

    private Card card(int unit, int plug) {
        Plug record = wiring.directory().type(unit).plugs().get(plug);
        untold |= wiring.endPin(unit, plug) - wiring.firstPin(unit, plug) > 1 && !PlugFaces.told(record);
        String name = wiring.plugName(unit, plug);
        List<List<String>> rows = new ArrayList<>();
        Set<String> pins = new TreeSet<>();
        for (int pin = wiring.firstPin(unit, plug); pin < wiring.endPin(unit, plug); pin++) {
            pins.add(wiring.name(pin));
            rows.addAll(rows(pin));
        }
        TextTable table = new TextTable(List.of("pin", "signal", "colour", "lead, far end"), rows, 2);
        return new PlugCard(faces.of(unit, plug), facts(record), table, marks.ofPlug(name, pins));
    }

    private List<List<String>> rows(int pin) {
        String number = wiring.pin(pin).number();
        String signal = PinSignal.of(wiring, pin);
        List<List<String>> rows = new ArrayList<>();
        for (int w : wiring.wiresAt(pin)) {
            Wire wire = wiring.wires().get(w);
            String far = wiring.name(wire.otherPin(pin));
            String lead = wire.lead().id();
            String where = lead.isEmpty() ? far : lead + " " + far;
            rows.add(List.of(number, signal, WireColour.of(wiring, wire), where));
        }
        return rows.isEmpty() ? List.of(List.of(number, signal, "", "no wire")) : rows;
    }

    private List<String> facts(Plug record) {
        String family = Stream.of(
                        record.family().or(""),
                        record.key().known().map(key -> "key " + key).orElse(""))
                .filter(word -> !word.isEmpty())
                .reduce((a, b) -> a + ", " + b)
                .orElse("");
        List<String> facts = new ArrayList<>();
        if (!family.isEmpty()) {
            facts.add(family);
        }
        record.printedName().known().ifPresent(printed -> facts.add("printed on the box: " + printed));
        return facts;
    }
}
