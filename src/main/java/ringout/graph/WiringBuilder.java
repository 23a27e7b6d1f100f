package ringout.graph;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import ringout.model.BusPort;
import ringout.model.Datum;
import ringout.model.FuseEnd;
import ringout.model.InnerPart;
import ringout.model.Lead;
import ringout.model.PinRole;
import ringout.model.TerminatorFit;
import ringout.model.TerminatorState;
import ringout.model.UnitType;

/** Gives every pin, point and conductor its vertex and lays the edges. */
final class WiringBuilder {
    final Directory directory;
    final LeadWires leadWires;
    final int[] pinStart;
    final int[] pointStart;
    final List<Wire> wires;
    final List<Part> parts = new ArrayList<>();
    final EdgeList edges;
    int vertexCount;

    WiringBuilder(Directory directory) {
        this.directory = directory;
        this.leadWires = new LeadWires(directory);
        int units = directory.count();
        pinStart = new int[units + 1];
        pointStart = new int[units + 1];
        for (int u = 0; u < units; u++) {
            pinStart[u + 1] = pinStart[u] + directory.layout(u).pinCount();
        }
        pointStart[0] = pinStart[units];
        for (int u = 0; u < units; u++) {
            pointStart[u + 1] = pointStart[u] + directory.layout(u).pointCount();
        }
        List<LeadWires.Pairing> pairings = leadWires.pairings();
        wires = new ArrayList<>(pairings.size());
        edges = new EdgeList(3 * pairings.size() + pinStart[units] + 16);
        vertexCount = pointStart[units] + 2 * pairings.size();
        joins(units);
        pairings.forEach(this::wire);
        for (int u = 0; u < directory.aircraft().units().size(); u++) {
            innerParts(u);
        }
    }

    private void joins(int units) {
        for (int u = 0; u < units; u++) {
            TypeLayout layout = directory.layout(u);
            for (int p = 0; p < layout.pinCount(); p++) {
                int point = layout.pointOf(p);
                if (point >= 0) {
                    edges.add(EdgeKind.JOIN, pinStart[u] + p, pointStart[u] + point, pinStart[u] + p);
                }
            }
        }
    }

    private void wire(LeadWires.Pairing pairing) {
        int w = wires.size();
        Lead lead = directory.aircraft().leads().get(pairing.lead());
        int fromPin = pinStart[pairing.unitA()] + pairing.pinA();
        int toPin = pinStart[pairing.unitB()] + pairing.pinB();
        int fromEnd = pointStart[directory.count()] + 2 * w;
        int toEnd = fromEnd + 1;
        wires.add(new Wire(w, pairing.lead(), lead, pairing.own(), fromPin, toPin, fromEnd, toEnd));
        edges.add(EdgeKind.CONTACT, fromPin, fromEnd, w);
        if (lead.fuseA() instanceof Datum.Known<Double> fuse && supply(pairing)) {
            fused(w, lead, fromEnd, toEnd, fuse.value());
        } else {
            edges.add(EdgeKind.CONDUCTOR, fromEnd, toEnd, w);
        }
        edges.add(EdgeKind.CONTACT, toEnd, toPin, w);
    }

    private boolean supply(LeadWires.Pairing pairing) {
        return supply(pairing.unitA(), pairing.pinA()) || supply(pairing.unitB(), pairing.pinB());
    }

    private boolean supply(int unit, int pin) {
        PinRole role = directory.layout(unit).role(pin);
        return role != null && supply(role);
    }

    private static boolean supply(PinRole role) {
        return role == PinRole.SUPPLY_IN
                || role == PinRole.SUPPLY_OUT
                || role == PinRole.SUPPLY_THROUGH
                || role == PinRole.PACK_PLUS;
    }

    private void fused(int wire, Lead lead, int fromEnd, int toEnd, double ratingA) {
        int middle = vertexCount++;
        boolean atTo = lead.fuseAt().is(FuseEnd.TO);
        int part = parts.size();
        int a = atTo ? middle : fromEnd;
        int b = atTo ? toEnd : middle;
        int edge = edges.add(EdgeKind.PART, a, b, part);
        parts.add(new Part(part, new Part.LeadFuse(wire, ratingA), a, b, -1, edge));
        edges.add(EdgeKind.CONDUCTOR, atTo ? fromEnd : middle, atTo ? middle : toEnd, wire);
    }

