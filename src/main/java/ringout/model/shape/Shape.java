package ringout.model.shape;

import java.lang.invoke.MethodHandle;
import java.lang.invoke.MethodHandles;
import java.lang.invoke.MethodType;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.jspecify.annotations.Nullable;
import ringout.model.Aircraft;
import ringout.model.Datum;
import ringout.text.Span;

/**
 * The fields of one model record, in order, and the way to make one.
 *
 * @param <R> the record
 */
public final class Shape<R> {
    private static final Map<Class<?>, Shape<?>> KNOWN = new ConcurrentHashMap<>();

    private final Class<R> type;
    private final List<Slot> slots;
    private final Map<String, Slot> byName;
    private final MethodHandle constructor;
    private final List<Slot> lists;
    private final List<Slot> records;
    private final List<Slot> needed;
    private Object[] absent = {};

    private Shape(Class<R> type) {
        this.type = type;
        RecordComponent[] components = type.getRecordComponents();
        List<Slot> found = new ArrayList<>();
        Class<?>[] types = new Class<?>[components.length];
        for (int i = 0; i < components.length; i++) {
            types[i] = components[i].getType();
            found.add(slot(components[i], i));
        }
        this.slots = List.copyOf(found);
        this.byName = new HashMap<>();
        slots.forEach(slot -> byName.put(slot.name(), slot));
        this.lists = ofKind(Slot.Kind.RECORDS);
        this.records = slots.stream()
                .filter(slot -> slot.kind() == Slot.Kind.RECORD || slot.kind() == Slot.Kind.RECORDS)
                .toList();
        this.needed = ofKind(Slot.Kind.REQUIRED).stream()
                .filter(slot -> type != Aircraft.class && !(isKey(slot) && Identity.mayBeEmpty(this)))
                .toList();
        this.constructor = constructor(type, types);
    }

    /** The canonical constructor as one call with all values in an array. */
    private static MethodHandle constructor(Class<?> type, Class<?>[] types) {
        try {
            return MethodHandles.publicLookup()
                    .findConstructor(type, MethodType.methodType(void.class, types))
                    .asSpreader(Object[].class, types.length)
                    .asType(MethodType.methodType(Object.class, Object[].class));
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(e);
        }
    }

    private List<Slot> ofKind(Slot.Kind kind) {
        return slots.stream().filter(slot -> slot.kind() == kind).toList();
    }

    /** The shape of a record type. */
    @SuppressWarnings("unchecked")
    public static <R> Shape<R> of(Class<R> type) {
        Shape<?> known = KNOWN.get(type);
        if (known == null) {
            known = new Shape<>(type);
            KNOWN.put(type, known);
        }
        return (Shape<R>) known;
    }

    private static Slot slot(RecordComponent component, int index) {
        Class<?> raw = component.getType();
        String name = component.getName();
        if (raw == Span.class) {
            return new Slot(name, index, Slot.Kind.SPAN, raw, component);
        }
        if (raw == Datum.class) {
            return new Slot(name, index, Slot.Kind.DATUM, argument(component.getGenericType()), component);
        }
        if (raw == List.class) {
            Class<?> item = argument(component.getGenericType());
            Slot.Kind kind = modelRecord(item) ? Slot.Kind.RECORDS : Slot.Kind.SCALARS;
            return new Slot(name, index, kind, item, component);
        }
        Slot.Kind kind = modelRecord(raw) ? Slot.Kind.RECORD : Slot.Kind.REQUIRED;
        return new Slot(name, index, kind, raw, component);
    }

    private static boolean modelRecord(Class<?> type) {
        return type.isRecord()
                && type.getRecordComponents().length > 0
                && type.getRecordComponents()[0].getType() == Span.class;
    }

    private static Class<?> argument(Type generic) {
        return (Class<?>) ((ParameterizedType) generic).getActualTypeArguments()[0];
    }

    /** The record type. */
    public Class<R> type() {
        return type;
    }

    /** All fields in order; the first is the span. */
    public List<Slot> slots() {
        return slots;
    }

    /** The field of a name. */
    public Optional<Slot> slot(String name) {
        return Optional.ofNullable(byName.get(name));
    }

    /** The field that identifies a record among its siblings: its first required scalar, if any. */
    public Optional<Slot> key() {
        return slots.size() > 1 && slots.get(1).kind() == Slot.Kind.REQUIRED
                ? Optional.of(slots.get(1))
                : Optional.empty();
    }

    /** Whether a field is the one that identifies a record among its siblings. */
    public boolean isKey(Slot slot) {
        return slot.index() == 1 && slot.kind() == Slot.Kind.REQUIRED;
    }

    /** The values of a record, in the order of the fields. */
    public Object[] values(Object record) {
        Object[] values = new Object[slots.size()];
        for (Slot slot : slots) {
            values[slot.index()] = slot.get(record);
        }
        return values;
    }

    /** Makes a record from values in the order of the fields. */
    public R make(Object[] values) {
        try {
            return type.cast((Object) constructor.invokeExact(values));
        } catch (Throwable e) {
            throw new IllegalStateException(type.getSimpleName(), e);
        }
    }

    /** A copy of a record with one field changed. */
    @SuppressWarnings("unchecked")
    public R with(R record, String field, Object value) {
        Object[] values = values(record);
        Slot slot = slot(field).orElseThrow(() -> new IllegalArgumentException("no field " + field));
        values[slot.index()] = value;
        return make(values);
    }

    /** The fields that are lists of records. */
    public List<Slot> lists() {
        return lists;
    }

    /** The fields that hold other records, one or a list of them. */
    public List<Slot> records() {
        return records;
    }

    /** The fields that an aircraft cannot do without; its own name is not among them. */
    public List<Slot> needed() {
        return needed;
    }

    /** Whether values, null where not given, hold all that is needed and no other records. */
    public boolean isCompleteRow(@Nullable Object[] values) {
        for (Slot slot : records) {
            if (values[slot.index()] != null) {
                return false;
            }
        }
        for (Slot slot : needed) {
            Object value = values[slot.index()];
            if (value == null || value.toString().isBlank()) {
                return false;
            }
        }
        return true;
    }

    /** The values of a record with nothing given; shared, so copy them before changing one. */
    public Object[] absentValues() {
        if (absent.length == 0) {
            absent = slots.stream().map(Shape::absent).toArray();
        }
        return absent;
    }

    /** The value of a field when nothing is given. */
    public static Object absent(Slot slot) {
        return switch (slot.kind()) {
            case SPAN -> Span.NONE;
            case REQUIRED -> Scalars.blank(slot.type());
            case DATUM -> Datum.notAsked();
            case SCALARS, RECORDS -> List.of();
            case RECORD -> Shape.of(slot.type()).empty();
        };
    }

    /** A record with nothing given. */
    public R empty() {
        return make(absentValues());
    }
}
