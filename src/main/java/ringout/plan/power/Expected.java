package ringout.plan.power;

/** What an instrument should read in a stage, or why that cannot be told. */
public sealed interface Expected {
    /** {@return where the instrument is put} */
    String at();

    /**
     * A reading with a band.
     *
     * @param at where the instrument is put
     * @param value the computed value
     * @param low least that is right
     * @param high most that is right
     * @param unit V or A
     * @param band where the band comes from
     */
    record Reading(String at, double value, double low, double high, String unit, String band) implements Expected {
        /** {@return whether a reading is right} */
        public boolean holds(double read) {
            return low <= read && read <= high;
        }
    }

    /**
     * Something to look at or measure that no operating point is behind.
     *
     * @param at where
     * @param words what must be so
     */
    record Look(String at, String words) implements Expected {}

    /**
     * Cannot be told.
     *
     * @param at where the instrument is put
     * @param needs what is missing, in trade words
     */
    record CannotTell(String at, String needs) implements Expected {}
}
