package ringout.check.topology;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import ringout.check.form.Check;
import ringout.check.form.CheckInfo;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.finding.Draft;
import ringout.finding.Severity;
import ringout.finding.Sketch;
import ringout.graph.Trail;
import ringout.graph.bus.BusLink;
import ringout.graph.bus.BusSegment;
import ringout.graph.bus.Buses;
import ringout.graph.index.PathSearch;
import ringout.graph.index.Walk;
import ringout.model.Lead;

/**
 * A bus closed to a ring.
 *
 * <p>Why it matters: a bus is a line with two ends; in a ring every edge comes back by the other way. A return lead for
 * redundancy is the classic well-meant mistake, two sockets of one unit that are the same bus the usual way into it.
 *
 * <p>Condition: a piece of bus has at least as many leads as places they join (links - places + 1 is the number of rings).
 *
 * <p>Does not see: rings of shields or 0V (P12), rings through units that repeat and do not join copper.
 *
 * <p>Reference: ISO 11898-2 (line topology, terminated at both ends).
 */
@CheckInfo(code = "T09", name = "bus-ring", severity = Severity.S2, since = "0.1")
public final class BusRing implements Check {
    @Override
    public void look(Situation at, Outcomes out) {
        Buses buses = Buses.of(at.circuit());
        for (BusSegment segment : buses.segments()) {
            if (segment.wired()) {
                out.looked();
                if (segment.rings() > 0) {
                    look(at, out, buses, segment);
                }
            }
        }
    }

    private static void look(Situation at, Outcomes out, Buses buses, BusSegment segment) {
        PathSearch search = new PathSearch(buses.graph());
        Set<Integer> known = new TreeSet<>();
        List<Integer> lastFirst = new ArrayList<>(segment.links());
        Collections.reverse(lastFirst);
        int left = segment.rings();
        for (int link : lastFirst) {
            if (left > 0 && !known.contains(link)) {
                Walk ring = ring(buses, search, link, known);
                if (ring.edgeCount() > 0) {
                    out.finding(draft(at, buses, segment, ring));
                    known.add(link);
                    left--;
                }
            }
        }
    }

    /** The shortest ring a link closes over links that close no ring already told. */
    private static Walk ring(Buses buses, PathSearch search, int link, Set<Integer> told) {
        BusLink last = buses.links().get(link);
        return search.fewestEdges(last.to(), v -> v == last.from(), e -> e != link && !told.contains(e))
                .map(back -> {
                    int[] edges = new int[back.edgeCount() + 1];
                    edges[0] = link;
                    System.arraycopy(back.edges(), 0, edges, 1, back.edgeCount());
                    return Walk.along(buses.graph(), last.from(), edges);
                })
                .orElseGet(() -> Walk.along(buses.graph(), last.from()));
    }

    private static Draft draft(Situation at, Buses buses, BusSegment segment, Walk ring) {
        BusLink closing = buses.links().get(ring.edge(0));
        List<String> places = new ArrayList<>();
        List<Lead> leads = new ArrayList<>();
        for (int i = 0; i < ring.edgeCount(); i++) {
            places.add(buses.name(buses.hubs().get(ring.vertex(i))));
            leads.add(buses.links().get(ring.edge(i)).lead());
        }
        String bus = buses.name(segment);
        String last = closing.lead().id();
        Draft draft = Draft.of(
                        Severity.S2,
                        "bus closed to a ring: " + bus + " runs " + String.join(", ", places) + " and back to "
                                + places.get(0))
                .about(new TreeSet<>(places).stream().toList())
                .path(trail(at, buses, ring))
                .sum("leads " + segment.links().size() + " - places "
                        + segment.hubs().size() + " + 1 = " + segment.rings()
                        + (segment.rings() == 1 ? " ring" : " rings") + ", a line has none")
                .source("ISO 11898-2")
                .why("every edge comes back by the other way round; a second way gives no redundancy on one bus")
                .meter("power off, pull one plug of the ring: H still conducts to the other half")
                .fix("take one lead of the ring out, " + last + " if it was added last, and terminate both ends")
                .cause(last)
                .cause(Termination.cause(buses, segment))
                .sketch(new Sketch.Extra(Sketch.What.WIRE, last))
                .explains("T01", "T02", "T06", "T07", "T08", "T10", "T17", "T19", "T20");
        leads.forEach(draft::seen);
        LooseTerminators.of(at).forEach(unit -> draft.cause(LooseTerminators.cause(unit)));
        return draft;
    }

    private static Trail trail(Situation at, Buses buses, Walk ring) {
        Trail way = Trail.NONE;
        for (int i = 1; i < ring.edgeCount(); i++) {
            int a = buses.hubs().get(ring.vertex(i)).leg();
            int b = buses.hubs().get(ring.vertex(i + 1)).leg();
            way = way.then(at.circuit().trail(a, b).orElse(Trail.NONE));
        }
        return way;
    }
}
