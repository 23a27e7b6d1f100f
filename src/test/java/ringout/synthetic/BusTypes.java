package ringout.synthetic;

import java.util.List;

/** What hangs on the chain of a controller. */
final class BusTypes {
    private final Style style;
    private final Pins pins;
    private final String suffix;

    BusTypes(Style style, Pins pins, String suffix) {
        this.style = style;
        this.pins = pins;
        this.suffix = suffix;
    }

    private List<Pins.Pin> socket(Pins.Pin supply) {
        return List.of(supply, pins.high("NCAN"), pins.low("NCAN"), pins.zero("0"));
    }

    private TypeMaker node(String name, String kind, String rail, double nominalV, double minV, double maxV) {
        return new TypeMaker(style, name + suffix, kind)
                .input(rail, nominalV, minV, maxV)
                .load(rail, 0.06, 0.12);
    }

    /** Two sockets that pass bus and supply; the terminator has a switch. */
    UnitType through() {
        return node("NODE-T", "inertial unit", Rails.LOGIC, Rails.LOGIC_V, 4.5, 5.7)
                .plug("bus1", Fit.SMALL, socket(pins.through("V", Rails.LOGIC)))
                .plug("bus2", Fit.SMALL, socket(pins.through("V", Rails.LOGIC)))
                .can("NCAN", "switch", "passive")
                .make();
    }

    /** Two sockets that pass the bus only, and a supply of its own from the packs. */
    UnitType own() {
        return node("NODE-O", "logger", Rails.MAIN, style.nominalV(), style.emptyV() * 0.6, style.fullV() * 1.2)
                .plug("bus1", Fit.SMALL, socket(pins.unused("x")))
                .plug("bus2", Fit.SMALL, socket(pins.unused("x")))
                .plug("pwr", Fit.MEDIUM, List.of(pins.supplyIn("V", Rails.MAIN), pins.zero("0")), "must", true)
                .can("NCAN", "switch", "passive")
                .make();
    }

    /** One socket, no terminator: for a short branch. */
    UnitType leaf() {
        return node("NODE-L", "sensor", Rails.LOGIC, Rails.LOGIC_V, 4.5, 5.7)
                .plug("bus1", Fit.SMALL, socket(pins.supplyIn("V", Rails.LOGIC)), "must", true)
                .can("NCAN", "none", "n/a")
                .make();
    }

    /** A tee of three sockets. */
    UnitType tee() {
        TypeMaker type = new TypeMaker(style, "TEE" + suffix, "splice");
        for (int t = 1; t <= 3; t++) {
            type.plug(
                    "bus" + t,
                    Fit.SMALL,
                    List.of(
                            pins.passive("V", "v"),
                            pins.passive("H", "h"),
                            pins.passive("L", "l"),
                            pins.passive("0", "0")));
        }
        return type.make();
    }

    /** A terminator in a plug of its own. */
    UnitType terminator() {
        return new TypeMaker(style, "TERM" + suffix, "terminator")
                .plug("bus1", Fit.SMALL, List.of(pins.high("TCAN"), pins.low("TCAN")), "must", true)
                .can("TCAN", "fixed", "n/a")
                .make();
    }
}
