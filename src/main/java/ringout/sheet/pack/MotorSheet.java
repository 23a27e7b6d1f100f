package ringout.sheet.pack;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ringout.graph.signal.ActualSpin;
import ringout.graph.signal.MotorDrive;
import ringout.graph.signal.MotorDrives;
import ringout.model.Datum;
import ringout.model.Rotor;
import ringout.model.Surface;
import ringout.model.shape.Scalars;
import ringout.sheet.Cautions;
import ringout.sheet.document.Block;
import ringout.sheet.document.Caution;
import ringout.sheet.document.Column;
import ringout.sheet.document.Document;
import ringout.sheet.document.Paragraph;
import ringout.sheet.document.Section;
import ringout.sheet.document.Table;
import ringout.sheet.document.TableBuilder;
import ringout.sheet.harness.Conductors;

/** The motor and surface sheet: what is commanded, what must move and which way, and room for what did. */
final class MotorSheet {
    private static final double HAND_MM = 17;

    private MotorSheet() {}

    static Document of(PackSource from) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Caution(Cautions.MOTORS));
        blocks.add(new Paragraph(
                "Propellers off. Command one output at a time at the lowest value that turns. Bearing from the"
                        + " nose, right positive, seen from above. Write which motor turned, which way, and the current; currents of"
                        + " equal motors agree within 15 %. Wrong motor or wrong way: stop, power off, find out why before anything"
                        + " is exchanged."));
        blocks.add(motors(from));
        List<Section> sections = new ArrayList<>(List.of(new Section("Motors", blocks)));
        List<Surface> surfaces = from.aircraft().airframe().surfaces();
        if (!surfaces.isEmpty()) {
            sections.add(new Section("Surfaces", List.of(surfaces(surfaces))));
        }
        sections.add(new Section("", List.of(from.signOff())));
        return new Document(
                "motors",
                "Motor and surface sheet",
                from.mark(),
                1,
                1,
                Document.Form.LANDSCAPE,
                Cautions.FOOT_POWER,
                sections);
    }

    static Table motors(PackSource from) {
        TableBuilder table = Table.named(
                "motors",
                Column.text("output"),
                Column.text("motor"),
                Column.number("bearing", "deg"),
                Column.text("place"),
                Column.text("controller"),
                Column.text("must turn"),
                Column.text("as wired"),
                Column.text("propeller"),
                Column.writeIn("turned", "", HAND_MM),
                Column.writeIn("which way", "", HAND_MM),
                Column.writeIn("current", "A", HAND_MM),
                Column.writeIn("initials", "", HAND_MM));
        for (MotorDrive drive : MotorDrives.of(from.circuit())) {
            Optional<Rotor> rotor = drive.rotor();
            table.row(
                    output(from, drive),
                    drive.motor().ref(),
                    rotor.map(r -> Conductors.cell(r.bearingDeg())).orElse(""),
                    rotor.map(r -> Conductors.cell(r.level())).orElse(""),
                    drive.controller().map(from.wiring().directory()::name).orElse("in the motor"),
                    rotor.map(r -> Conductors.cell(r.spin())).orElse("?"),
                    ActualSpin.of(from.circuit(), drive).map(Scalars::write).orElse("cannot tell"),
                    propeller(drive),
                    "",
                    "",
                    "",
                    "");
        }
        return table.table();
    }

    /** The output as the frame table says, and the pin it really comes from. */
    private static String output(PackSource from, MotorDrive drive) {
        String told = drive.rotor().map(r -> r.output().or("")).orElse("");
        String pins = String.join(
                " ",
                drive.drivers().stream().map(pin -> from.conductors().pin(pin)).toList());
        return told.isEmpty() || pins.isEmpty() ? told + pins : told + " = " + pins;
    }

    private static String propeller(MotorDrive drive) {
        Datum<Boolean> pusher = drive.motor().pusher();
        return Conductors.cell(drive.motor().propeller()) + (pusher.is(true) ? ", pusher" : "");
    }

    private static Table surfaces(List<Surface> surfaces) {
        TableBuilder table = Table.named(
                "surfaces",
                Column.text("surface"),
                Column.text("servo"),
                Column.text("output"),
                Column.text("reversed"),
                Column.writeIn("moved", "", HAND_MM),
                Column.writeIn("which way", "", HAND_MM),
                Column.writeIn("initials", "", HAND_MM));
        for (Surface surface : surfaces) {
            table.row(
                    surface.name(),
                    surface.servo().or(""),
                    surface.output().or(""),
                    Conductors.cell(surface.reversed()),
                    "",
                    "",
                    "");
        }
        return table.table();
    }
}
