package ringout.graph.index;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Takes a flow apart into the ways it goes, each from a source to a sink. */
final class FlowWays {
    private final int[] left;
    private final PathSearch search;

    private FlowWays(IndexGraph graph, int[] flow) {
        int m = graph.edgeBound();
        int[] from = new int[m];
        int[] to = new int[m];
        left = new int[m];
        for (int e = 0; e < m; e++) {
            boolean forwards = flow[e] >= 0;
            from[e] = forwards ? graph.from(e) : graph.to(e);
            to[e] = forwards ? graph.to(e) : graph.from(e);
            left[e] = Math.abs(flow[e]);
        }
        search = new PathSearch(IndexGraph.build(true, graph.vertexCount(), from, to));
    }

    static List<Walk> of(IndexGraph graph, int[] flow, int[] sources, boolean[] isSink) {
        FlowWays ways = new FlowWays(graph, flow);
        List<Walk> found = new ArrayList<>();
        for (int source : sources) {
            Optional<Walk> way = ways.next(source, isSink);
            while (way.isPresent()) {
                found.add(way.get());
                way = ways.next(source, isSink);
            }
        }
        return List.copyOf(found);
    }

    private Optional<Walk> next(int source, boolean[] isSink) {
        if (isSink[source]) {
            return Optional.empty();
        }
        Optional<Walk> way = search.fewestEdges(source, v -> isSink[v], e -> left[e] > 0);
        way.ifPresent(this::use);
        return way;
    }

    private void use(Walk way) {
        int units = Integer.MAX_VALUE;
        for (int e : way.edges()) {
            units = Math.min(units, left[e]);
        }
        for (int e : way.edges()) {
            left[e] -= units;
        }
    }
}
