package ringout.present.schema;

import java.io.StringWriter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import ringout.model.Aircraft;
import ringout.model.TakenFile;
import ringout.model.TypeLibrary;
import ringout.model.shape.FieldUnit;
import ringout.model.shape.Identity;
import ringout.model.shape.Shape;
import ringout.model.shape.Slot;
import ringout.present.json.RecordLayout;
import ringout.read.table.Table;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.json.JsonFactory;

/**
 * The JSON Schema (2020-12) of an aircraft's file and of a library of unit types, made from the records of the model: each
 * field with its meaning and unit, closed lists with their words, and for every datum also "?", "n/a", null, and the value
 * with its origin and date.
 *
 * <p>Fields that a table beside the file may give are not required here; the reader asks for them when all files are in.
 */
public final class AircraftSchema {
    private static final JsonFactory FACTORY = new JsonFactory();
    private static final String DRAFT = "https://json-schema.org/draft/2020-12/schema";

    private final JsonGenerator json;

    /** Definitions to be written, by name, in the order they are first met. */
    private final Map<String, Runnable> definitions = new LinkedHashMap<>();

    private AircraftSchema(JsonGenerator json) {
        this.json = json;
    }

    /** The schema of an aircraft, ending in \n. */
    public static String aircraft() {
        return write(Shape.of(Aircraft.class), "Aircraft", "units, leads, unit types and records of one aircraft");
    }

    /** The schema of a library of unit types, ending in \n. */
    public static String library() {
        return write(Shape.of(TypeLibrary.class), "Unit types", "unit types that several aircraft share");
    }

    /** The schema of what was written on pages and is taken back, ending in \n. */
    public static String taken() {
        return write(
                Shape.of(TakenFile.class),
                "Taken back",
                "ticks, readings, signatures, photos and notes written on the pages of one aircraft");
    }

    private static String write(Shape<?> shape, String title, String description) {
        StringWriter text = new StringWriter();
        try (JsonGenerator json = FACTORY.createGenerator(new RecordLayout(), text)) {
            new AircraftSchema(json).root(shape, title, description);
        }
        return text.append('\n').toString();
    }

    private void root(Shape<?> shape, String title, String description) {
        json.writeStartObject();
        json.writeStringProperty("$schema", DRAFT);
        json.writeStringProperty("title", title);
        json.writeStringProperty("description", description);
        body(shape);
        json.writeObjectPropertyStart("$defs");
        for (int i = 0; i < definitions.size(); i++) {
            String name = List.copyOf(definitions.keySet()).get(i);
            json.writeName(name);
            Objects.requireNonNull(definitions.get(name)).run();
        }
        json.writeEndObject();
        json.writeEndObject();
    }

    private void record(Shape<?> shape) {
        json.writeStartObject();
        body(shape);
        json.writeEndObject();
    }

    private void body(Shape<?> shape) {
        json.writeStringProperty("type", "object");
        required(shape);
        json.writeObjectPropertyStart("properties");
        for (Slot slot : shape.slots()) {
            if (slot.kind() != Slot.Kind.SPAN) {
                json.writeName(slot.name());
                field(slot);
            }
        }
        json.writeEndObject();
        json.writeObjectPropertyStart("patternProperties");
        json.writeName("^\\$");
        json.writeBoolean(true);
        json.writeEndObject();
        json.writeBooleanProperty("additionalProperties", false);
    }

    private void required(Shape<?> shape) {
        boolean inTables = Table.ALL.stream().anyMatch(table -> table.shape() == shape);
        List<String> names = new ArrayList<>();
        for (Slot slot : shape.slots()) {
            boolean needed = shape.isKey(slot) ? !Identity.mayBeEmpty(shape) : !inTables;
            if (slot.kind() == Slot.Kind.REQUIRED && needed && shape.type() != Aircraft.class) {
                names.add(slot.name());
            }
        }
        if (!names.isEmpty()) {
            json.writeArrayPropertyStart("required");
            names.forEach(json::writeString);
            json.writeEndArray();
        }
    }

    private void field(Slot slot) {
        json.writeStartObject();
        json.writeStringProperty("description", description(slot));
        switch (slot.kind()) {
            case RECORD -> json.writeStringProperty("$ref", record(slot));
            case RECORDS -> {
                json.writeStringProperty("type", "array");
                json.writeObjectPropertyStart("items");
                json.writeStringProperty("$ref", record(slot));
                json.writeEndObject();
            }
            case SCALARS -> {
                json.writeStringProperty("type", "array");
                json.writeObjectPropertyStart("items");
                json.writeStringProperty("$ref", value(slot, false));
                json.writeEndObject();
            }
            case DATUM -> json.writeStringProperty("$ref", value(slot, true));
            default -> json.writeStringProperty("$ref", value(slot, false));
        }
        json.writeEndObject();
    }

    private static String description(Slot slot) {
        String unit = slot.type() == Double.class ? FieldUnit.of(slot.name()).symbol() : "";
        return unit.isEmpty() ? slot.doc() : slot.doc() + ", in " + unit;
    }

    private String record(Slot slot) {
        Shape<?> shape = Shape.of(slot.type());
        String name = shape.type().getSimpleName();
        return define(Character.toLowerCase(name.charAt(0)) + name.substring(1), () -> record(shape));
    }

    private String value(Slot slot, boolean datum) {
        ValueForm form = ValueForm.of(slot);
        String plain = define(form.name(), () -> form.write(json));
        return datum ? define(form.name() + "Datum", () -> ValueForm.datum(json, plain)) : plain;
    }

    private String define(String name, Runnable definition) {
        definitions.putIfAbsent(name, definition);
        return "#/$defs/" + name;
    }
}
