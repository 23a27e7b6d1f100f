package ringout.graph.loss;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import ringout.graph.Circuit;
import ringout.graph.Part;
import ringout.graph.Wire;
import ringout.graph.power.PowerGraph;
import ringout.graph.power.PowerSource;
import ringout.graph.power.Ties;
import ringout.graph.returns.ReturnGraph;

/** The ways of the return: from the minus of the lowest packs and of isolated outputs, over what carries a current or more. */
final class ReturnWays {
    private final Circuit circuit;
    private final ReturnGraph returns;
    private final Grain grain;
    private final List<Integer> minus = new ArrayList<>();
    private final TreeSet<Double> sizes = new TreeSet<>();
    /** By the current that every conductor left can carry. */
    private final Map<Double, Ways> byAmps = new TreeMap<>();

    ReturnWays(Circuit circuit, PowerGraph power, Grain grain) {
        this.grain = grain;
        this.circuit = circuit;
        returns = ReturnGraph.of(circuit);
        for (PowerSource source : power.sources()) {
            if (power.works(source) && source.minus() >= 0 && own(power, source)) {
                minus.add(source.minus());
            }
        }
        circuit.wiring()
                .wires()
                .forEach(wire -> sizes.add(returns.ampacity(wire).high()));
    }

    private static boolean own(PowerGraph power, PowerSource source) {
        return switch (source.kind()) {
            case PACK -> power.bottom(source).equals(source);
            case CONVERTER -> true;
            case OUTPUT -> source.inputs().isEmpty();
            case REGULATOR -> false;
        };
    }

    /** Whether a return gets from a point to a pack at all. */
    boolean reaches(int vertex) {
        return ways(0).reaches(vertex);
    }

    /** Items that every return passes that can carry a current; of a return that is too thin already, every return at all. */
    Set<Integer> above(int vertex, double amps) {
        Ways wide = ways(amps);
        return wide.reaches(vertex) ? wide.above(vertex) : ways(0).above(vertex);
    }

    private Ways ways(double amps) {
        Double least = amps <= 0 || grain == Grain.WIRE ? null : sizes.ceiling(amps);
        // below the thinnest conductor all of them carry it
        double size = least == null || least.equals(sizes.higher(0.0)) ? 0 : least;
        return byAmps.computeIfAbsent(size, this::build);
    }

    private Ways build(double amps) {
        WayBuilder builder = new WayBuilder(circuit, grain);
        for (Wire wire : circuit.wiring().wires()) {
            double carries = returns.ampacity(wire).high();
            if (carries > 0 && carries >= amps && builder.conducts(wire)) {
                builder.wire(wire);
            }
        }
        Items items = Items.of(circuit);
        for (Part part : circuit.wiring().parts()) {
            if (circuit.live().hasEdge(part.edge())
                    && part.origin() instanceof Part.Inner
                    && (Ties.isTie(part) || PowerGraph.isDiode(part))) {
                builder.part(part.from(), part.to(), items.part(part.index()), true);
            }
        }
        List<Integer> starts = new ArrayList<>();
        minus.forEach(vertex -> starts.add(builder.at(vertex)));
        return builder.build(starts);
    }
}
