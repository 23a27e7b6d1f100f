package ringout.draw;

import java.util.ArrayList;
import java.util.List;
import ringout.draw.scene.BadgeKind;
import ringout.draw.scene.Box;
import ringout.draw.scene.FindingLine;
import ringout.draw.scene.Fitting;
import ringout.draw.scene.Fitting.Symbol;
import ringout.draw.scene.Mark;
import ringout.draw.scene.Move;
import ringout.draw.scene.Pin;
import ringout.draw.scene.Plug;
import ringout.draw.scene.Presence;
import ringout.draw.scene.Reference;
import ringout.draw.scene.Row;
import ringout.draw.scene.SheetInfo;
import ringout.draw.scene.Splice;
import ringout.draw.scene.Wire;
import ringout.draw.scene.WireKind;
import ringout.draw.scene.WiringScene;
import ringout.draw.scene.WiringSceneBuilder;

/** An invented sheet with every kind of wire, mark and sign: 12 boxes, a splice, about 60 wires. */
public final class DemoScene {
    private final WiringSceneBuilder scene;

    private DemoScene() {
        scene = WiringScene.builder(
                SheetInfo.of("avionics and payload", "wiring diagram", "LW-6 Linewarden", "as flown")
                        .ownedBy("Alder Flight Works", "LW6-W-002")
                        .ofTail("tail 3", "C", "9f31c07a5be2")
                        .numbered(2, 5)
                        .signed("R. Holm", "", java.util.Optional.empty())
                        .counting(5, 1));
    }

    /** {@return the sheet} */
    public static WiringScene of() {
        DemoScene demo = new DemoScene();
        demo.addBoxes();
        demo.addWires();
        demo.addMarks();
        return demo.scene.build();
    }

    private static Plug plug(String unit, String name, String... signals) {
        List<Row> rows = new ArrayList<>();
        for (int i = 0; i < signals.length; i++) {
            rows.add(new Pin(unit + "-" + name + "-" + (i + 1), Integer.toString(i + 1), signals[i]));
        }
        return new Plug(unit + "-" + name, name, rows);
    }

    private static Plug bus(String unit, String name, Row... fittings) {
        List<Row> rows = new ArrayList<>(
                plug(unit, name, "+5.3 V", "CAN H", "CAN L", "0V").rows());
        rows.addAll(List.of(fittings));
        return new Plug(unit + "-" + name, name, rows);
    }

    private void addBoxes() {
        scene.box(new Box(
                "FC",
                "FC",
                "flight controller",
                "hub upper",
                List.of(
                        plug("FC", "P1", "+5.3 V", "+5.3 V", "sense I", "sense V", "0V", "0V"),
                        bus("FC", "C2", new Fitting("FC-C2-R", Symbol.TERMINATOR_ON, "120 ohm")),
                        plug("FC", "S1", "+5.3 V", "TX", "RX", "0V"),
                        plug("FC", "I2C", "+5.3 V", "SCL", "SDA", "0V"),
                        plug("FC", "MA", "1", "2", "3", "4", "0V"),
                        plug("FC", "RC", "+5.3 V", "in", "0V"))));
        scene.box(new Box(
                "PMON",
                "PMON",
                "power monitor and 5.3 V regulator",
                "hub upper",
                List.of(
                        plug("PMON", "IN", "+44 V", "0V"),
                        plug("PMON", "OUT", "+5.3 V", "+5.3 V", "sense I", "sense V", "0V", "0V"))));
        scene.box(new Box(
                "GN1", "GN1", "satellite receiver and compass", "mast", List.of(bus("GN1", "C1"), bus("GN1", "C2"))));
        scene.box(new Box(
                "LOG",
                "LOG",
                "flight recorder",
                "hub upper",
                List.of(
                        plug("LOG", "PWR", "+44 V", "0V"),
                        bus("LOG", "C1"),
                        bus("LOG", "C2", new Fitting("LOG-C2-R", Symbol.TERMINATOR_ON, "120 ohm", Presence.EXTRA)))));
        scene.box(new Box(
                "GMC",
                "GMC",
                "gimbal electronics",
                "nose rail",
                List.of(
                        plug("GMC", "PWR", "+12 V", "0V"),
                        bus("GMC", "C1", new Fitting("GMC-C1-R", Symbol.TERMINATOR_OFF, "120 ohm", Presence.MISSING)),
                        plug("GMC", "PH", "A", "B", "C"))));
        scene.box(new Box(
                "GIM",
                "GIM",
                "gimbal with zoom and thermal head",
                "nose rail",
                List.of(plug("GIM", "PH", "A", "B", "C"))));
        scene.box(new Box(
                "GN2",
                "GN2",
                "second satellite receiver",
                "rear mast",
                List.of(plug("GN2", "U", "+5 V", "TX", "RX", "0V"))));
        scene.box(new Box(
                "RX", "RX", "command receiver", "right rail", List.of(plug("RX", "OUT", "+5.3 V", "out", "0V"))));
        scene.box(new Box(
                "LIDF",
                "LIDF",
                "forward rangefinder",
                "nose",
                List.of(plug("LIDF", "I", "+5.3 V", "SCL", "SDA", "0V"))));
        scene.box(new Box(
                "LIDD",
                "LIDD",
                "downward rangefinder",
                "belly",
                List.of(plug("LIDD", "I", "+5.3 V", "SCL", "SDA", "0V"))));
        scene.box(new Box(
                "RG12",
                "RG12",
                "12 V 8 A regulator",
                "hub lower",
                List.of(
                        plug("RG12", "IN", "+44 V", "0V"),
                        plug("RG12", "O", "+12 V", "0V"),
                        plug("RG12", "O2", "+12 V", "0V"))));
        scene.box(new Box(
                "VTX",
                "VTX",
                "video link transmitter",
                "left rear rail",
                List.of(plug("VTX", "PWR", "+12 V", "0V"), plug("VTX", "V", "video", "0V"))));
        scene.box(new Box(
                "CAM", "CAM", "line camera", "nose rail", List.of(plug("CAM", "V", "video", "0V")), Presence.FITTED));
        scene.splice(new Splice("SPC", "SP1 SCL"));
        scene.splice(new Splice("SPD", "SP2 SDA"));
    }