    private void innerParts(int unit) {
        UnitType type = directory.type(unit);
        for (InnerPart inner : type.parts()) {
            Optional<Integer> from = point(unit, inner.from());
            Optional<Integer> to = point(unit, inner.to());
            if (from.isPresent() && to.isPresent()) {
                int zero = point(unit, inner.zero().or("0V")).orElse(-1);
                part(new Part.Inner(unit, inner), from.get(), to.get(), zero);
            }
        }
        for (BusPort port : directory.layout(unit).busPorts()) {
            if (!port.terminator().is(TerminatorFit.NONE) || setOn(unit, port)) {
                terminator(unit, port);
            }
        }
    }

    /** A terminator where the type says there is none, but the unit is listed with one: what was seen wins. */
    private boolean setOn(int unit, BusPort port) {
        return PortSettings.of(directory.unit(unit), port.name())
                .flatMap(setting -> setting.terminator().known())
                .filter(state -> state != TerminatorState.OFF && state != TerminatorState.NONE)
                .isPresent();
    }

    private void part(Part.Origin origin, int from, int to, int zero) {
        int index = parts.size();
        int edge = edges.add(EdgeKind.PART, from, to, index);
        parts.add(new Part(index, origin, from, to, zero, edge));
    }

    private void terminator(int unit, BusPort port) {
        Optional<Integer> high = leg(unit, port, "H");
        Optional<Integer> low = leg(unit, port, "L");
        if (high.isPresent() && low.isPresent()) {
            part(new Part.Terminator(unit, port), high.get(), low.get(), -1);
        }
    }

    private Optional<Integer> leg(int unit, BusPort port, String leg) {
        Optional<Integer> passed = point(unit, port.name() + " " + leg);
        if (passed.isPresent()) {
            return passed;
        }
        String prefix = port.name() + " " + leg + " @";
        List<String> points = directory.layout(unit).points();
        for (int i = 0; i < points.size(); i++) {
            if (points.get(i).startsWith(prefix)) {
                return Optional.of(pointStart[unit] + i);
            }
        }
        return Optional.empty();
    }

    private Optional<Integer> point(int unit, String name) {
        TypeLayout layout = directory.layout(unit);
        Optional<Integer> pin = layout.pinAt(name).map(p -> pinStart[unit] + p);
        return layout.point(name).map(p -> pointStart[unit] + p).or(() -> pin);
    }

    int[] unitOfPin() {
        int[] unitOf = new int[pinStart[directory.count()]];
        fill(unitOf, pinStart, 0);
        return unitOf;
    }

    /** The role of each pin; nothing where it is not known. */
    @Nullable
    PinRole[] roleOfPin() {
        PinRole[] roles = new PinRole[pinStart[directory.count()]];
        for (int u = 0; u < directory.count(); u++) {
            directory.layout(u).copyRoles(roles, pinStart[u]);
        }
        return roles;
    }

    int[] unitOfPoint() {
        int[] unitOf = new int[pointStart[directory.count()] - pointStart[0]];
        fill(unitOf, pointStart, pointStart[0]);
        return unitOf;
    }

    private void fill(int[] unitOf, int[] starts, int offset) {
        for (int u = 0; u < directory.count(); u++) {
            for (int i = starts[u]; i < starts[u + 1]; i++) {
                unitOf[i - offset] = u;
            }
        }
    }

    /** Where the wires of each pin start in {@link #wiresOfPins}; one entry more than there are pins. */
    int[] wireStarts() {
        int[] starts = new int[pinStart[directory.count()] + 1];
        for (Wire wire : wires) {
            starts[wire.fromPin() + 1]++;
            starts[wire.toPin() + 1]++;
        }
        for (int p = 1; p < starts.length; p++) {
            starts[p] += starts[p - 1];
        }
        return starts;
    }

    /** The wires of each pin, pin after pin, in the order of the rows. */
    int[] wiresOfPins(int[] starts) {
        int[] next = starts.clone();
        int[] at = new int[2 * wires.size()];
        for (Wire wire : wires) {
            at[next[wire.fromPin()]++] = wire.index();
            at[next[wire.toPin()]++] = wire.index();
        }
        return at;
    }
}
