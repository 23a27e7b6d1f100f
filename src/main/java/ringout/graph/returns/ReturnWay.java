package ringout.graph.returns;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import ringout.graph.EdgeKind;
import ringout.graph.Trail;
import ringout.graph.Wire;
import ringout.graph.Wiring;
import ringout.graph.index.Walk;
import ringout.graph.index.WidestPaths;

/**
 * A way for return current.
 *
 * @param trail from the point asked for to the 0V of the source
 * @param wires the conductors on it, in that order
 * @param bottleneck the conductor that limits it, the one nearest to the point asked for; none when no conductor does
 */
public record ReturnWay(Trail trail, List<Wire> wires, Optional<Wire> bottleneck) {
    static ReturnWay of(Wiring wiring, WidestPaths.Widest widest) {
        int edge = widest.bottleneck();
        boolean conductor = edge >= 0 && wiring.kind(edge) == EdgeKind.CONDUCTOR;
        Walk walk = widest.path().reversed();
        List<Wire> wires = Arrays.stream(walk.edges())
                .filter(e -> wiring.kind(e) == EdgeKind.CONDUCTOR)
                .mapToObj(e -> wiring.wires().get(wiring.ref(e)))
                .toList();
        return new ReturnWay(
                Trail.of(wiring, walk),
                wires,
                conductor ? Optional.of(wiring.wires().get(wiring.ref(edge))) : Optional.empty());
    }
}