    private void wire(String lead, int n, String size, String colour, WireKind kind, String from, String to) {
        scene.wire(new Wire(lead + "." + n, lead, size, colour, kind, lead + " net " + n, from, to));
    }

    private void busLead(String lead, String from, String to) {
        wire(lead, 1, "24", "RD", WireKind.SUPPLY, from + "-1", to + "-1");
        wire(lead, 2, "26", "WH", WireKind.BUS, from + "-2", to + "-2");
        wire(lead, 3, "26", "BU", WireKind.BUS, from + "-3", to + "-3");
        wire(lead, 4, "24", "BK", WireKind.RETURN, from + "-4", to + "-4");
    }

    private void addWires() {
        for (int pin = 1; pin <= 6; pin++) {
            WireKind kind = pin <= 2 ? WireKind.SUPPLY : pin <= 4 ? WireKind.OTHER : WireKind.RETURN;
            wire("W62", pin, "22", pin <= 2 ? "RD" : pin <= 4 ? "YE" : "BK", kind, "PMON-OUT-" + pin, "FC-P1-" + pin);
        }
        busLead("W65", "FC-C2", "GN1-C1");
        busLead("W66", "GN1-C2", "LOG-C1");
        busLead("W68", "LOG-C2", "GMC-C1");
        wire("W71", 1, "26", "RD", WireKind.SUPPLY, "FC-S1-1", "GN2-U-1");
        wire("W71", 2, "26", "GN", WireKind.SERIAL, "FC-S1-2", "GN2-U-2");
        wire("W71", 3, "26", "GNYE", WireKind.SERIAL, "FC-S1-3", "GN2-U-3");
        wire("W71", 4, "26", "BK", WireKind.RETURN, "FC-S1-4", "GN2-U-4");
        wire("W81", 1, "26", "RD", WireKind.SUPPLY, "FC-RC-1", "RX-OUT-1");
        wire("W81", 2, "26", "WHOG", WireKind.PULSE, "FC-RC-2", "RX-OUT-2");
        wire("W81", 3, "26", "BK", WireKind.RETURN, "FC-RC-3", "RX-OUT-3");
        wire("W75", 1, "26", "RD", WireKind.SUPPLY, "FC-I2C-1", "LIDF-I-1");
        wire("W75", 2, "28", "VT", WireKind.I2C, "FC-I2C-2", "SPC");
        wire("W75", 3, "28", "GY", WireKind.I2C, "FC-I2C-3", "SPD");
        wire("W75", 4, "26", "BK", WireKind.RETURN, "FC-I2C-4", "LIDF-I-4");
        wire("W76", 1, "28", "VT", WireKind.I2C, "SPC", "LIDF-I-2");
        wire("W76", 2, "28", "GY", WireKind.I2C, "SPD", "LIDF-I-3");
        wire("W77", 1, "28", "VT", WireKind.I2C, "SPC", "LIDD-I-2");
        wire("W77", 2, "28", "GY", WireKind.I2C, "SPD", "LIDD-I-3");
        wire("W78", 1, "26", "RD", WireKind.SUPPLY, "FC-I2C-1", "LIDD-I-1");
        scene.wire(
                new Wire("W78.2", "W78", "26", "BK", WireKind.RETURN, "0V", "FC-I2C-4", "LIDD-I-4", Presence.MISSING));
        wire("W91", 1, "18", "RD", WireKind.SUPPLY, "RG12-O-1", "GMC-PWR-1");
        wire("W91", 2, "18", "BK", WireKind.RETURN, "RG12-O-2", "GMC-PWR-2");
        wire("W92", 1, "20", "RD", WireKind.SUPPLY, "RG12-O2-1", "VTX-PWR-1");
        wire("W92", 2, "20", "BK", WireKind.RETURN, "RG12-O2-2", "VTX-PWR-2");
        wire("W93", 1, "", "", WireKind.VIDEO, "CAM-V-1", "VTX-V-1");
        wire("W93", 2, "", "", WireKind.VIDEO, "CAM-V-2", "VTX-V-2");
        wire("W51", 1, "20", "RD", WireKind.PHASE, "GMC-PH-1", "GIM-PH-1");
        wire("W51", 2, "20", "YE", WireKind.PHASE, "GMC-PH-2", "GIM-PH-2");
        wire("W51", 3, "20", "BU", WireKind.PHASE, "GMC-PH-3", "GIM-PH-3");
        for (int i = 1; i <= 5; i++) {
            flag(
                    "W41",
                    i,
                    "26",
                    i == 5 ? "BK" : "WH",
                    i == 5 ? WireKind.RETURN : WireKind.PULSE,
                    "FC-MA-" + i,
                    "PDB-HA-" + i);
        }
        flag("W61", 1, "16", "RD", WireKind.SUPPLY, "PMON-IN-1", "PDB-T1-1");
        flag("W61", 2, "16", "BK", WireKind.RETURN, "PMON-IN-2", "PDB-T1-2");
        flag("W90", 1, "16", "RD", WireKind.SUPPLY, "RG12-IN-1", "PDB-T2-1");
        flag("W90", 2, "16", "BK", WireKind.RETURN, "RG12-IN-2", "PDB-T2-2");
        flag("W88", 1, "24", "RD", WireKind.SUPPLY, "LOG-PWR-1", "PDB-T3-1");
        flag("W88", 2, "24", "BK", WireKind.RETURN, "LOG-PWR-2", "PDB-T3-2");
        scene.wire(new Wire("W99.1", "W99", "26", "GN", WireKind.OTHER, "x", "RX-OUT-2", "GN2-U-2", Presence.EXTRA));
    }

