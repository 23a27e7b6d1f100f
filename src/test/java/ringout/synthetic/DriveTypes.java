package ringout.synthetic;

import java.util.List;

/** Speed controllers and motors. */
final class DriveTypes {
    /** Average current of one speed controller. */
    static final double AVERAGE_A = 6;

    /** Peak current of one speed controller. */
    static final double PEAK_A = 28;

    private final Style style;
    private final Pins pins;
    private final String suffix;

    DriveTypes(Style style, Pins pins, String suffix) {
        this.style = style;
        this.pins = pins;
        this.suffix = suffix;
    }

    private TypeMaker powered(String name) {
        return new TypeMaker(style, name + suffix, "speed controller")
                .plug("p", Fit.LARGE, List.of(pins.supplyIn("V", Rails.MAIN)), "must", true)
                .plug("n", Fit.LARGE, List.of(pins.zero("0")), "must", true)
                .plug("ph", Fit.LARGE, List.of(pins.phase("A"), pins.phase("B"), pins.phase("C")), "must", true)
                .input(Rails.MAIN, style.nominalV(), style.emptyV() * 0.6, style.fullV() * 1.2)
                .add(
                        "loads",
                        Row.of("rail", Rails.MAIN, "idleA", 0.05, "law", "constant power")
                                .with("averageW", Numbers.round(AVERAGE_A * style.nominalV()))
                                .with("peakA", PEAK_A, "peakS", 5))
                .set("outputProtocols", List.of("servo pulse", "fast pulse"), "maxRateHz", 500)
                .set("inputMicrofarad", 680, "inputPrecharge", false, "maxSupplyLeadMm", 1200)
                .set("propellerHazard", true);
    }

    /** Driven by a pulse. */
    UnitType pulse() {
        return powered("DRIVE-P")
                .plug("sig", Fit.SMALL, List.of(pins.in("S", "pulse in", 2.0, 5.5), pins.zero("0")), "must", true)
                .make();
    }

    /** Driven over a bus, with two sockets in parallel. */
    UnitType bus() {
        List<Pins.Pin> socket = List.of(pins.high("ECAN"), pins.low("ECAN"), pins.zero("0"));
        return powered("DRIVE-C")
                .plug("bus1", Fit.SMALL, socket, "must", true)
                .plug("bus2", Fit.SMALL, socket)
                .can("ECAN", "switch", "passive")
                .set("zeroBasedIndex", false)
                .make();
    }

    /** A motor by its base direction. */
    UnitType motor(String spin) {
        return new TypeMaker(style, "MOTOR-" + spin + suffix, "motor")
                .plug("ph", Fit.LARGE, List.of(pins.phase("U"), pins.phase("V"), pins.phase("W")), "must", true)
                .set("baseSpin", spin, "propellerHazard", true)
                .make();
    }
}
