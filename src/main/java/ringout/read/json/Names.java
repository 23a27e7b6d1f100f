package ringout.read.json;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import ringout.model.shape.Shape;
import ringout.model.shape.Slot;
import ringout.text.Nearest;
import tools.jackson.core.json.JsonFactory;
import tools.jackson.core.sym.PropertyNameMatcher;
import tools.jackson.core.util.Named;

/** The field names of a shape in the form the parser finds fastest. */
final class Names {
    private static final Map<Shape<?>, Names> KNOWN = new ConcurrentHashMap<>();

    private final List<String> names = new ArrayList<>();
    private final PropertyNameMatcher matcher;

    private Names(Shape<?> shape, JsonFactory factory) {
        for (Slot slot : shape.slots()) {
            if (slot.kind() != Slot.Kind.SPAN) {
                names.add(slot.name());
            }
        }
        List<Named> named = names.stream().map(Named::fromString).toList();
        this.matcher = factory.constructNameMatcher(named, false);
    }

    /** The names of a shape, in the order of its fields; the place of the record, which comes first, has none. */
    static Names of(Shape<?> shape, JsonFactory factory) {
        Names known = KNOWN.get(shape);
        if (known == null) {
            known = new Names(shape, factory);
            KNOWN.put(shape, known);
        }
        return known;
    }

    /** Finds a name by its position. */
    PropertyNameMatcher matcher() {
        return matcher;
    }

    /** The nearest name, or all of them. */
    String hint(String name) {
        String near = Nearest.hint(name.toLowerCase(Locale.ROOT), names);
        return near.isEmpty() ? String.join(", ", names) : near;
    }
}
