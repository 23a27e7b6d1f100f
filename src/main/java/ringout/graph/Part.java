package ringout.graph;

import ringout.model.BusPort;
import ringout.model.InnerPart;

/**
 * A two-terminal part between two points of the graph.
 *
 * @param index number among all parts
 * @param origin what it is and where it comes from
 * @param from vertex it comes from: minus of a source, anode of a diode, input of a regulator, H of a terminator
 * @param to vertex it goes to: plus, cathode, output, L
 * @param zero vertex of the return of a regulator; -1 when there is none
 * @param edge its edge in the graph
 */
public record Part(int index, Origin origin, int from, int to, int zero, int edge) {
    /** What a part is and where it comes from. */
    public sealed interface Origin {}

    /**
     * A part inside a unit.
     *
     * @param unit number of the unit
     * @param part the part of its type
     */
    public record Inner(int unit, InnerPart part) implements Origin {}

    /**
     * The fuse of a lead.
     *
     * @param wire number of the conductor it sits in
     * @param ratingA its rating
     */
    public record LeadFuse(int wire, double ratingA) implements Origin {}

    /**
     * The terminator of a bus node.
     *
     * @param unit number of the unit
     * @param port its bus port
     */
    public record Terminator(int unit, BusPort port) implements Origin {}
}
