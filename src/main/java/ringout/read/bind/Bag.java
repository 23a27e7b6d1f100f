package ringout.read.bind;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import ringout.model.shape.Shape;
import ringout.model.shape.Slot;
import ringout.text.Span;

/** A record being read: values by field, some not given yet. Becomes a model record when all sources are in. */
public final class Bag {
    private final Shape<?> shape;
    private final @Nullable Object[] values;
    private Span at;
    private Set<Slot> spoilt = Set.of();

    /** An empty bag for a record that starts at a place. */
    public Bag(Shape<?> shape, Span at) {
        this.shape = shape;
        this.values = new Object[shape.slots().size()];
        this.at = at;
    }

    /** The shape of the record. */
    public Shape<?> shape() {
        return shape;
    }

    /** Where it stands. */
    public Span at() {
        return at;
    }

    /** Moves it to another place. */
    public void at(Span place) {
        this.at = place;
    }

    /** Whether a field was given. */
    public boolean has(Slot slot) {
        return values[slot.index()] != null;
    }

    /** What was given for a field. */
    public Optional<Object> get(Slot slot) {
        return Optional.ofNullable(values[slot.index()]);
    }

    /** Gives a field. */
    public void put(Slot slot, Object value) {
        values[slot.index()] = value;
    }

    /** Marks a field as given but unreadable, which was told already. */
    public void spoil(Slot slot) {
        spoilt = spoilt.isEmpty() ? new HashSet<>() : spoilt;
        spoilt.add(slot);
    }

    /** Whether a field was given but could not be read. */
    boolean isSpoilt(Slot slot) {
        return spoilt.contains(slot);
    }

    /** The records given for a list field, to read or to add to. */
    @SuppressWarnings("unchecked")
    public List<Bag> children(Slot slot) {
        Object value = values[slot.index()];
        if (value == null) {
            value = new ArrayList<Bag>();
            values[slot.index()] = value;
        }
        return (List<Bag>) value;
    }

    /** The record given for a nested field. */
    public Bag child(Slot slot) {
        Object value = values[slot.index()];
        if (value == null) {
            value = new Bag(Shape.of(slot.type()), at);
            values[slot.index()] = value;
        }
        return (Bag) value;
    }

    /** The identity of the record among its siblings, or empty. */
    public String key() {
        return shape.key().flatMap(this::get).map(Object::toString).orElse("");
    }

    /** Makes the model record. */
    public Object build() {
        Object[] built = new Object[values.length];
        for (Slot slot : shape.slots()) {
            built[slot.index()] = slot.kind() == Slot.Kind.SPAN ? at : value(slot);
        }
        return shape.make(built);
    }

    private Object value(Slot slot) {
        Object value = values[slot.index()];
        if (value == null) {
            return Shape.absent(slot);
        }
        return switch (slot.kind()) {
            case RECORD -> ((Bag) value).build();
            case RECORDS -> records(children(slot));
            default -> value;
        };
    }

    private static List<Object> records(List<Bag> bags) {
        Object[] built = new Object[bags.size()];
        for (int i = 0; i < built.length; i++) {
            built[i] = bags.get(i).build();
        }
        return Collections.unmodifiableList(java.util.Arrays.asList(built));
    }
}
