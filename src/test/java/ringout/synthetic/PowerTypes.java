package ringout.synthetic;

import java.util.ArrayList;
import java.util.List;

/** Packs, boards, monitors and regulators. */
final class PowerTypes {
    /** Supply outlets of a board. */
    static final int OUTLETS = 8;

    private final Style style;
    private final Pins pins;
    private final String suffix;

    PowerTypes(Style style, Pins pins, String suffix) {
        this.style = style;
        this.pins = pins;
        this.suffix = suffix;
    }

    /** A pack; one of a string has the pre-charge contact in its plus. */
    UnitType pack(boolean suppressor) {
        return new TypeMaker(style, (suppressor ? "PACK-PRE" : "PACK") + suffix, "pack")
                .plug("minus", Fit.MAIN, List.of(pins.packMinus()), "conductors", 1)
                .plug("plus", Fit.MAIN, List.of(pins.packPlus()), "suppressor", suppressor, "conductors", 1)
                .part(
                        "cells",
                        "source",
                        "-",
                        "+",
                        "cells",
                        style.cells(),
                        "parallel",
                        1,
                        "cellMilliohm",
                        1.1,
                        "capacityAh",
                        22,
                        "cRate",
                        15,
                        "fullV",
                        4.2,
                        "nominalV",
                        3.7,
                        "emptyV",
                        3.3,
                        "chemistry",
                        "lithium polymer")
                .make();
    }

    /** The power board: studs for the packs, clamps for two leads each, outlets, and a signal part for pulses. */
    UnitType board() {
        TypeMaker type = new TypeMaker(style, "BOARD" + suffix, "board");
        for (int s = 1; s <= style.strings(); s++) {
            type.plug("bn" + s, Fit.MAIN, List.of(pins.zero("0")), "conductors", 1, "torqueNm", 4);
            type.plug("bp" + s, Fit.MAIN, List.of(pins.through("V", Rails.MAIN)), "conductors", 1, "torqueNm", 5);
        }
        for (int k = 1; k <= style.rotors() / 2; k++) {
            type.plug("kp" + k, Fit.LARGE, List.of(pins.through("V", Rails.MAIN)), "conductors", 2, "torqueNm", 1.2);
            type.plug("kn" + k, Fit.LARGE, List.of(pins.zero("0")), "conductors", 2, "torqueNm", 0.8);
        }
        for (int t = 1; t <= OUTLETS; t++) {
            type.plug("t" + t, Fit.MEDIUM, List.of(pins.through("V", Rails.MAIN), pins.zero("0")));
        }
        if (!style.busDriven()) {
            signals(type);
        }
        return type.input(Rails.MAIN, style.nominalV(), style.emptyV() * 0.6, style.fullV() * 1.2)
                .make();
    }

    private void signals(TypeMaker type) {
        List<Pins.Pin> row = new ArrayList<>();
        for (int r = 1; r <= style.rotors(); r++) {
            row.add(pins.passive("S" + r, "m" + r));
        }
        type.plug("hin", Fit.SMALL, row);
        type.plug("hret", Fit.SMALL, List.of(pins.zero("0"), pins.zero("02")));
        for (int r = 1; r <= style.rotors(); r++) {
            type.plug("o" + r, Fit.SMALL, List.of(pins.passive("S", "m" + r), pins.zero("0")));
        }
    }

    /** Power monitor with the regulator of the avionics, a bus and two sense outputs. */
    UnitType monitor() {
        return new TypeMaker(style, "MONITOR" + suffix, "power monitor")
                .plug("in", Fit.MEDIUM, List.of(pins.supplyIn("V", Rails.MAIN), pins.zero("0")), "must", true)
                .plug(
                        "out",
                        Fit.MEDIUM,
                        List.of(
                                pins.supplyOut("V", Rails.LOGIC),
                                pins.supplyOut("V2", Rails.LOGIC),
                                pins.high("MCAN"),
                                pins.low("MCAN"),
                                pins.zero("0"),
                                pins.zero("02")),
                        "must",
                        true)
                .plug(
                        "sns",
                        Fit.SMALL,
                        List.of(
                                pins.out("VOLT", "sense out", 3.0, ""),
                                pins.out("AMP", "sense out", 3.0, ""),
                                pins.zero("0")),
                        "must",
                        true)
                .input(Rails.MAIN, style.nominalV(), style.emptyV() * 0.6, style.fullV() * 1.2)
                .output(Rails.LOGIC, Rails.LOGIC_V, 0.03, 6)
                .regulator("regulator", Rails.MAIN, Rails.LOGIC, "0V", Rails.LOGIC_V, 6)
                .can("MCAN", "fixed", "n/a")
                .set("voltScale", 18.0, "ampScale", 60.0)
                .make();
    }

    /** A sensor in the return of the packs: battery 0V and load 0V are two points joined by its resistor. */
    UnitType shunt() {
        return new TypeMaker(style, "SHUNT" + suffix, "unit")
                .plug("bat", Fit.MAIN, List.of(pins.zero("0", "0V battery")), "conductors", 1)
                .plug("load", Fit.MAIN, List.of(pins.zero("0", "0V load")), "conductors", 1)
                .part("shunt", "sense resistor", "0V battery", "0V load", "milliohm", 0.1)
                .make();
    }

    /** A regulator with some outlets. */
    UnitType regulator(String name, String rail, double volts, double amps, int outlets) {
        TypeMaker type = new TypeMaker(style, name + suffix, "regulator")
                .plug("in", Fit.MEDIUM, List.of(pins.supplyIn("V", Rails.MAIN), pins.zero("0")), "must", true);
        for (int o = 1; o <= outlets; o++) {
            type.plug("o" + o, Fit.MEDIUM, List.of(pins.supplyOut("V", rail), pins.zero("0")));
        }
        return type.input(Rails.MAIN, style.nominalV(), style.emptyV() * 0.6, style.fullV() * 1.2)
                .output(rail, volts, 0.025, amps)
                .regulator("regulator", Rails.MAIN, rail, "0V", volts, amps)
                .make();
    }

    /** A converter whose output has a 0V of its own. */
    UnitType isolated() {
        return new TypeMaker(style, "ISOLATED" + suffix, "regulator")
                .plug("in", Fit.MEDIUM, List.of(pins.supplyIn("V", Rails.TWELVE), pins.zero("0")), "must", true)
                .plug("o1", Fit.MEDIUM, List.of(pins.supplyOut("V", "v24"), pins.zero("0", "0V isolated")))
                .input(Rails.TWELVE, 12, 9, 16)
                .output("v24", 24, 0.025, 1, "0V isolated")
                .regulator("isolated converter", Rails.TWELVE, "v24", "0V isolated", 24, 1)
                .make();
    }
}
