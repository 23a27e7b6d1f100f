package ringout.plan.power;

import java.util.List;

/**
 * One stage of the first power-up.
 *
 * @param id U0, U1 and so on
 * @param kind what is done in it
 * @param what what is plugged or tried, in words
 * @param units units that take power for the first time in it
 * @param pulled plugs that must be open
 * @param plugged plugs that are made for it, with the power off
 * @param supply what feeds it
 * @param readings what must be read, voltages first
 * @param stop when to switch off at once
 * @param before what must be so before the power comes on
 * @param notes what was assumed, and what the procedure says otherwise
 * @param step id of the step of the procedure that does it; empty when none does
 */
public record PowerStage(
        String id,
        Kind kind,
        String what,
        List<String> units,
        List<String> pulled,
        List<String> plugged,
        Supply supply,
        List<Expected> readings,
        List<String> stop,
        List<String> before,
        List<String> notes,
        String step) {
    /** What a stage does. */
    public enum Kind {
        /** Ohms before any power. */
        OHMS,
        /** On a bench supply. */
        BENCH,
        /** On the packs, motors at rest. */
        PACKS,
        /** Motors turn one by one, without propellers. */
        MOTORS,
        /** The first hover. */
        HOVER
    }
}
