package ringout.model.shape;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.RecordComponent;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import ringout.model.Doc;

/**
 * One field of a model record.
 *
 * @param name name in the files
 * @param index position among the fields
 * @param kind how the value is held
 * @param type scalar type, or record type of a list or nested record
 */
public record Slot(String name, int index, Kind kind, Class<?> type, RecordComponent component) {
    /** How a field holds its value. */
    public enum Kind {
        /** Where the record stands; not a field of the files. */
        SPAN,
        /** A scalar that must be there. */
        REQUIRED,
        /** A scalar that may be missing. */
        DATUM,
        /** A list of scalars. */
        SCALARS,
        /** One record inside another. */
        RECORD,
        /** A list of records. */
        RECORDS
    }

    /** The value of this field in a record. */
    public Object get(Object record) {
        Method accessor = component.getAccessor();
        try {
            return Objects.requireNonNull(accessor.invoke(record));
        } catch (IllegalAccessException | InvocationTargetException e) {
            throw new IllegalStateException("field " + name, e);
        }
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Slot slot && slot.component.equals(component);
    }

    @Override
    public int hashCode() {
        return 31 * name.hashCode() + index;
    }

    /** What the field means. */
    public String doc() {
        Doc doc = component.getAnnotation(Doc.class);
        return doc == null ? "" : doc.value();
    }
}
