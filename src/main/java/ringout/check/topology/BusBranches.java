package ringout.check.topology;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import ringout.check.form.Check;
import ringout.check.form.CheckInfo;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.check.form.Threshold;
import ringout.check.form.Thresholds;
import ringout.finding.Draft;
import ringout.finding.Severity;
import ringout.graph.bus.BusHub;
import ringout.graph.bus.BusLink;
import ringout.graph.bus.BusSegment;
import ringout.graph.bus.Buses;
import ringout.graph.index.IndexGraph;
import ringout.model.Lead;

/**
 * A bus that branches at a unit, or a star of long branches.
 *
 * <p>Why it matters: each branch sees the others in parallel, so every edge is reflected where they meet.
 *
 * <p>Condition: more than two leads of one bus at a unit that is no splice, or three or more branches over the stub limit at any
 * one place. Sides of a unit that repeats and does not join copper are buses of their own.
 *
 * <p>Does not see: how long a branch may be (T08).
 *
 * <p>Reference: ISO 11898-2 (line topology); DroneCAN specification, section 8 (0.3 m).
 */
@CheckInfo(
        code = "T10",
        name = "bus-branches",
        severity = Severity.S3,
        since = "0.1",
        needs = {"length of each bus lead"})
public final class BusBranches implements Check {
    private static final int LINE = 2;

    /** One way off a hub: its first link, the longest way behind it, and leads on it without a length. */
    private record Way(BusLink first, double lengthMm, List<Lead> bare) {}

    @Override
    public void look(Situation at, Outcomes out) {
        Buses buses = Buses.of(at.circuit());
        for (BusSegment segment : buses.segments()) {
            if (segment.wired()) {
                int before = out.cannotTell().size();
                for (int hub : segment.hubs()) {
                    if (buses.graph().degree(hub) > LINE) {
                        look(at, out, buses, buses.hubs().get(hub));
                    }
                }
                if (out.cannotTell().size() == before) {
                    out.looked();
                }
            }
        }
    }

    private static void look(Situation at, Outcomes out, Buses buses, BusHub hub) {
        Threshold limit = at.limit(Thresholds.BUS_STUB);
        List<Way> ways = ways(buses, hub);
        List<Way> longWays =
                ways.stream().filter(way -> way.lengthMm() > limit.value()).toList();
        boolean unit = hub.member();
        if (unit || longWays.size() > LINE) {
            out.finding(draft(at, buses, hub, ways, limit));
            return;
        }
        List<Lead> bare = ways.stream()
                .filter(way -> way.lengthMm() <= limit.value())
                .flatMap(way -> way.bare().stream())
                .distinct()
                .toList();
        long perhaps = ways.stream()
                .filter(way -> way.lengthMm() > limit.value() || !way.bare().isEmpty())
                .count();
        if (perhaps > LINE) {
            Metres.ask(out, bare);
        }
    }

    private static List<Way> ways(Buses buses, BusHub hub) {
        List<Way> ways = new ArrayList<>();
        IndexGraph graph = buses.graph();
        for (int end = graph.endSlot(hub.index()), s = graph.firstSlot(hub.index());
                s < end;
                s = graph.nextSlot(s, end)) {
            ways.add(way(buses, hub.index(), graph.slotEdge(s)));
        }
        ways.sort(Comparator.comparingDouble(Way::lengthMm)
                .reversed()
                .thenComparing(way -> way.first().lead().id()));
        return ways;
    }

    private record Reached(int hub, double mm) {}

    private static Way way(Buses buses, int from, int first) {
        IndexGraph graph = buses.graph();
        Set<Integer> seen = new HashSet<>(Set.of(from));
        List<Lead> bare = new ArrayList<>();
        Deque<Reached> open = new ArrayDeque<>();
        double longest = step(buses, first, 0, bare);
        int next = buses.links().get(first).other(from);
        seen.add(next);
        open.add(new Reached(next, longest));
        while (!open.isEmpty()) {
            Reached here = open.remove();
            longest = Math.max(longest, here.mm());
            for (int end = graph.endSlot(here.hub()), s = graph.firstSlot(here.hub());
                    s < end;
                    s = graph.nextSlot(s, end)) {
                if (seen.add(graph.slotVertex(s))) {
                    open.add(new Reached(graph.slotVertex(s), step(buses, graph.slotEdge(s), here.mm(), bare)));
                }
            }
        }
        return new Way(buses.links().get(first), longest, bare);
    }

    private static double step(Buses buses, int link, double before, List<Lead> bare) {
        if (!buses.lengthMm(link).isKnown()) {
            bare.add(buses.links().get(link).lead());
        }
        return before + buses.lengthMm(link).or(0.0);
    }

    private static Draft draft(Situation at, Buses buses, BusHub hub, List<Way> ways, Threshold limit) {
        String name = buses.name(hub);
        BusSegment segment = buses.segment(hub);
        String lengths = ways.stream()
                .map(way -> way.first().lead().id() + " " + Metres.words(way.lengthMm()))
                .collect(Collectors.joining(", "));
        String title = hub.member()
                ? "bus branches at a unit: " + ways.size() + " leads of " + buses.name(segment) + " meet at " + name
                : "bus is a star: " + ways.size() + " branches of " + buses.name(segment) + " meet at " + name;
        Draft draft = Draft.of(Severity.S3, title)
                .about(name)
                .sum("branches in m: " + lengths + "; a line has two, others up to " + Metres.words(limit.value()))
                .judged(ways.size(), LINE, "branches", limit.source())
                .why("each branch sees the others in parallel: every edge is reflected at " + name)
                .fix("lead the bus through the units one after the other instead of branching at " + name)
                .explains("T19");
        List<Integer> trunk = buses.trunk(segment).links();
        for (Way way : ways) {
            Lead lead = way.first().lead();
            Draft pointed = trunk.contains(way.first().index()) ? draft.seen(lead) : draft.at(lead);
            pointed.input(lead.lengthMm());
        }
        if (at.directory().isJoint(hub.unit())) {
            return draft;
        }
        return draft.seen(at.directory().unit(hub.unit()));
    }
}
