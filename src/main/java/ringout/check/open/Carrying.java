package ringout.check.open;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import ringout.graph.Circuit;
import ringout.graph.Wire;
import ringout.graph.Wiring;
import ringout.solve.power.LoadCase;
import ringout.solve.power.OperatingPoint;
import ringout.solve.power.PowerFlow;

/**
 * Leads, plugs and joints in which current flows in some state.
 *
 * @param names as the user names them
 */
record Carrying(Set<String> names) {
    /** Those of some circuits of one aircraft. */
    static Carrying current(List<Circuit> circuits) {
        Set<String> names = new HashSet<>();
        for (Circuit circuit : circuits) {
            for (LoadCase of : List.of(LoadCase.AVERAGE, LoadCase.PEAK)) {
                if (OperatingPoint.of(circuit, of) instanceof PowerFlow flow) {
                    circuit.wiring().wires().stream()
                            .filter(wire -> flow.amps(wire) != 0)
                            .forEach(wire -> add(circuit.wiring(), wire, names));
                }
            }
        }
        return new Carrying(names);
    }

    private static void add(Wiring wiring, Wire wire, Set<String> names) {
        names.add(wire.lead().id());
        for (int pin : new int[] {wire.fromPin(), wire.toPin()}) {
            int unit = wiring.unitOf(pin);
            names.add(
                    wiring.directory().isJoint(unit)
                            ? wiring.directory().name(unit)
                            : wiring.plugName(unit, wiring.plugIndex(pin)));
        }
    }

    /** Data without those of leads, contacts and joints in which nothing flows: they have no share in any current. */
    List<OpenDatum> only(List<OpenDatum> data) {
        List<OpenDatum> kept = new ArrayList<>();
        for (OpenDatum open : data) {
            if (names.isEmpty() || !open.inTheWay()) {
                kept.add(open);
            } else if (open.of().stream().anyMatch(names::contains)) {
                kept.add(open.of(open.of().stream().filter(names::contains).toList()));
            }
        }
        return kept;
    }
}
