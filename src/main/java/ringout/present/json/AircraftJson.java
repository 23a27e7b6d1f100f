package ringout.present.json;

import ringout.model.Aircraft;
import ringout.model.TypeLibrary;
import ringout.model.shape.Shape;

/**
 * An aircraft, or a library of unit types, as JSON by schemas/aircraft.schema.json: the exchange and archive form. Rows
 * keep their order and names; only what is given is written; "?" and "n/a", origins and dates are kept. One row of the
 * user's lists is one line, so that a version store shows a change as the change of a row.
 */
public final class AircraftJson {
    private AircraftJson() {}

    /** The whole aircraft, ending in \n. */
    public static String of(Aircraft aircraft) {
        return RecordJson.of(Shape.of(Aircraft.class), aircraft) + "\n";
    }

    /** A library of unit types, ending in \n. */
    public static String of(TypeLibrary library) {
        return RecordJson.of(Shape.of(TypeLibrary.class), library) + "\n";
    }

    /** Any record of the model on one line, as the text of an edit has it. */
    public static String line(Object record) {
        return RecordJson.line(Shape.of(record.getClass()), record);
    }
}
