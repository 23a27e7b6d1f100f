package ringout.graph.power;

import java.util.Optional;
import ringout.graph.Circuit;
import ringout.graph.EdgeKind;
import ringout.graph.Trail;
import ringout.graph.Wiring;
import ringout.graph.index.PathSearch;

/** Finds ways through conductors, contacts, joins and ties, keeping the notes of the search between questions. */
final class TieTrails {
    private final Wiring wiring;
    private final PathSearch search;

    TieTrails(Circuit circuit) {
        wiring = circuit.wiring();
        search = new PathSearch(circuit.live()
                .onlyEdges(edge -> wiring.kind(edge) != EdgeKind.PART
                        || Ties.isTie(wiring.parts().get(wiring.ref(edge)))));
    }

    Optional<Trail> through(int from, int to) {
        return search.fewestEdges(from, to).map(walk -> Trail.of(wiring, walk));
    }
}
