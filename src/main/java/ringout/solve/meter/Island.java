package ringout.solve.meter;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import ringout.solve.MeterElement;
import ringout.solve.network.BranchCurrents;
import ringout.solve.network.EffectiveResistance;
import ringout.solve.network.FactorisedNetwork;
import ringout.solve.network.NetworkBuilder;
import ringout.solve.network.NetworkSolution;
import ringout.solve.network.NodeVoltage;
import ringout.solve.network.Resistance;
import ringout.solve.network.ResistiveNetwork;

/** All that conducts to one vertex, with its vertices numbered anew in the order they are reached. */
final class Island {
    /**
     * An element inside.
     *
     * @param number its number among all elements, or -1 for one that a fault added
     * @param element the element as it is after the changes
     */
    record Member(int number, MeterElement element) {}

    private final Map<Integer, Integer> nodes = new HashMap<>();
    private final List<Member> members = new ArrayList<>();

    Island() {}

    /** Adds a vertex; whether it is new. */
    boolean reach(int vertex) {
        return nodes.putIfAbsent(vertex, nodes.size()) == null;
    }

    void add(int number, MeterElement element) {
        members.add(new Member(number, element));
    }

    boolean has(int vertex) {
        return nodes.containsKey(vertex);
    }

    /** The elements inside, in the order they were reached. */
    List<Member> members() {
        return members;
    }

    private int node(int vertex) {
        Integer node = nodes.get(vertex);
        if (node == null) {
            throw new IllegalArgumentException("vertex " + vertex + " is not in this island");
        }
        return node;
    }

    private NetworkBuilder network(ToDoubleFunction<MeterElement> ohm) {
        NetworkBuilder network = ResistiveNetwork.builder(nodes.size());
        for (Member member : members) {
            MeterElement element = member.element();
            network.resistor(node(element.a()), node(element.b()), ohm.applyAsDouble(element));
        }
        return network;
    }

    private double ohms(int a, int b, ToDoubleFunction<MeterElement> ohm) {
        Resistance resistance = EffectiveResistance.of(network(ohm).build()).between(node(a), node(b));
        return resistance instanceof Resistance.Ohms found ? found.value() : Double.POSITIVE_INFINITY;
    }

    /**
     * The reading between two vertices inside. The resistance between two points never falls when any resistance rises
     * (Rayleigh's monotonicity law), so all at their least and all at their most give the exact worst case.
     */
    Reading.Ohms reading(int a, int b) {
        return new Reading.Ohms(
                ohms(a, b, MeterElement::ohm),
                ohms(a, b, element -> element.ohm() * element.tolerance().low()),
                ohms(a, b, element -> element.ohm() * element.tolerance().high()));
    }

    /** One ampere driven in at a vertex and out at another. */
    Current drive(int in, int out) {
        NetworkBuilder network = network(MeterElement::ohm);
        network.inject(node(out), node(in), 1);
        network.reference(node(out));
        return new Current(this, FactorisedNetwork.of(network.build()).solve());
    }

    /** Where the meter's current goes, as part of the whole, and the volts per ampere it makes. */
    static final class Current {
        private final Island island;
        private final NetworkSolution solution;
        private final BranchCurrents amps;

        private Current(Island island, NetworkSolution solution) {
            this.island = island;
            this.solution = solution;
            this.amps = solution.currents();
        }

        /** The part of the current in a member, positive from its a to its b. */
        double in(int member) {
            return amps.amps(member);
        }

        /** Volts of a vertex above the vertex the current leaves at, per ampere. */
        double volts(int vertex) {
            return solution.voltage(island.node(vertex)) instanceof NodeVoltage.Volts volts ? volts.value() : 0;
        }
    }
}
