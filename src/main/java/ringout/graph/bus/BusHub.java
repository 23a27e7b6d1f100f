package ringout.graph.bus;

/**
 * A place where pairs meet: a bus port of a unit, or a pair of passive points (tee, splice, board).
 *
 * @param index number among all hubs of the circuit
 * @param unit number of the unit or joint
 * @param port name of the bus port; empty for passive points
 * @param high vertex of the H leg; of passive points the one reached as H; -1 when there is none
 * @param low vertex of the L leg; -1 when there is none
 */
public record BusHub(int index, int unit, String port, int high, int low) {
    /** Whether it is a member of the bus and not a passive point. */
    public boolean member() {
        return !port.isEmpty();
    }
}
