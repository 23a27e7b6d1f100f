package ringout.graph.loss;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import ringout.graph.Circuit;
import ringout.graph.Directory;
import ringout.graph.Wiring;
import ringout.graph.signal.SignalWays;
import ringout.model.Aircraft;
import ringout.model.AircraftFunction;
import ringout.model.Lead;
import ringout.model.State;
import ringout.model.shape.Shape;

/** The loss table against breaking everything, and against what the trade handbook says of its first aircraft. */
class LossTableTest {
    private static LossTable.Line line(LossTable table, String item) {
        return table.lines().stream()
                .filter(line -> line.item().name().equals(item))
                .findFirst()
                .orElseThrow();
    }

    /** Trade handbook, section 3.6: the bus plugs of the chain FC, GN1, IMU, LOG, GMC. */
    @ParameterizedTest
    @CsvSource({"LOG-C1, LOG GMC", "W67, LOG GMC", "LOG-C2, GMC", "GN1-C1, IMU GN1 LOG GMC", "FC-C2, IMU GN1 LOG GMC"})
    void followsTheChain(String item, String units) {
        LossTable table = LossTable.of(SupplyLossTest.circuit("linewarden"));
        assertEquals(Set.of(units.split(" ")), Set.copyOf(line(table, item).units()));
    }

    @Test
    void putsTheWorstFirst() {
        LossTable table = LossTable.of(SupplyLossTest.circuit("linewarden"));
        List<Integer> grave =
                table.lines().stream().map(LossTable.Line::flightCritical).toList();
        assertEquals(grave.stream().sorted((a, b) -> b - a).toList(), grave);
        // six motors, manual control, attitude, position, battery sensing
        assertEquals(10, grave.get(0));
        assertTrue(line(table, "GN1-C1").functionNames().contains("attitude"));
        assertEquals(
                List.of("motor 1", "motor 2", "motor 3"), line(table, "W41").functionNames());
        assertEquals(List.of("LOG"), line(table, "fuse in W69").units());
    }

    @ParameterizedTest
    @ValueSource(strings = {"linewarden", "dewmaker"})
    void isWhatBreakingEachThingTells(String sample) {
        Circuit circuit = SupplyLossTest.circuit(sample);
        Items items = Items.of(circuit);
        FunctionLoss losses = FunctionLoss.of(circuit);
        List<AircraftFunction> functions = circuit.wiring().aircraft().functions();
        Set<String> thin = Set.of("motor");
        int lost = 0;
        for (int i = 0; i < items.count(); i++) {
            Item item = items.item(i);
            if (item.kind() != Item.Kind.UNIT) {
                Breaking broken = Breaking.of(circuit, item);
                SignalWays ways = SignalWays.of(without(circuit, item));
                Set<String> died = new TreeSet<>();
                Set<String> told = new TreeSet<>();
                for (AircraftFunction function : functions) {
                    boolean dies = !works(circuit.wiring().directory(), broken, ways, function);
                    boolean takes = losses.of(function).orElseThrow().contains(i);
                    if (dies) {
                        died.add(function.name());
                    }
                    // a motor's return that is left and too thin is a loss the walk does not know
                    if (takes && (dies || !thin.contains(function.name().split(" ")[0]))) {
                        told.add(function.name());
                    }
                }
                assertEquals(died, told, item.toString());
                lost += died.size();
            }
        }
        assertTrue(lost > 200, lost + " losses");
    }

    private static boolean works(Directory directory, Breaking broken, SignalWays ways, AircraftFunction function) {
        List<String> other = function.chain().stream()
                .map(name -> directory.unit(directory.find(name).orElseThrow()).redundantWith().stream()
                        .findFirst()
                        .orElse(name))
                .toList();
        return chain(directory, broken, ways, function.chain()) || chain(directory, broken, ways, other);
    }

    private static boolean chain(Directory directory, Breaking broken, SignalWays ways, List<String> names) {
        List<Integer> chain =
                names.stream().map(name -> directory.find(name).orElseThrow()).toList();
        for (int i = 0; i < chain.size(); i++) {
            if (!broken.lives(chain.get(i)) || (i > 0 && !ways.joined(chain.get(i - 1), chain.get(i)))) {
                return false;
            }
        }
        return true;
    }

    /** The circuit of a list without the row, or with the plug pulled. */
    private static Circuit without(Circuit circuit, Item item) {
        Aircraft aircraft = circuit.wiring().aircraft();
        if (item.kind() == Item.Kind.LEAD) {
            List<Lead> left = aircraft.leads().stream()
                    .filter(lead -> !lead.id().equals(item.name()))
                    .toList();
            Shape<Aircraft> shape = Shape.of(Aircraft.class);
            return Circuit.of(Wiring.of(shape.with(aircraft, "leads", left)), circuit.state());
        }
        if (item.kind() == Item.Kind.PLUG) {
            Shape<State> shape = Shape.of(State.class);
            return Circuit.of(circuit.wiring(), shape.with(circuit.state(), "pulled", List.of(item.name())));
        }
        return circuit;
    }
}
