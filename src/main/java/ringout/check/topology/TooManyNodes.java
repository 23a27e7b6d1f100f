package ringout.check.topology;

import java.util.List;
import ringout.check.form.Check;
import ringout.check.form.CheckInfo;
import ringout.check.form.Figures;
import ringout.check.form.Gaps;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.check.form.Threshold;
import ringout.check.form.Thresholds;
import ringout.finding.Draft;
import ringout.finding.Place;
import ringout.finding.Severity;
import ringout.graph.bus.BusHub;
import ringout.graph.bus.BusSegment;
import ringout.graph.bus.Buses;
import ringout.model.BusPort;
import ringout.model.Datum;

/**
 * A bus with more nodes, or more capacitance of its nodes, than its drivers can move in time.
 *
 * <p>Why it matters: every node loads the bus; with too many the edges are slow and the farthest nodes read wrong bits.
 *
 * <p>Formula: number of nodes, limit 32; sum of the capacitance of the nodes in pF, limit 3200 pF (32 nodes of 100 pF). A terminator
 * plug is no node.
 *
 * <p>Does not see: the capacitance of the leads; transceivers made for more nodes.
 *
 * <p>Reference: common practice, no source.
 */
@CheckInfo(
        code = "T18",
        name = "too-many-nodes",
        severity = Severity.S4,
        since = "0.1",
        needs = {"capacitance of each bus node"})
public final class TooManyNodes implements Check {
    @Override
    public void look(Situation at, Outcomes out) {
        Buses buses = Buses.of(at.circuit());
        Gaps gaps = new Gaps();
        for (BusSegment segment : buses.segments()) {
            if (segment.wired()) {
                look(at, out, buses, segment, gaps);
            }
        }
        gaps.tell(out, datum -> new Gaps.Way("look it up in the maker's data", 3));
    }

    private static void look(Situation at, Outcomes out, Buses buses, BusSegment segment, Gaps gaps) {
        List<BusHub> nodes = buses.nodes(segment);
        Threshold most = at.limit(Thresholds.BUS_NODES);
        Threshold limit = at.limit(Thresholds.BUS_CAPACITANCE);
        double sum = 0;
        boolean complete = true;
        for (BusHub node : nodes) {
            Datum<Double> own = buses.port(node).map(BusPort::nodePicofarad).orElse(Datum.notAsked());
            sum += own.or(0.0);
            complete &= !own.isMissing();
        }
        if (nodes.size() > most.value()) {
            out.finding(draft(
                    buses, segment, nodes.size() + " nodes, limit " + Figures.of(most.value()), nodes.size(), most));
        } else if (sum > limit.value()) {
            String words =
                    Figures.of(sum) + " pF of " + nodes.size() + " nodes, limit " + Figures.of(limit.value()) + " pF";
            out.finding(draft(buses, segment, words, sum, limit));
        } else if (complete) {
            out.looked();
        } else {
            nodes.stream()
                    .filter(node -> buses.port(node)
                            .map(port -> port.nodePicofarad().isMissing())
                            .orElse(true))
                    .forEach(node ->
                            gaps.add("node capacitance", buses.unit(node).type() + " " + node.typePort()));
        }
    }

    private static Draft draft(Buses buses, BusSegment segment, String words, double value, Threshold limit) {
        String name = buses.name(segment);
        Draft draft = Draft.of(Severity.S4, "bus loading: " + name + " has " + words)
                .about(name)
                .sum(words)
                .judged(value, limit.value(), limit.unit(), limit.source())
                .why("the edges get slow, and the farthest nodes read wrong bits")
                .meter("scope at the farthest node: rise from 0.5 to 1.5 V well below the time of a bit")
                .fix("split " + name + " in two with a bridge, or lower its bit rate")
                .cause("nodes of " + name);
        buses.declaration(segment).ifPresent(bus -> draft.at(new Place(bus.at(), bus.name(), name)));
        return draft;
    }
}
