package ringout.trace.predict;

/** One thing to look at, to measure or to try. Units and plugs by number, contacts by vertex. */
public sealed interface FieldTest {
    /**
     * Whether a unit answers.
     *
     * @param unit number of the unit
     */
    record Answers(int unit) implements FieldTest {}

    /**
     * Whether any light of a unit is on.
     *
     * @param unit number of the unit
     */
    record Light(int unit) implements FieldTest {}

    /** The current out of the packs at rest against the sheet. */
    record SupplyCurrent() implements FieldTest {}

    /**
     * Ohms between H and L, power off.
     *
     * @param unit number of the unit
     * @param plug number of the plug in its type
     * @param side how the meter is put on
     */
    record BusOhms(int unit, int plug, Side side) implements FieldTest {
        /** How the meter is put on. */
        public enum Side {
            /** Everything mated, from behind the plug. */
            MATED,
            /** Plug pulled, into the lead. */
            INTO_LEAD,
            /** Plug pulled, into the unit. */
            INTO_UNIT
        }
    }

    /**
     * Ohms from a bus leg to 0V, power off, everything mated.
     *
     * @param pin vertex of the contact
     * @param zero vertex of a 0V contact
     */
    record LegToZero(int pin, int zero) implements FieldTest {}

    /**
     * Volts at a mated supply contact, power on.
     *
     * @param plus vertex of the supply contact
     * @param zero vertex of its 0V contact
     */
    record Volts(int plus, int zero) implements FieldTest {}

    /**
     * Volts in the pulled plug of a supply with a load of 10 ohm on it; rails up to 6 V only.
     *
     * @param plus vertex of the supply contact
     * @param zero vertex of its 0V contact
     */
    record LoadedVolts(int plus, int zero) implements FieldTest {}

    /**
     * Volts of a bus leg against 0V with the bus busy.
     *
     * @param pin vertex of the contact
     * @param high whether it is the H leg
     */
    record LegVolts(int pin, boolean high) implements FieldTest {}

    /**
     * The sign of H against L at a mated plug with the bus busy.
     *
     * @param high vertex of the H contact
     * @param low vertex of the L contact
     */
    record LegSign(int high, int low) implements FieldTest {}

    /**
     * Power on, plug pulled: volts at each signal wire of the lead against 0V.
     *
     * @param unit number of the unit the plug is pulled from
     * @param plug number of the plug in its type
     */
    record WireVolts(int unit, int plug) implements FieldTest {}

    /**
     * Volts across a mated contact under load.
     *
     * @param wire number of the conductor
     * @param pin vertex of the contact
     */
    record Drop(int wire, int pin) implements FieldTest {}

    /**
     * A plug is pulled: does the rest recover?
     *
     * @param unit number of the unit
     * @param plug number of the plug in its type
     */
    record Unplug(int unit, int plug) implements FieldTest {}

    /**
     * The settings of a unit as it says them itself.
     *
     * @param unit number of the unit
     */
    record ReadSettings(int unit) implements FieldTest {}

    /**
     * Latch, colour, mark and port of a plug.
     *
     * @param unit number of the unit
     * @param plug number of the plug in its type
     */
    record Look(int unit, int plug) implements FieldTest {}

    /**
     * A lead is rung out, both plugs pulled: each conductor through, to its own contact, to no other.
     *
     * @param lead id of the row
     */
    record RingLead(String lead) implements FieldTest {}

    /**
     * A lead known to be good is laid outside in the stead of one.
     *
     * @param lead id of the row
     */
    record SwapLead(String lead) implements FieldTest {}

    /**
     * A unit known to be good, set alike, in the stead of one.
     *
     * @param unit number of the unit
     */
    record SwapUnit(int unit) implements FieldTest {}

    /**
     * A unit is tried on the bench.
     *
     * @param unit number of the unit
     */
    record BenchUnit(int unit) implements FieldTest {}
}
