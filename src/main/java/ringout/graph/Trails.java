package ringout.graph;

import java.util.Optional;
import ringout.graph.index.PathSearch;

/** Finds ways through one circuit, keeping the notes of the search between questions. */
final class Trails {
    private final Wiring wiring;
    private final PathSearch search;

    Trails(Circuit circuit) {
        this.wiring = circuit.wiring();
        this.search = new PathSearch(circuit.nets().graph());
    }

    Optional<Trail> through(int from, int to) {
        return search.fewestEdges(from, to).map(walk -> Trail.of(wiring, walk));
    }
}
