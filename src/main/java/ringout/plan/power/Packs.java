package ringout.plan.power;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;
import ringout.graph.Circuit;
import ringout.graph.Part;
import ringout.graph.Wiring;
import ringout.graph.power.PowerGraph;
import ringout.graph.power.PowerSource;
import ringout.model.PinRole;

/** The packs of an aircraft, those in series together. Cells soldered inside a unit are no pack. */
final class Packs {
    /**
     * Packs in series.
     *
     * @param sources its packs, in the order of the list
     */
    record Stack(List<PowerSource> sources) {
        /** {@return numbers of its units, each once} */
        List<Integer> units() {
            return sources.stream().map(PowerSource::unit).distinct().toList();
        }
    }

    private final Wiring wiring;
    private final List<Stack> stacks = new ArrayList<>();

    private Packs(Circuit circuit) {
        wiring = circuit.wiring();
        PowerGraph power = PowerGraph.of(circuit);
        Map<Integer, List<PowerSource>> byBottom = new LinkedHashMap<>();
        for (PowerSource source : power.sources()) {
            boolean pack = source.kind() == PowerSource.Kind.PACK && power.works(source);
            if (pack && !plugs(source.unit()).isEmpty()) {
                byBottom.computeIfAbsent(power.bottom(source).index(), key -> new ArrayList<>())
                        .add(source);
            }
        }
        byBottom.values().forEach(sources -> stacks.add(new Stack(List.copyOf(sources))));
    }

    static Packs of(Circuit circuit) {
        return new Packs(circuit);
    }

    List<Stack> stacks() {
        return stacks;
    }

    /** {@return the plugs of a unit by which its cells give current and that have a lead; taps are none of them} */
    Set<Integer> plugs(int unit) {
        Set<Integer> plugs = new TreeSet<>();
        for (int pin = wiring.firstPin(unit); pin < wiring.endPin(unit); pin++) {
            boolean pole = wiring.is(pin, PinRole.PACK_PLUS) || wiring.is(pin, PinRole.PACK_MINUS);
            if (pole && !wiring.pin(pin).cellTap().isKnown() && wiring.wiresAt(pin).length > 0) {
                plugs.add(wiring.plugIndex(pin));
            }
        }
        return plugs;
    }

    /** {@return the cells in series of a stack; empty when a pack does not tell} */
    OptionalInt cells(Stack stack) {
        int sum = 0;
        for (PowerSource source : stack.sources()) {
            if (!(wiring.parts().get(source.part()).origin() instanceof Part.Inner inner)
                    || !inner.part().rating().cells().isKnown()) {
                return OptionalInt.empty();
            }
            sum += inner.part().rating().cells().or(0);
        }
        return OptionalInt.of(sum);
    }

    /** {@return names of the packs of a stack} */
    List<String> names(Stack stack) {
        return stack.units().stream().map(wiring.directory()::name).toList();
    }
}
