package ringout.draw;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import ringout.draw.scene.BadgeKind;
import ringout.draw.scene.BusLead;
import ringout.draw.scene.BusMember;
import ringout.draw.scene.BusScene;
import ringout.draw.scene.BusStub;
import ringout.draw.scene.BusTee;
import ringout.draw.scene.FindingLine;
import ringout.draw.scene.Mark;
import ringout.draw.scene.Move;
import ringout.draw.scene.OhmsLine;
import ringout.draw.scene.Presence;
import ringout.draw.scene.SheetInfo;
import ringout.draw.scene.Terminator;

/** Invented buses: a chain with a terminator in the wrong place, and one with everything a bus diagram can show. */
public final class DemoBus {
    private DemoBus() {}

    private static SheetInfo info(String title, String aircraft) {
        return SheetInfo.of(title, "bus diagram", aircraft, "as flown")
                .ownedBy("Alder Flight Works", "B-001")
                .ofTail("tail 3", "C", "9f31c07a5be2")
                .counting(1, 0);
    }

    /** {@return a bus whose last terminator is one member too early} */
    public static BusScene wrongTerminator() {
        return new BusScene(
                info("CAN2", "LW-6 Linewarden"),
                "CAN2",
                "1 Mbit/s",
                List.of(
                        new BusMember("FC", "FC", "flight controller", "10", Terminator.ON, "120 ohm, fixed"),
                        new BusMember("GN1", "GN1", "satellite receiver and compass", "24", Terminator.NONE, ""),
                        new BusMember("IMU", "IMU", "inertial unit", "21", Terminator.NONE, ""),
                        new BusMember("LOG", "LOG", "flight recorder", "31", Terminator.EXTRA, "120 ohm, on"),
                        new BusMember("GMC", "GMC", "gimbal electronics", "33", Terminator.MISSING, "120 ohm, off")),
                List.of(
                        new BusLead("W65", "W65", 0.62),
                        new BusLead("W66", "W66", 0.55),
                        new BusLead("W67", "W67", 0.18),
                        new BusLead("W68", "W68", 0.45)),
                List.of(),
                Optional.empty(),
                List.of(new Move("move", "LOG-R", "GMC-R")),
                List.of(
                        new OhmsLine("FC-C2", "60", "120", "120"),
                        new OhmsLine("GN1-C1", "60", "120", "120"),
                        new OhmsLine("GN1-C2", "60", "120", "120"),
                        new OhmsLine("IMU-C1", "60", "120", "120"),
                        new OhmsLine("IMU-C2", "60", "120", "120"),
                        new OhmsLine("LOG-C1", "60", "120", "120"),
                        new OhmsLine("LOG-C2", "60", "over 5 k", "60"),
                        new OhmsLine("GMC-C1", "60", "60", "over 25 k")),
                List.of(new Mark(1, BadgeKind.S2, false, List.of("LOG-R", "GMC-R", "W68"))),
                List.of(new FindingLine(
                        1,
                        BadgeKind.S2,
                        false,
                        "T07",
                        "terminator not at the end: bus CAN2 is terminated at LOG, but GMC hangs 0.45 m beyond it")),
                List.of());
    }

    /** {@return a bus with stubs, a tee, a ring, lost legs, an unknown and a very short length, and all badges} */
    public static BusScene everything() {
        return new BusScene(
                info("CAN-C", "DM-8 Dewmaker"),
                "CAN-C",
                "500 kbit/s",
                List.of(
                        new BusMember("FC", "FC", "flight controller", "1", Terminator.ON, "120 ohm, fixed"),
                        new BusMember("BMA", "BMA", "battery monitor A", "40", Terminator.OFF, "off"),
                        new BusMember("BMB", "BMB", "battery monitor B", "41", Terminator.NONE, ""),
                        new BusTee("T1"),
                        new BusMember("RADF", "RADF", "forward radar", "50", Terminator.NONE, ""),
                        new BusMember("GNA", "GNA", "satellite receiver", "60", Terminator.MISSING, "not fitted"),
                        new BusMember("TB", "TB", "terminator plug", "", Terminator.ON, "120 ohm plug")),
                List.of(
                        new BusLead("W51", "W51", 0.9),
                        new BusLead("W52", "W52", 0.03),
                        new BusLead("W53", "W53", 0.6),
                        new BusLead("W54", "W54", OptionalDouble.of(0.45), BusLead.Legs.HIGH_ONLY, Presence.FITTED),
                        new BusLead("W55", "W55", OptionalDouble.empty(), BusLead.Legs.BOTH, Presence.FITTED),
                        new BusLead("W56", "W56", OptionalDouble.of(0.7), BusLead.Legs.BOTH, Presence.MISSING)),
                List.of(
                        new BusStub(
                                "T1",
                                new BusLead("W57", "W57", 0.9),
                                new BusMember("RADR", "RADR", "rear radar", "51", Terminator.OFF, "off")),
                        new BusStub(
                                "GNA",
                                new BusLead("W58", "W58", 0.2),
                                new BusMember("LVL", "LVL", "tank level", "61", Terminator.NONE, "", Presence.EXTRA))),
                Optional.of(new BusLead("W99", "W99", OptionalDouble.of(1.2), BusLead.Legs.BOTH, Presence.EXTRA)),
                List.of(new Move("move", "FC-R", "GNA-R"), new Move("move2", "TB-R", "RADR-R")),
                List.of(new OhmsLine("FC-CC", "60", "120", "120"), new OhmsLine("RADR-C1", "40", "60", "120")),
                List.of(
                        new Mark(1, BadgeKind.S1, false, List.of("W54")),
                        new Mark(2, BadgeKind.S2, false, List.of("W99", "W57")),
                        new Mark(3, BadgeKind.S3, false, List.of("BMA", "RADR-R")),
                        new Mark(4, BadgeKind.S4, false, List.of("TB")),
                        new Mark(5, BadgeKind.CANNOT_TELL, false, List.of("W55")),
                        new Mark(6, BadgeKind.S2, true, List.of("GNA-R"))),
                List.of(
                        new FindingLine(1, BadgeKind.S1, false, "T03", "low leg of W54 is open"),
                        new FindingLine(2, BadgeKind.S2, false, "T08", "stub of 0.90 m, limit 0.30 m"),
                        new FindingLine(3, BadgeKind.S3, false, "A02", "address of BMA not read back"),
                        new FindingLine(4, BadgeKind.S4, false, "X01", "label missing"),
                        new FindingLine(5, BadgeKind.CANNOT_TELL, false, "T08", "length of W55 not given"),
                        new FindingLine(6, BadgeKind.S2, true, "T06", "terminator plug accepted for tests")),
                List.of("bench sheet"));
    }
}
