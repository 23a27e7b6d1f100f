package ringout.synthetic;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import tools.jackson.core.JsonGenerator;

/** One record of the file: fields by the names of the format, in the order given. */
final class Row {
    private final Map<String, Object> fields = new LinkedHashMap<>();

    private Row() {}

    /** A record from names and values in turn. */
    static Row of(Object... namesAndValues) {
        return new Row().with(namesAndValues);
    }

    /** Adds fields; a value that is an empty text is left out. */
    Row with(Object... namesAndValues) {
        for (int i = 0; i < namesAndValues.length; i += 2) {
            if (!namesAndValues[i + 1].equals("")) {
                fields.put((String) namesAndValues[i], namesAndValues[i + 1]);
            }
        }
        return this;
    }

    /** Adds the fields of another record. */
    Row with(Row other) {
        fields.putAll(other.fields);
        return this;
    }

    /** The text of a field. */
    String text(String name) {
        return (String) fields.getOrDefault(name, "");
    }

    /** Writes the record. */
    void write(JsonGenerator json) {
        json.writeStartObject();
        fields.forEach((name, value) -> {
            json.writeName(name);
            write(json, value);
        });
        json.writeEndObject();
    }

    private static void write(JsonGenerator json, Object value) {
        if (value instanceof Row row) {
            row.write(json);
        } else if (value instanceof List<?> list) {
            json.writeStartArray();
            list.forEach(item -> write(json, item));
            json.writeEndArray();
        } else if (value instanceof Integer number) {
            json.writeNumber(number);
        } else if (value instanceof Double number) {
            json.writeNumber(number);
        } else if (value instanceof Boolean flag) {
            json.writeBoolean(flag);
        } else {
            json.writeString((String) value);
        }
    }
}
