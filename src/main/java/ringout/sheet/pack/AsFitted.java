package ringout.sheet.pack;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import ringout.graph.Circuit;
import ringout.graph.Wire;
import ringout.graph.Wiring;
import ringout.graph.power.PowerGraph;
import ringout.graph.power.PowerSource;
import ringout.graph.signal.MotorDrive;
import ringout.graph.signal.MotorDrives;
import ringout.sheet.Cautions;
import ringout.sheet.document.Block;
import ringout.sheet.document.Caution;
import ringout.sheet.document.Column;
import ringout.sheet.document.Document;
import ringout.sheet.document.Paragraph;
import ringout.sheet.document.Section;
import ringout.sheet.document.Table;
import ringout.sheet.document.TableBuilder;
import ringout.solve.meter.BusPull;
import ringout.solve.meter.Reading;

/** The as-fitted resistance sheet: units plugged, packs out; what must read neither nothing nor everything. */
final class AsFitted {
    private static final double READING_MM = 24;
    private static final double INITIALS_MM = 16;

    private AsFitted() {}

    static Document of(PackSource from) {
        Paragraph how = new Paragraph(
                "Everything plugged as in this state, packs out. Readings of the bus are taken from behind"
                        + " the mated plug.");
        List<Section> sections = new ArrayList<>();
        sections.add(new Section("", List.of(new Caution(Cautions.OHMS), how)));
        sections.add(new Section("Bus, between H and L", List.of(buses(from))));
        sections.add(new Section("Pack leads", List.of(packs(from))));
        List<Block> motors = new ArrayList<>();
        motors.add(new Paragraph(
                "The three readings of one motor within 5 % of each other, and none over range; windings read a"
                        + " fraction of an ohm, so a hand meter only shows an open one. To the frame: over range. Turn the motor by"
                        + " hand: it must not brake in steps."));
        motors.add(motors(from));
        motors.add(from.signOff());
        sections.add(new Section("Motor phases", motors));
        return from.upright("as-fitted", "As-fitted resistance sheet", Cautions.FOOT_OHMS, sections);
    }

    static Table buses(PackSource from) {
        TableBuilder table = Table.named(
                "as-fitted-bus",
                Column.text("at plug"),
                Column.number("expect", "ohm"),
                Column.number("from", "ohm"),
                Column.number("to", "ohm"),
                Column.writeIn("reading", "ohm", READING_MM),
                Column.writeIn("initials", "", INITIALS_MM));
        for (Map.Entry<String, Reading> at : BusPull.of(from.circuit()).mated().entrySet()) {
            if (at.getValue() instanceof Reading.Ohms ohms) {
                table.row(at.getKey(), ohm(ohms.ohm()), ohm(ohms.least()), ohm(ohms.most()), "", "");
            } else {
                table.row(at.getKey(), "over range", "", "", "", "");
            }
        }
        return table.table();
    }

    private static String ohm(double ohm) {
        return String.format(Locale.ROOT, "%.1f", ohm);
    }

    /** Where packs are plugged: between the plus of the highest and the minus of the lowest pack of each stack. */
    private static Table packs(PackSource from) {
        TableBuilder table = Table.named(
                "as-fitted-packs",
                Column.text("red lead at"),
                Column.text("black lead at"),
                Column.text("expect"),
                Column.text("stop when"),
                Column.writeIn("reading after 5 s", "", READING_MM),
                Column.writeIn("initials", "", INITIALS_MM));
        Circuit circuit = from.circuit();
        PowerGraph power = PowerGraph.of(circuit);
        for (PowerSource top : power.sources()) {
            boolean pack = top.kind() == PowerSource.Kind.PACK && power.works(top);
            boolean carries = power.sources().stream()
                    .anyMatch(other -> other.kind() == PowerSource.Kind.PACK
                            && other.minus() >= 0
                            && circuit.nets().same(other.minus(), top.plus()));
            if (pack && !carries) {
                table.row(
                        plugAt(circuit, top.plus()),
                        plugAt(circuit, power.bottom(top).minus()),
                        "starts low, climbs above 1 kohm as capacitors charge; black on red reversed the same",
                        "below 10 ohm after 5 s",
                        "",
                        "");
                table.row(plugAt(circuit, top.plus()), "frame, bare spot", "above 1 Mohm", "below 1 Mohm", "", "");
            }
        }
        return table.table();
    }

    /** The lead's side of the plug of a pack. */
    private static String plugAt(Circuit circuit, int vertex) {
        Wiring wiring = circuit.wiring();
        int unit = wiring.unitOf(vertex);
        for (int pin :
                vertex < 0 ? new int[0] : circuit.nets().pins(circuit.nets().of(vertex))) {
            if (wiring.unitOf(pin) == unit && wiring.wiresAt(pin).length > 0) {
                Wire wire = wiring.wires().get(wiring.wiresAt(pin)[0]);
                return wire.lead().id() + " at " + wiring.name(pin);
            }
        }
        return vertex < 0 ? "?" : wiring.name(vertex);
    }

    private static Table motors(PackSource from) {
        TableBuilder table = Table.named(
                "as-fitted-motors",
                Column.text("motor"),
                Column.text("at"),
                Column.writeIn("first to second", "ohm", READING_MM),
                Column.writeIn("second to third", "ohm", READING_MM),
                Column.writeIn("third to first", "ohm", READING_MM),
                Column.writeIn("initials", "", INITIALS_MM));
        for (MotorDrive drive : MotorDrives.of(from.circuit())) {
            if (!drive.phaseWires().isEmpty()) {
                String leads = String.join(
                        " ",
                        drive.phaseWires().stream()
                                .map(wire -> from.conductors().name(wire))
                                .distinct()
                                .toList());
                table.row(drive.motor().ref(), leads, "", "", "", "");
            }
        }
        return table.table();
    }
}
