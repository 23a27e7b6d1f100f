package ringout.solve.power;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import ringout.graph.Gap;
import ringout.model.shape.Scalars;

/** Collects what had to be assumed, each once, in the order it was met. */
final class Assumptions {
    private final Map<Gap, Assumption> all = new LinkedHashMap<>();

    /** A value taken where none is given. */
    void add(String datum, String of, double value, String unit) {
        String text = unit.isEmpty() ? Scalars.number(value) : Scalars.number(value) + " " + unit;
        put(new Gap(datum, of), text);
    }

    /** Something left out because its value is not given. */
    void without(String datum, String of) {
        put(new Gap(datum, of), "left out");
    }

    private void put(Gap gap, String value) {
        all.putIfAbsent(gap, new Assumption(gap, value));
    }

    /** Takes over what others had to assume. */
    void addAll(Assumptions others) {
        others.all.forEach(all::putIfAbsent);
    }

    List<Assumption> all() {
        return List.copyOf(all.values());
    }
}
