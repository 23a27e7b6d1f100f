package ringout.graph;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import ringout.graph.index.IndexGraph;
import ringout.model.Aircraft;
import ringout.model.Pin;
import ringout.model.PinRole;
import ringout.model.Plug;
import ringout.model.Unit;

/**
 * The typed graph of an aircraft with every plug made and every unit aboard.
 *
 * <p>Vertices, in this order: pins of units, points inside units, two ends of every conductor, middles of fused
 * conductors. Edges: see {@link EdgeKind}. A conductor with a fuse is contact, fuse, middle, conductor, contact.
 */
public final class Wiring {
    private static final int[] NO_WIRES = {};

    private final Directory directory;
    private final LeadWires leadWires;
    private final int[] pinStart;
    private final int[] pointStart;
    private final int[] unitOfPin;
    private final int[] unitOfPoint;
    private final @Nullable PinRole[] roleOfPin;
    private final List<Wire> wires;
    private final List<Part> parts;
    private final EdgeKind[] kinds;
    private final int[] refs;
    private final IndexGraph graph;
    private final int[] wireStarts;
    private final int[] wiresOfPins;
    private final WireEdges wireEdges;

    Wiring(WiringBuilder built) {
        directory = built.directory;
        leadWires = built.leadWires;
        pinStart = built.pinStart;
        pointStart = built.pointStart;
        unitOfPin = built.unitOfPin();
        unitOfPoint = built.unitOfPoint();
        roleOfPin = built.roleOfPin();
        wires = List.copyOf(built.wires);
        parts = List.copyOf(built.parts);
        kinds = built.edges.kinds();
        refs = built.edges.refs();
        graph = built.edges.graph(built.vertexCount);
        wireStarts = built.wireStarts();
        wiresOfPins = built.wiresOfPins(wireStarts);
        wireEdges = new WireEdges(wires.size(), kinds, refs);
    }

    /** Builds the graph of an aircraft in time linear in its pins and conductors. */
    public static Wiring of(Aircraft aircraft) {
        return new Wiring(new WiringBuilder(new Directory(aircraft)));
    }

    /** What is aboard, by name. */
    public Directory directory() {
        return directory;
    }

    /** The aircraft. */
    public Aircraft aircraft() {
        return directory.aircraft();
    }

    /** The graph over all edges. */
    public IndexGraph graph() {
        return graph;
    }

    /** Kind of an edge. */
    public EdgeKind kind(int edge) {
        return kinds[edge];
    }

    /** What an edge stands for: number of the wire (conductor, contact), of the pin (join) or of the part. */
    public int ref(int edge) {
        return refs[edge];
    }

    /** The edge of a conductor without its contacts. */
    public int conductorEdge(Wire wire) {
        return wireEdges.conductor(wire.index());
    }

    /** The edge of the contact of a conductor at its from end. */
    public int fromContactEdge(Wire wire) {
        return wireEdges.fromContact(wire.index());
    }

    /** The edge of the contact of a conductor at its to end. */
    public int toContactEdge(Wire wire) {
        return wireEdges.toContact(wire.index());
    }

    /** All conductors, in the order of the rows. */
    public List<Wire> wires() {
        return wires;
    }

    /** All two-terminal parts. */
    public List<Part> parts() {
        return parts;
    }

    /** Ends that point to nothing aboard. */
    public List<LooseEnd> looseEnds() {
        return leadWires.loose();
    }

    /** What the from end of a row points to. */
    public Site from(int lead) {
        return leadWires.from(lead);
    }

    /** What the to end of a row points to. */
    public Site to(int lead) {
        return leadWires.to(lead);
    }

    /** Number of pin vertices; pins are vertices 0 up to this. */
    public int pinCount() {
        return unitOfPin.length;
    }

    /** Whether a vertex is a pin of a unit. */
    public boolean isPin(int vertex) {
        return vertex < unitOfPin.length;
    }

    /** Whether a vertex is a point inside a unit. */
    public boolean isPoint(int vertex) {
        return vertex >= unitOfPin.length && vertex < unitOfPin.length + unitOfPoint.length;
    }

    /** The vertex of a pin of a unit, the pin numbered in its type. */
    public int pinVertex(int unit, int pin) {
        return pinStart[unit] + pin;
    }

