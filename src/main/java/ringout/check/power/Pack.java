package ringout.check.power;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import ringout.check.form.Situation;
import ringout.graph.Part;
import ringout.graph.power.PowerGraph;
import ringout.graph.power.PowerSource;
import ringout.model.Datum;
import ringout.model.InnerPart;
import ringout.model.PartRating;
import ringout.model.PinRole;
import ringout.model.Unit;

/**
 * A pack that works in this state.
 *
 * @param source its cells
 * @param unit the pack
 * @param rating what its label says
 */
record Pack(PowerSource source, Unit unit, PartRating rating) {
    /** The packs by stack, the lowest of each stack first; a cell soldered inside a unit is none. */
    static List<List<Pack>> stacks(Situation at) {
        PowerGraph power = PowerGraph.of(at.circuit());
        Map<Integer, List<Pack>> byBottom = new LinkedHashMap<>();
        for (PowerSource source : power.sources()) {
            boolean pack = source.kind() == PowerSource.Kind.PACK && source.part() >= 0 && power.works(source);
            if (pack && contacts(at, source.unit())) {
                byBottom.computeIfAbsent(power.bottom(source).index(), key -> new ArrayList<>())
                        .add(of(at, source));
            }
        }
        byBottom.values()
                .forEach(stack -> stack.sort((a, b) -> Boolean.compare(
                        power.bottom(b.source).equals(b.source),
                        power.bottom(a.source).equals(a.source))));
        return List.copyOf(byBottom.values());
    }

    private static boolean contacts(Situation at, int unit) {
        for (int pin = at.wiring().firstPin(unit); pin < at.wiring().endPin(unit); pin++) {
            if (at.wiring().is(pin, PinRole.PACK_PLUS)) {
                return true;
            }
        }
        return false;
    }

    private static Pack of(Situation at, PowerSource source) {
        Part part = at.wiring().parts().get(source.part());
        InnerPart inner = ((Part.Inner) part.origin()).part();
        return new Pack(source, at.directory().unit(source.unit()), inner.rating());
    }

    /** Its name. */
    String name() {
        return unit.ref();
    }

    /** Its voltage at rest in V, as measured. */
    Datum<Double> restV() {
        return unit.restV();
    }

    /** Number of cells in series. */
    Datum<Integer> cells() {
        return rating.cells();
    }

    /** Capacity in Ah. */
    Datum<Double> capacityAh() {
        return rating.capacityAh();
    }
}
