package ringout.solve.dc;

/** What came of solving a circuit with its loads scaled. */
sealed interface Attempt {

    /** A solution in which nothing contradicts. */
    final class Settled implements Attempt {

        private final LoadFlow flow;
        private final boolean[] conducting;
        private final double[] cap;

        Settled(LoadFlow flow, boolean[] conducting, double[] cap) {
            this.flow = flow;
            this.conducting = conducting;
            this.cap = cap;
        }

        /** {@return the loads' currents} */
        LoadFlow flow() {
            return flow;
        }

        /** {@return whether an element conducts} */
        boolean conducts(int element) {
            return conducting[element];
        }

        /** {@return the highest source voltage a regulator is allowed} */
        double cap(int element) {
            return cap[element];
        }
    }

    /** The loads ask for more than the network can carry. */
    record Lost() implements Attempt {}

    /**
     * A regulator cannot hold its current limit by giving less voltage.
     *
     * @param element number of the regulator
     * @param amps output current it would give without the limit
     */
    record Overloaded(int element, double amps) implements Attempt {}

    /** The states of diodes and regulators did not come to rest. */
    record Restless() implements Attempt {}
}
