package ringout.present.words;

import java.util.List;

/** The usual cautions before a meter is put on. Common practice, no source. */
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

    private Cautions() {}
}
