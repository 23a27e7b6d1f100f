package ringout.check.topology;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.check.form.Threshold;
import ringout.graph.bus.BusHub;
import ringout.graph.bus.BusSegment;
import ringout.graph.bus.Buses;
import ringout.graph.bus.TerminatorAt;
import ringout.graph.bus.Trunk;
import ringout.model.Lead;

/** How a segment is terminated, as T06, T07 and T17 judge it. */
final class Termination {
    static final int RIGHT = 2;
    private static final double OHM = 120;

    private final Buses buses;
    private final BusSegment segment;

    /** What hangs beyond an end of the terminated trunk. */
    record Overhang(BusHub end, BusHub member, Trunk.Branch branch, List<Lead> bare) {}

    Termination(Buses buses, BusSegment segment) {
        this.buses = buses;
        this.segment = segment;
    }

    /** Terminators in the circuit. */
    int count() {
        return segment.on().size();
    }

    /** Whether terminators that are not known could change the verdict. */
    boolean unknown() {
        return !segment.unknown().isEmpty() && count() <= RIGHT;
    }

    /** Asks for the terminators that are not known, in one line. */
    void ask(Outcomes out) {
        List<String> units = segment.unknown().stream()
                .map(at -> buses.circuit().wiring().directory().name(at.unit()))
                .distinct()
                .toList();
        out.cannotTell(
                "terminator of " + String.join(", ", units),
                "look at the switch, or pull its bus plugs and measure H to L into the unit: about 120 ohm when it is on",
                3 * units.size(),
                units.toArray(new String[0]));
    }

    /** Members beyond the terminated trunk, the farthest one at each end. */
    List<Overhang> overhangs() {
        Trunk trunk = buses.trunk(segment);
        List<Overhang> found = new ArrayList<>();
        if (!trunk.terminated()) {
            return found;
        }
        for (Trunk.Branch branch : trunk.branches()) {
            if (branch.atEnd()) {
                branch.hubs().stream()
                        .map(buses.hubs()::get)
                        .filter(BusHub::member)
                        .reduce((a, b) -> b.index() == branch.tip() ? b : a)
                        .ifPresent(member -> found.add(new Overhang(
                                buses.hubs().get(branch.foot()), member, branch, trunk.withoutLength(branch.all()))));
            }
        }
        return found;
    }

    /** Whether it is wrong beyond doubt: count, or a member beyond the trunk by more than the limit. */
    boolean wrong(Situation at, Threshold stub) {
        return !unknown()
                && (count() != RIGHT
                        || overhangs().stream()
                                .anyMatch(over -> over.branch().lengthMm()
                                        > at.limit(stub).value()));
    }

    /** What a meter says from H to L, in ohm: the terminators, or without any the node inputs, in parallel. */
    double ohm() {
        if (count() > 0) {
            return OHM / count();
        }
        double siemens = 0;
        for (BusHub hub : buses.nodes(segment)) {
            siemens += buses.port(hub)
                    .flatMap(port -> port.nodeOhm().known())
                    .map(ohm -> 1 / ohm)
                    .orElse(0.0);
        }
        return siemens == 0 ? Double.POSITIVE_INFINITY : 1 / siemens;
    }

    /** The reading in words. */
    String reading() {
        return Double.isInfinite(ohm()) ? "open" : String.format(Locale.ROOT, "%.0f ohm", ohm());
    }

    /** The count in words. */
    String words() {
        return switch (count()) {
            case 0 -> "no terminator";
            case 1 -> "one terminator";
            default -> count() + " terminators";
        };
    }

    /** Units with a terminator in the circuit, in words; empty when there is none. */
    String where() {
        List<String> units = segment.on().stream()
                .map(TerminatorAt::unit)
                .map(unit -> buses.circuit().wiring().directory().name(unit))
                .toList();
        return units.isEmpty() ? "" : " (" + String.join(", ", units) + ")";
    }

    /** The token that all findings about the terminators of a segment share. */
    static String cause(Buses buses, BusSegment segment) {
        return "terminators of " + buses.name(segment);
    }
}
