package ringout.graph.bus;

/**
 * A place where pairs meet: a bus port of a unit, or a pair of passive points (tee, splice, board).
 *
 * @param index number among all hubs of the circuit
 * @param unit number of the unit or joint
 * @param port name of the bus port; empty for passive points
 * @param high vertex of the H leg; of passive points the one named so or else reached as H; -1 when there is none
 * @param low vertex of the L leg; -1 when there is none
 */
public record BusHub(int index, int unit, String port, int high, int low) {
    private static final String SOCKET = " @";

    /** Name of one socket of a port whose sockets are not joined by copper. */
    static String socket(String port, String plug) {
        return port + SOCKET + plug;
    }

    /** Whether it is a member of the bus and not a passive point. */
    public boolean member() {
        return !port.isEmpty();
    }

    /** Name of the port in the unit type, also when only one of its sockets is meant. */
    public String typePort() {
        int at = port.indexOf(SOCKET);
        return at < 0 ? port : port.substring(0, at);
    }

    /** A leg to put a meter on, H where there is one. */
    public int leg() {
        return high >= 0 ? high : low;
    }
}