    private void flag(String lead, int n, String size, String colour, WireKind kind, String from, String far) {
        scene.reference(new Reference("ref-" + far, far + " sheet 1 C4"));
        wire(lead, n, size, colour, kind, from, "ref-" + far);
    }

    private void addMarks() {
        scene.move(new Move("move-terminator", "LOG-C2-R", "GMC-C1-R"));
        mark(
                1,
                BadgeKind.S1,
                false,
                "P10",
                "draws 6 to 28 A, widest 0V path is 2.2 A through W78: return wire not fitted",
                "W78.2",
                "LIDD");
        mark(
                2,
                BadgeKind.S2,
                false,
                "T07",
                "terminator not at the end: bus CAN2 is terminated at LOG, but GMC hangs 0.45 m beyond it",
                "LOG-C2",
                "GMC-C1-R",
                "W68.2");
        mark(
                3,
                BadgeKind.S3,
                false,
                "S07",
                "transmit on transmit, receive on receive: W71 from FC-S1 to GN2-U is straight",
                "W71.2",
                "W71.3");
        mark(4, BadgeKind.S4, false, "M14", "servo lead W81 has no strain relief recorded", "RX");
        mark(
                5,
                BadgeKind.CANNOT_TELL,
                false,
                "M02",
                "cannot tell whether W93 is long enough: route length not given",
                "W93.1");
        mark(6, BadgeKind.S3, true, "X02", "lead W99 is not in the list of leads", "W99.1");
        mark(7, BadgeKind.S2, false, "A08", "both rangefinders answer at 0x62", "LIDF-I", "LIDD-I-2");
    }

    private void mark(int n, BadgeKind kind, boolean waived, String code, String title, String... targets) {
        scene.mark(new Mark(n, kind, waived, List.of(targets)));
        scene.finding(new FindingLine(n, kind, waived, code, title));
    }
}
