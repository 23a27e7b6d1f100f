package ringout.graph.returns;

import java.util.Optional;
import ringout.graph.EdgeKind;
import ringout.graph.Trail;
import ringout.graph.Wire;
import ringout.graph.Wiring;
import ringout.graph.index.WidestPaths;

/**
 * A way for return current.
 *
 * @param trail from the point asked for to the 0V of the source
 * @param bottleneck the conductor that limits it, the one nearest to the point asked for; none when no conductor does
 */
public record ReturnWay(Trail trail, Optional<Wire> bottleneck) {
    static ReturnWay of(Wiring wiring, WidestPaths.Widest widest) {
        int edge = widest.bottleneck();
        boolean conductor = edge >= 0 && wiring.kind(edge) == EdgeKind.CONDUCTOR;
        return new ReturnWay(
                Trail.of(wiring, widest.path().reversed()),
                conductor ? Optional.of(wiring.wires().get(wiring.ref(edge))) : Optional.empty());
    }
}
