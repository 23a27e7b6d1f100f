package ringout.graph.loss;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import ringout.graph.Circuit;
import ringout.graph.Wiring;
import ringout.graph.power.PowerGraph;
import ringout.model.Aircraft;
import ringout.read.AircraftReader;

/** The dominators against breaking everything one after the other. */
class SupplyLossTest {
    private static final double THIN = 1.2;

    static Circuit circuit(String sample) {
        Aircraft aircraft = AircraftReader.read(Path.of("samples", sample)).aircraft();
        return Circuit.all(Wiring.of(aircraft)).get(0);
    }

    @ParameterizedTest
    @ValueSource(strings = {"linewarden", "dewmaker", "linewarden-review"})
    void isWhatBreakingEachThingTells(String sample) {
        Circuit circuit = circuit(sample);
        SupplyLoss losses = SupplyLoss.of(circuit);
        Items items = Items.of(circuit);
        int lost = 0;
        for (int i = 0; i < items.count(); i++) {
            Item item = items.item(i);
            if (item.kind() == Item.Kind.UNIT) {
                continue;
            }
            Breaking broken = Breaking.of(circuit, item);
            Set<String> died = new TreeSet<>();
            Set<String> told = new TreeSet<>();
            for (int unit = 0; unit < circuit.wiring().aircraft().units().size(); unit++) {
                String name = circuit.wiring().directory().name(unit);
                boolean takes =
                        losses.of(unit).map(set -> set.contains(item.index())).orElse(false);
                boolean dies = losses.of(unit).isPresent() && !broken.lives(unit);
                if (dies) {
                    died.add(name);
                }
                if (dies ? takes : takes && !heavy(circuit, unit)) {
                    told.add(name);
                }
            }
            assertEquals(died, told, item.toString());
            lost += died.size();
        }
        assertTrue(lost > 100, lost + " losses");
    }

    /** Single conductors: one that another stands in for takes nothing, however thin the other is. */
    @ParameterizedTest
    @ValueSource(strings = {"linewarden", "dewmaker"})
    void isWhatBreakingEachConductorTells(String sample) {
        Circuit circuit = circuit(sample);
        SupplyLoss losses = SupplyLoss.byWire(circuit);
        Items items = Items.of(circuit);
        int lost = 0;
        for (int wire = 0; wire < circuit.wiring().wires().size(); wire++) {
            int index = items.wire(wire);
            Breaking broken = Breaking.of(circuit, items.item(index));
            for (int unit = 0; unit < circuit.wiring().aircraft().units().size(); unit++) {
                Optional<Set<Integer>> takes = losses.of(unit);
                if (takes.isPresent()) {
                    assertEquals(!broken.lives(unit), takes.get().contains(index), wire + " " + unit);
                    lost += broken.lives(unit) ? 0 : 1;
                }
            }
        }
        assertTrue(lost > 50, lost + " losses");
    }

    /** Draws more than the thinnest return carries, so that a thin return left does not count. */
    private static boolean heavy(Circuit circuit, int unit) {
        PowerGraph power = PowerGraph.of(circuit);
        return power.consumersOf(unit).stream()
                .anyMatch(consumer -> power.demand().averageA(consumer.plus()) > THIN);
    }
}
