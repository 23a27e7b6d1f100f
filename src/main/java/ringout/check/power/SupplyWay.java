package ringout.check.power;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import ringout.check.form.Situation;
import ringout.graph.EdgeKind;
import ringout.graph.Gap;
import ringout.graph.Wire;
import ringout.graph.power.PowerGraph;
import ringout.graph.power.SupplyTree;
import ringout.graph.returns.ReturnGraph;
import ringout.graph.returns.ReturnWay;
import ringout.solve.Resistivity;
import ringout.solve.power.PowerFlow;

/** The conductors by which power comes from the packs to a point, and by which it goes back. */
final class SupplyWay {
    private final Situation at;
    private final List<Wire> wires = new ArrayList<>();

    private SupplyWay(Situation at) {
        this.at = at;
    }

    /** The way to a supply point and back from its 0V. */
    static SupplyWay of(Situation at, int plus, int zero) {
        SupplyWay way = new SupplyWay(at);
        PowerGraph power = PowerGraph.of(at.circuit());
        SupplyTree tree = power.tree();
        for (int v = plus; v >= 0 && tree.edgeTo(v) >= 0; v = tree.pointBefore(v)) {
            int edge = tree.edgeTo(v);
            if (at.wiring().kind(edge) == EdgeKind.CONDUCTOR) {
                way.wires.add(at.wiring().wires().get(at.wiring().ref(edge)));
            }
        }
        ReturnGraph returns = ReturnGraph.of(at.circuit());
        for (int home : Returns.homes(power, plus)) {
            if (zero >= 0 && zero != home && returns.reaches(zero, home)) {
                returns.way(zero, home).map(ReturnWay::wires).ifPresent(way.wires::addAll);
            }
        }
        return way;
    }

    /** Size or length of conductors on it that nobody tells: their drop counts as none. */
    List<Gap> unsized() {
        Set<Gap> gaps = new LinkedHashSet<>();
        for (Wire wire : wires) {
            if (!wire.lengthMm().isKnown()) {
                gaps.add(new Gap("length", wire.lead().id()));
            }
            if (!wire.areaMm2().isKnown()) {
                gaps.add(new Gap("wire size", wire.lead().id()));
            }
        }
        return List.copyOf(gaps);
    }

    /** Plugs on it of whose contacts nobody tells the resistance: they count with a usual one. */
    List<Gap> guessedContacts() {
        Set<Gap> gaps = new LinkedHashSet<>();
        for (Wire wire : wires) {
            for (int pin : new int[] {wire.fromPin(), wire.toPin()}) {
                if (!Resistivity.contactKnown(at.wiring(), pin)) {
                    int unit = at.wiring().unitOf(pin);
                    String name = at.directory().isJoint(unit)
                            ? at.directory().name(unit)
                            : at.wiring().plugName(unit, at.wiring().plugIndex(pin));
                    gaps.add(new Gap(PowerData.CONTACT, name));
                }
            }
        }
        return List.copyOf(gaps);
    }

    /** What drops over those contacts in V. */
    double guessedVolts(PowerFlow flow) {
        double volts = 0;
        for (Wire wire : wires) {
            volts += guessed(flow, wire.fromPin(), at.wiring().fromContactEdge(wire))
                    + guessed(flow, wire.toPin(), at.wiring().toContactEdge(wire));
        }
        return volts;
    }

    private double guessed(PowerFlow flow, int pin, int edge) {
        return Resistivity.contactKnown(at.wiring(), pin)
                ? 0
                : Math.abs(flow.amps(edge)) * Resistivity.contactOhm(at.wiring(), pin);
    }
}
