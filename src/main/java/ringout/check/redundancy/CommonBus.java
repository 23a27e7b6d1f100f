package ringout.check.redundancy;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import ringout.check.form.Check;
import ringout.check.form.CheckInfo;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.finding.Draft;
import ringout.finding.Severity;
import ringout.graph.Wiring;
import ringout.graph.bus.BusHub;
import ringout.graph.bus.BusSegment;
import ringout.graph.bus.Buses;
import ringout.graph.loss.Pair;
import ringout.graph.signal.NetRoles;

/**
 * A redundant pair on one bus.
 *
 * <p>Why it matters: a short, a lost terminator or one babbling member silences the bus, and both with it.
 *
 * <p>Condition: both units speak over the same piece of bus and over nothing else. A unit that is on a second bus as well, or has a wired
 * serial, pulse or analog output, is not lost with the first.
 *
 * <p>Does not see: two buses that one transceiver supply feeds (R03).
 *
 * <p>Reference: common practice, no source.
 */
@CheckInfo(
        code = "R04",
        name = "redundant-pair-common-bus",
        severity = Severity.S3,
        since = "0.3",
        needs = {"which units are redundant", "unit types of both"})
public final class CommonBus implements Check {
    @Override
    public void look(Situation at, Outcomes out) {
        Pairs.unknown(at, out);
        Map<Integer, Set<Integer>> segments = new HashMap<>();
        for (Pair pair : Pairs.known(at)) {
            if (pair.inputs()) {
                continue;
            }
            if (segments.isEmpty()) {
                segments.putAll(segments(at));
            }
            Set<Integer> a = segments.getOrDefault(pair.a().unit(), Set.of());
            Set<Integer> b = segments.getOrDefault(pair.b().unit(), Set.of());
            if (a.isEmpty() || b.isEmpty()) {
                continue;
            }
            out.looked();
            boolean one = a.size() == 1 && a.equals(b);
            if (one
                    && !otherwise(at, pair.a().unit())
                    && !otherwise(at, pair.b().unit())) {
                out.finding(draft(at, pair, a.iterator().next()));
            }
        }
    }

    private static Map<Integer, Set<Integer>> segments(Situation at) {
        Map<Integer, Set<Integer>> found = new HashMap<>();
        Buses buses = Buses.of(at.circuit());
        for (BusHub hub : buses.hubs()) {
            if (hub.member() && buses.segment(hub).wired()) {
                found.computeIfAbsent(hub.unit(), key -> new TreeSet<>())
                        .add(buses.segment(hub).index());
            }
        }
        return found;
    }

    /** Whether a unit has an output of another kind that is wired. */
    private static boolean otherwise(Situation at, int unit) {
        Wiring wiring = at.wiring();
        for (int pin = wiring.firstPin(unit); pin < wiring.endPin(unit); pin++) {
            if ((NetRoles.bit(wiring, pin) & NetRoles.DRIVERS) != 0
                    && at.circuit().mated(pin)
                    && wiring.wiresAt(pin).length > 0) {
                return true;
            }
        }
        return false;
    }

    private static Draft draft(Situation at, Pair pair, int index) {
        Buses buses = Buses.of(at.circuit());
        BusSegment segment = buses.segments().get(index);
        String bus = buses.name(segment);
        Draft draft = Draft.of(
                        Severity.S3, "redundant pair on one bus: " + pair.names() + " both speak over " + bus + " only")
                .about(pair.a().name(), pair.b().name())
                .sum("pieces of bus of " + pair.a().name() + ": " + bus + "; of "
                        + pair.b().name() + ": the same")
                .why("a short, a lost terminator or one babbling member takes both")
                .meter("pull one plug at the end of " + bus + ": one of the two must stay listed")
                .fix("put " + pair.a().name() + " or " + pair.b().name() + " on another bus")
                .cause(pair.names() + " on one bus");
        for (Pair.Side side : List.of(pair.a(), pair.b())) {
            draft.seen(at.directory().unit(side.unit()));
        }
        return draft;
    }
}
