package ringout.check.record;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import ringout.check.form.Situation;
import ringout.graph.order.Item;
import ringout.graph.order.Items;
import ringout.model.Datum;
import ringout.model.PortSetting;
import ringout.model.Unit;
import ringout.model.shape.Parsed;
import ringout.model.shape.Scalars;
import ringout.model.shape.Shape;
import ringout.model.shape.Slot;

/** What the list says in one field of a unit or lead, found by the words a person calls the field. */
final class Listed {
    private static final int UNIT_LETTERS = 4;

    /** A field of a row. */
    private record Field(Slot slot, Object value) {}

    private final List<Field> fields;

    private Listed(List<Field> fields) {
        this.fields = fields;
    }

    /** The field of a unit, of its ports, or of a lead; of none when there is no such row or field. */
    static Listed of(Situation at, Item item, String name) {
        List<Field> fields = new ArrayList<>();
        if (item instanceof Item.OfLead lead) {
            Items.of(at.circuit())
                    .rows(lead.id())
                    .forEach(row -> add(at.aircraft().leads().get(row), name, fields));
        } else if (item instanceof Item.OfUnit of && !at.directory().isJoint(of.unit())) {
            Unit unit = at.directory().unit(of.unit());
            add(unit, name, fields);
            unit.ports().forEach(port -> port(port, name, fields));
        }
        return new Listed(fields);
    }

    /** A setting of a port, named alone or after the port: {@code CAN2 address}. */
    private static void port(PortSetting port, String name, List<Field> fields) {
        String prefix = fold(port.port());
        String wanted = fold(name);
        boolean named = !prefix.isEmpty() && wanted.startsWith(prefix);
        List<Field> found = new ArrayList<>();
        add(port, named ? wanted.substring(prefix.length()) : name, found);
        found.stream()
                .filter(field ->
                        !(field.value() instanceof Datum.NotAsked) && !(field.value() instanceof Datum.NotApplicable))
                .forEach(fields::add);
    }

    private static void add(Object row, String name, List<Field> fields) {
        String wanted = fold(name);
        for (Slot slot : Shape.of(row.getClass()).slots()) {
            boolean scalar = slot.kind() == Slot.Kind.DATUM || slot.kind() == Slot.Kind.REQUIRED;
            if (scalar && isCalled(slot, wanted)) {
                Object value = slot.get(row);
                fields.add(new Field(slot, value instanceof Datum<?> ? value : Datum.of(value)));
            }
        }
    }

    /** The name of the field, with or without its unit of measure. */
    private static boolean isCalled(Slot slot, String wanted) {
        String name = fold(slot.name());
        boolean number = slot.type() == Double.class;
        return name.equals(wanted)
                || (number
                        && wanted.length() > 2
                        && name.startsWith(wanted)
                        && name.length() - wanted.length() <= UNIT_LETTERS);
    }

    private static String fold(String name) {
        return name.toLowerCase(Locale.ROOT).replaceAll("[\\s_-]", "");
    }

    /** Whether there is such a field. */
    boolean exists() {
        return !fields.isEmpty();
    }

    /** Whether the list gives no value for it. */
    boolean isMissing() {
        return fields.stream().noneMatch(field -> ((Datum<?>) field.value()).isKnown());
    }

    /** Whether the list says the same as a text. */
    boolean agrees(String told) {
        return fields.stream().anyMatch(field -> agrees(field, told.strip()));
    }

    private static boolean agrees(Field field, String told) {
        if (!(field.value() instanceof Datum.Known<?> known)) {
            return false;
        }
        String listed = Scalars.write(known.value());
        return listed.equalsIgnoreCase(told)
                || (Scalars.parse(field.slot(), told) instanceof Parsed.Good good
                        && good.value().equals(known.value()));
    }

    /** Name of the field, without spaces. */
    String field() {
        return fields.isEmpty() ? "" : fields.get(0).slot().name();
    }

    /** What the list says. */
    String words() {
        return fields.stream()
                .map(field -> field.value() instanceof Datum.Known<?> known
                        ? Scalars.write(known.value())
                        : ((Datum<?>) field.value()).absence())
                .distinct()
                .collect(Collectors.joining(" / "));
    }
}
