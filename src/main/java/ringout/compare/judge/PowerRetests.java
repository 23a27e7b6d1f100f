package ringout.compare.judge;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import ringout.compare.difference.Difference;
import ringout.compare.match.Match;
import ringout.graph.Circuit;
import ringout.graph.Wire;
import ringout.graph.loss.Items;
import ringout.graph.loss.SupplyLoss;
import ringout.graph.power.Consumer;
import ringout.graph.power.PowerGraph;
import ringout.model.Step;
import ringout.solve.meter.Expected;
import ringout.solve.meter.Reading;

/** Volts at the consumers whose supply or return passes what is touched, and the power-up steps that name them. */
final class PowerRetests {
    /** Consumers measured one by one; more of them are named in one line. */
    private static final int MEASURED = 3;

    private final Match match;
    private final Circuit before;
    private final Circuit circuit;

    PowerRetests(Match match, Circuit before, Circuit circuit) {
        this.match = match;
        this.before = before;
        this.circuit = circuit;
    }

    List<Retest> below(Difference difference, Set<Wire> wires) {
        List<Consumer> fed = fed(difference, wires);
        List<Retest> tests = new ArrayList<>();
        for (int i = 0; i < Math.min(MEASURED, fed.size()); i++) {
            measure(fed.get(i), tests);
        }
        Set<String> units = new TreeSet<>();
        fed.forEach(consumer -> units.add(circuit.wiring().directory().name(consumer.unit())));
        if (fed.size() > MEASURED) {
            tests.add(Retest.of(Retest.Kind.POWER_UP, "volts at every rail of " + String.join(", ", units)));
        }
        units.addAll(difference.touched().unitsThere());
        if (!fed.isEmpty()) {
            circuit.wiring().aircraft().record().steps().stream()
                    .filter(step -> step.action().is("energise"))
                    .filter(step -> step.objects().stream().anyMatch(units::contains))
                    .forEach(step -> tests.add(Retest.of(Retest.Kind.STEP, words(step))));
        }
        return tests;
    }

    private static String words(Step step) {
        return step.id() + step.attribute().known().map(what -> ", " + what).orElse("") + ", propellers off";
    }

    private void measure(Consumer consumer, List<Retest> tests) {
        if (consumer.zero() < 0) {
            return;
        }
        String plus = circuit.wiring().name(consumer.plus());
        String zero = circuit.wiring().name(consumer.zero());
        tests.add(new Retest(
                Retest.Kind.POWER_UP,
                plus + " against " + zero,
                List.of(plus, zero),
                Optional.of(Expected.volts(circuit, consumer.plus(), consumer.zero())
                        .reading()),
                putBack(consumer)));
    }

    /** What the same rail of the same unit of the base reads. */
    private Optional<Reading> putBack(Consumer consumer) {
        int unit = match.unitBack(consumer.unit());
        return unit < 0
                ? Optional.empty()
                : PowerGraph.of(before).consumersOf(unit).stream()
                        .filter(twin -> twin.rail().equals(consumer.rail()) && twin.zero() >= 0)
                        .findFirst()
                        .map(twin ->
                                Expected.volts(before, twin.plus(), twin.zero()).reading());
    }

    /** The consumers that lose their supply or return with a touched lead or unit. */
    private List<Consumer> fed(Difference difference, Set<Wire> wires) {
        Items items = Items.of(circuit);
        SupplyLoss losses = SupplyLoss.of(circuit);
        Set<Integer> touched = new TreeSet<>();
        wires.forEach(wire -> touched.add(items.lead(wire.leadIndex())));
        for (String unit : difference.touched().unitsThere()) {
            circuit.wiring().directory().find(unit).ifPresent(number -> touched.add(items.unit(number)));
        }
        Map<Integer, Consumer> fed = new LinkedHashMap<>();
        for (Consumer consumer : PowerGraph.of(circuit).consumers()) {
            Set<Integer> passed = new TreeSet<>(losses.supply(consumer.plus()));
            if (consumer.zero() >= 0) {
                passed.addAll(losses.zero(consumer.zero()));
            }
            if (consumer.draws() && passed.stream().anyMatch(touched::contains)) {
                fed.put(consumer.index(), consumer);
            }
        }
        return List.copyOf(fed.values());
    }
}
