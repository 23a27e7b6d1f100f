package ringout.graph.power;

import java.util.Optional;
import ringout.graph.Circuit;
import ringout.graph.EdgeKind;
import ringout.graph.Wiring;
import ringout.graph.index.PathSearch;
import ringout.graph.index.Walk;

/** Finds ways through conductors, contacts, joins and ties, keeping the notes of the search between questions. */
final class TieWays {
    private final PathSearch search;

    TieWays(Circuit circuit) {
        Wiring wiring = circuit.wiring();
        search = new PathSearch(circuit.live()
                .onlyEdges(edge -> wiring.kind(edge) != EdgeKind.PART
                        || Ties.isTie(wiring.parts().get(wiring.ref(edge)))));
    }

    Optional<Walk> through(int from, int to) {
        return search.fewestEdges(from, to);
    }
}