    /** The vertex of a point inside a unit, if it has one of that name. */
    public Optional<Integer> pointVertex(int unit, String name) {
        return directory.layout(unit).point(name).map(point -> pointStart[unit] + point);
    }

    /** First pin vertex of a unit. */
    public int firstPin(int unit) {
        return pinStart[unit];
    }

    /** One past the last pin vertex of a unit. */
    public int endPin(int unit) {
        return pinStart[unit + 1];
    }

    /** First point vertex of a unit. */
    public int firstPoint(int unit) {
        return pointStart[unit];
    }

    /** One past the last point vertex of a unit. */
    public int endPoint(int unit) {
        return pointStart[unit + 1];
    }

    /** Number of the unit a pin or point belongs to; -1 for ends of conductors. */
    public int unitOf(int vertex) {
        if (isPin(vertex)) {
            return unitOfPin[vertex];
        }
        return isPoint(vertex) ? unitOfPoint[vertex - unitOfPin.length] : -1;
    }

    /** The unit a pin belongs to; only for pins of units, not joints. */
    public Unit unit(int pin) {
        return directory.unit(unitOfPin[pin]);
    }

    /** Number of a pin within its type. */
    public int localPin(int pin) {
        return pin - pinStart[unitOfPin[pin]];
    }

    /** The pin record of a pin vertex. */
    public Pin pin(int pin) {
        int unit = unitOfPin[pin];
        return directory.layout(unit).pin(pin - pinStart[unit]);
    }

    /** The role of a pin vertex, if known. */
    public Optional<PinRole> role(int pin) {
        return Optional.ofNullable(roleOfPin[pin]);
    }

    /** Whether a pin is known to have a role. */
    public boolean is(int pin, PinRole role) {
        return roleOfPin[pin] == role;
    }

    /** Number of the plug of a pin within its type. */
    public int plugIndex(int pin) {
        return directory.layout(unitOfPin[pin]).plugOf(localPin(pin));
    }

    /** The plug of a pin. */
    public Plug plug(int pin) {
        return directory.type(unitOfPin[pin]).plugs().get(plugIndex(pin));
    }

    /** First pin vertex of a plug of a unit. */
    public int firstPin(int unit, int plug) {
        return pinStart[unit] + directory.layout(unit).firstPin(plug);
    }

    /** One past the last pin vertex of a plug of a unit. */
    public int endPin(int unit, int plug) {
        return pinStart[unit] + directory.layout(unit).endPin(plug);
    }

    /** Numbers of the wires at a pin, in the order of the rows. */
    public int[] wiresAt(int pin) {
        int start = wireStarts[pin];
        int end = wireStarts[pin + 1];
        return start == end ? NO_WIRES : Arrays.copyOfRange(wiresOfPins, start, end);
    }

    /** UNIT-PLUG of a plug. */
    public String plugName(int unit, int plug) {
        if (directory.isJoint(unit)) {
            return directory.name(unit);
        }
        return directory.name(unit) + "-"
                + directory.type(unit).plugs().get(plug).name();
    }

    /** Name of a vertex as the user would say it: UNIT-PLUG-PIN, UNIT (rail), LEAD@UNIT-PLUG-PIN. */
    public String name(int vertex) {
        if (isPin(vertex)) {
            int unit = unitOfPin[vertex];
            String plug = plugName(unit, plugIndex(vertex));
            return directory.isJoint(unit) ? plug : plug + "-" + pin(vertex).number();
        }
        if (isPoint(vertex)) {
            int unit = unitOf(vertex);
            return directory.name(unit) + " " + directory.layout(unit).points().get(vertex - pointStart[unit]);
        }
        int offset = vertex - unitOfPin.length - unitOfPoint.length;
        if (offset >= 2 * wires.size()) {
            return "fuse in " + fused(vertex).lead().id();
        }
        Wire wire = wires.get(offset / 2);
        return wire.lead().id() + "@" + name(offset % 2 == 0 ? wire.fromPin() : wire.toPin());
    }

    private Wire fused(int vertex) {
        for (Part part : parts) {
            if (part.origin() instanceof Part.LeadFuse fuse && (part.from() == vertex || part.to() == vertex)) {
                return wires.get(fuse.wire());
            }
        }
        throw new IllegalArgumentException("not a vertex: " + vertex);
    }
}
