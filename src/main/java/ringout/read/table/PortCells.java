package ringout.read.table;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ringout.model.shape.CellForm;
import ringout.model.shape.Identity;
import ringout.model.shape.Shape;
import ringout.model.shape.Slot;
import ringout.text.Characters;

/** The settings of a unit's ports as cells, one column a field; all of them, or none when the cells would not say the same. */
final class PortCells {
    private PortCells() {}

    /** The texts by column; empty for all other columns. */
    static List<String> texts(List<Column> columns, Object unit) {
        List<String> none = Collections.nCopies(columns.size(), "");
        List<String> texts = new ArrayList<>(none);
        Map<String, Map<String, String>> read = new LinkedHashMap<>();
        Map<String, Map<String, String>> wanted = new LinkedHashMap<>();
        for (Column column : columns) {
            if (column.target() instanceof Column.Target.PerPort port) {
                List<?> settings = (List<?>) port.list().get(unit);
                if (wanted.isEmpty() && !wanted(settings, port.list(), wanted)) {
                    return none;
                }
                Optional<String> text = text(settings, port, read);
                if (text.isEmpty()) {
                    return none;
                }
                texts.set(column.index(), text.get());
            }
        }
        return new ArrayList<>(read.entrySet()).equals(new ArrayList<>(wanted.entrySet())) ? texts : none;
    }

    /** What shall be read back: port to field to text, in the order of the ports. */
    private static boolean wanted(List<?> settings, Slot list, Map<String, Map<String, String>> wanted) {
        Shape<?> shape = Shape.of(list.type());
        for (Object setting : settings) {
            String port = Identity.key(shape, setting);
            boolean name = port.isEmpty()
                    ? settings.size() == 1
                    : port.matches("[^\\s;=]+") && Characters.unprintable(port) < 0;
            if (!name || wanted.put(port, new LinkedHashMap<>()) != null) {
                return false;
            }
            for (Slot slot : shape.slots()) {
                if (slot.kind() == Slot.Kind.DATUM) {
                    Optional<String> text = CellForm.write(slot, slot.get(setting));
                    if (text.isEmpty()) {
                        return false;
                    }
                    if (!text.get().isEmpty()) {
                        wanted.get(port).put(slot.name(), text.get());
                    }
                }
            }
        }
        return true;
    }

    private static Optional<String> text(
            List<?> settings, Column.Target.PerPort port, Map<String, Map<String, String>> read) {
        List<String> parts = new ArrayList<>();
        for (Object setting : settings) {
            String name = Identity.key(Shape.of(port.list().type()), setting);
            String value = CellForm.write(port.slot(), port.slot().get(setting)).orElse("");
            if (!value.isEmpty()) {
                parts.add(name.isEmpty() ? value : name + "=" + value);
            }
        }
        String text = String.join(" ", parts);
        if (text.isEmpty()) {
            return Optional.of(text);
        }
        PortCell.of(text)
                .forEach(cell -> read.computeIfAbsent(cell.port(), p -> new LinkedHashMap<>())
                        .put(port.slot().name(), cell.value()));
        boolean plain = !Ditto.is(text) && !text.startsWith(",") && text.equals(Characters.strip(text));
        return plain ? Optional.of(text) : Optional.empty();
    }
}
