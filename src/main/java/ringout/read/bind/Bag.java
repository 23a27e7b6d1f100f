package ringout.read.bind;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import ringout.model.shape.Given;
import ringout.model.shape.Shape;
import ringout.model.shape.Slot;
import ringout.text.Span;

/**
 * A record being read: values by field, some not given yet. Becomes a model record when all sources are in; a row that is
 * complete by itself does so at once and keeps only the record, so that a long list is not held twice.
 */
public final class Bag {
    private static final Object[] NONE = {};

    private final Shape<?> shape;
    private @Nullable Object[] values;
    private @Nullable Object record;
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
        thaw();
        this.at = place;
    }

    /** Whether a field was given. */
    public boolean has(Slot slot) {
        return values(slot) != null;
    }

    /** What was given for a field. */
    public Optional<Object> get(Slot slot) {
        return Optional.ofNullable(values(slot));
    }

    /** Gives a field. */
    public void put(Slot slot, Object value) {
        thaw();
        values[slot.index()] = value;
    }

    /** Marks a field as given but unreadable, which was told already. */
    public void spoil(Slot slot) {
        spoilt = spoilt.isEmpty() ? new HashSet<>() : spoilt;
        spoilt.add(slot);
    }

    /** Whether a field was given but could not be read. */
    boolean isSpoilt(Slot slot) {
        return !spoilt.isEmpty() && spoilt.contains(slot);
    }

    /** The records given for a list field, to read or to add to. */
    @SuppressWarnings("unchecked")
    public List<Bag> children(Slot slot) {
        thaw();
        Object value = values[slot.index()];
        if (value == null) {
            value = new ArrayList<Bag>();
            values[slot.index()] = value;
        }
        return (List<Bag>) value;
    }

    /** The record given for a nested field. */
    public Bag child(Slot slot) {
        thaw();
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

    /** Makes the record now when it is complete and holds no other records; it can still be changed. */
    public void settle() {
        if (spoilt.isEmpty() && shape.isCompleteRow(values)) {
            Object[] absent = shape.absentValues();
            values[0] = at;
            for (int i = 1; i < values.length; i++) {
                if (values[i] == null) {
                    values[i] = absent[i];
                }
            }
            record = shape.make(values);
            values = NONE;
        }
    }

    /** Whether the record is complete, so that nothing about it needs to be told. */
    boolean isSettled() {
        return record != null;
    }

    private @Nullable Object values(Slot slot) {
        if (record == null) {
            return values[slot.index()];
        }
        Object value = slot.get(record);
        return Given.is(slot, value) ? value : null;
    }

    private void thaw() {
        if (record != null) {
            values = new Object[shape.slots().size()];
            for (Slot slot : shape.slots()) {
                Object value = slot.get(record);
                values[slot.index()] = Given.is(slot, value) ? value : null;
            }
            record = null;
        }
    }

    /** Makes the model record. */
    public Object build() {
        return record != null ? record : make();
    }

    private Object make() {
        Object[] built = shape.absentValues().clone();
        built[0] = at;
        for (int i = 1; i < built.length; i++) {
            Object value = values[i];
            if (value instanceof Bag bag) {
                built[i] = bag.build();
            } else if (value != null) {
                built[i] = value;
            }
        }
        for (Slot slot : shape.lists()) {
            if (values[slot.index()] != null) {
                built[slot.index()] = records(children(slot));
            }
        }
        return Objects.requireNonNull(shape.make(built));
    }

    private static List<Object> records(List<Bag> bags) {
        Object[] built = new Object[bags.size()];
        for (int i = 0; i < built.length; i++) {
            built[i] = bags.get(i).build();
        }
        return Collections.unmodifiableList(Arrays.asList(built));
    }
}
