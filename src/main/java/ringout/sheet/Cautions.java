package ringout.sheet;

import java.util.List;

/** The usual cautions, each before the work it belongs to. Common practice, no source. */
public final class Cautions {
    /** Before ohms are measured. */
    public static final List<String> OHMS = List.of(
            "power off and packs out, propellers off; then wait until the capacitors are down: below 5 V and 10 s, a light"
                    + " that is out proves nothing",
            "a live bus or rail gives nonsense and can destroy the meter: measure volts first, then change to ohms",
            "touch the meter's leads together first and take off what they read, 0.2 ohm or so",
            "pulling a plug changes the network: pull only what is told here, and mate and lock it again");

    /** Before volts are measured. */
    public static final List<String> VOLTS = List.of(
            "power is on: propellers off, aircraft restrained, area clear, transmitter on, gimbal and gear free to move",
            "50 V and more arcs and burns, wet skin feels less: eye protection, one hand, no rings, cover what you do not"
                    + " measure; packs give kiloamperes into a slip",
            "fused meter leads, a meter of measurement category and range for the pack's full voltage; look at range and"
                    + " jacks before every measurement",
            "measure from behind a mated plug, never with a bare needle at a main power plug; never pull a power plug live");

    /** Before insulation is measured. */
    public static final List<String> INSULATION = List.of(
            "every unit unplugged, packs out: the voltage of an insulation tester kills electronics, and a unit left in makes"
                    + " the reading worthless",
            "an insulation tester only on the bare harness and only where the maker of the wire allows its voltage; else the"
                    + " highest ohm range of the meter",
            "the tester bites and cables keep a charge: discharge each net before it is touched");

    /** Before a pack is plugged. */
    public static final List<String> PACKS = List.of(
            "propellers off before any pack is plugged on the bench; transmitter on first, its antenna on before its power",
            "no rings; one plug at a time, cover the other; the suppressed contact goes in last and comes out first",
            "packs in parallel only when their voltages agree within 0.05 V a cell",
            "60 V DC is a touch limit for dry skin, wet it is nearer 30 V, and a pack arcs badly: eye protection, insulated"
                    + " tools",
            "a swollen, dented or wet pack: stop; warm, hissing or smoking: people away, do not carry it, sand or extinguisher"
                    + " ready");

    /** Before a motor turns. */
    public static final List<String> MOTORS = List.of(
            "propellers off; aircraft held down, area clear, one person at the switch and nobody else near the arms",
            "gear, gimbal and surfaces move without warning: hands and tools clear",
            "an ejector keeps its safe pin, its line of fire stays clear");

    /** At the foot of every page. */
    public static final String FOOT =
            "Propellers off before any pack is plugged. Local codes and the makers' data come first.";

    /** At the foot of every page on which ohms are measured. */
    public static final String FOOT_OHMS = "Propellers off, packs out, below 5 V before ohms are measured. Never test"
            + " insulation with a unit plugged. Local codes and the makers' data come first.";

    /** At the foot of every page on which power is on. */
    public static final String FOOT_POWER =
            "Propellers off, aircraft restrained, area clear, eye protection. Stop at anything"
                    + " warm, smoking or unexpected. Local codes and the makers' data come first.";

    private Cautions() {}
}
