package ringout.sheet.pack;

import java.util.ArrayList;
import java.util.List;
import ringout.graph.Directory;
import ringout.graph.Wire;
import ringout.graph.Wiring;
import ringout.model.Pin;
import ringout.model.PinRole;
import ringout.model.Plug;
import ringout.model.shape.Scalars;
import ringout.sheet.document.Column;
import ringout.sheet.document.Document;
import ringout.sheet.document.Paragraph;
import ringout.sheet.document.Section;
import ringout.sheet.document.Table;
import ringout.sheet.document.TableBuilder;
import ringout.sheet.harness.Conductors;

/** Every plug that the harness reaches, contact by contact, spares too. */
final class PinTables {
    private final PackSource from;
    private final Wiring wiring;
    private final TableBuilder table = Table.named(
                    "pin-tables",
                    Column.text("pin"),
                    Column.text("signal"),
                    Column.text("conductor"),
                    Column.text("size"),
                    Column.text("colour"),
                    Column.text("far end"))
            .by("plug");

    private PinTables(PackSource from) {
        this.from = from;
        wiring = from.wiring();
    }

    static Document of(PackSource from) {
        Paragraph how = new Paragraph(
                "Pins go by the number marked on the plug. Where a face is described it is seen from"
                        + " the wire side, the side the conductors leave the plug of the lead, unless the words say mating face: from"
                        + " the other side left and right change places. Half, key and wire range are those of the unit's plug; the"
                        + " lead carries the other half. A contact without conductor is spare or left empty on purpose, as told.");
        return from.upright(
                "pin-tables",
                "Connector pin tables",
                List.of(new Section("", List.of(how, new PinTables(from).table()))));
    }

    private Table table() {
        Directory directory = wiring.directory();
        for (int unit = 0; unit < directory.count(); unit++) {
            int plugs =
                    directory.isJoint(unit) ? 0 : directory.type(unit).plugs().size();
            for (int plug = 0; plug < plugs; plug++) {
                plug(unit, plug);
            }
        }
        return table.table();
    }

    private void plug(int unit, int plug) {
        int first = wiring.firstPin(unit, plug);
        int end = wiring.endPin(unit, plug);
        boolean wired = false;
        for (int pin = first; pin < end; pin++) {
            wired |= wiring.wiresAt(pin).length > 0;
        }
        if (!wired) {
            return;
        }
        table.group(wiring.plugName(unit, plug), details(unit, plug));
        for (int pin = first; pin < end; pin++) {
            contact(pin);
        }
    }

    private String details(int unit, int plug) {
        Plug record = wiring.directory().type(unit).plugs().get(plug);
        List<String> words = new ArrayList<>(List.of(record.family().or("family not given")));
        record.half().known().ifPresent(half -> words.add(Scalars.write(half)));
        record.key().known().ifPresent(key -> words.add("key " + key));
        record.positions().known().ifPresent(count -> words.add(count + " positions"));
        record.face().known().ifPresent(face -> words.add("face: " + face));
        if (record.crimpMinAwg().isKnown() && record.crimpMaxAwg().isKnown()) {
            words.add("contact for " + Conductors.cell(record.crimpMaxAwg()) + " to "
                    + Conductors.cell(record.crimpMinAwg()) + " AWG");
        }
        if (record.suppressor().is(true)) {
            words.add("suppressed contact: in last, out first");
        }
        return String.join(", ", words);
    }

    private void contact(int pin) {
        Pin record = wiring.pin(pin);
        String signal =
                from.conductors().signal(pin).orElseGet(() -> record.name().or(role(pin)));
        int[] wires = wiring.wiresAt(pin);
        if (wires.length == 0) {
            boolean meant = record.spare().is(true) || wiring.is(pin, PinRole.NONE);
            table.row(record.number(), signal, meant ? "none, meant so" : "none", "", "", "");
        }
        for (int w : wires) {
            Wire wire = wiring.wires().get(w);
            table.row(
                    record.number(),
                    signal,
                    from.conductors().name(wire),
                    Conductors.size(wire),
                    from.conductors().colour(wire),
                    from.conductors().pin(wire.otherPin(pin)));
        }
    }

    private String role(int pin) {
        return wiring.role(pin).map(PinRole::word).orElse("?");
    }
}
