package ringout.draw.harness;

import java.util.Optional;
import java.util.OptionalDouble;
import ringout.graph.Circuit;
import ringout.graph.Part;
import ringout.graph.Wiring;
import ringout.graph.index.UnionFind;
import ringout.graph.power.Consumer;
import ringout.graph.power.PowerGraph;
import ringout.solve.power.PowerFlow;

/** Points of units at which power goes on: what is joined inside a unit, through diodes as well, is one board. */
final class PowerBoards {
    private final Wiring wiring;
    private final PowerGraph power;
    private final UnionFind joined;

    /**
     * A board.
     *
     * @param unit number of the unit
     * @param at number that its points have in common
     */
    record Board(int unit, int at) {}

    PowerBoards(Circuit circuit) {
        wiring = circuit.wiring();
        power = PowerGraph.of(circuit);
        joined = new UnionFind(power.ties().count());
        for (Part part : wiring.parts()) {
            if (PowerGraph.isDiode(part) && circuit.live().hasEdge(part.edge())) {
                joined.union(power.ties().of(part.from()), power.ties().of(part.to()));
            }
        }
    }

    Board of(int pin) {
        return new Board(wiring.unitOf(pin), joined.find(power.ties().of(pin)));
    }

    /** Whether diodes join its points. */
    boolean hasDiodes(Board board) {
        return wiring.parts().stream()
                .anyMatch(part -> PowerGraph.isDiode(part)
                        && wiring.unitOf(part.from()) == board.unit()
                        && joined.find(power.ties().of(part.from())) == board.at());
    }

    /** Volts on it, where its type names a 0V. */
    OptionalDouble volts(PowerFlow flow, Board board) {
        return consumer(board).map(c -> flow.volts(c.plus(), c.zero())).orElse(OptionalDouble.empty());
    }

    /** The rail of a board, that of its inside first. */
    private Optional<Consumer> consumer(Board board) {
        return power.consumersOf(board.unit()).stream()
                .filter(c -> c.zero() >= 0 && joined.find(power.ties().of(c.plus())) == board.at())
                .min((a, b) -> Boolean.compare(a.loads().isEmpty(), b.loads().isEmpty()));
    }

    /** The unit, with the rail where it has several. */
    String title(String name, Board board) {
        long rails = power.consumersOf(board.unit()).stream()
                .filter(c -> c.zero() >= 0)
                .mapToInt(c -> joined.find(power.ties().of(c.plus())))
                .distinct()
                .count();
        return rails > 1 ? name + consumer(board).map(c -> " " + c.rail()).orElse("") : name;
    }
}
