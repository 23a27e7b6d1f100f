package ringout.present.schema;

import java.util.List;
import java.util.Locale;
import java.util.TreeMap;
import java.util.stream.Collectors;
import ringout.model.Awg;
import ringout.model.End;
import ringout.model.Origin;
import ringout.model.PinMap;
import ringout.model.Word;
import ringout.model.shape.FieldUnit;
import ringout.model.shape.Slot;
import ringout.model.shape.Words;
import tools.jackson.core.JsonGenerator;

/**
 * What a value of a field looks like in JSON.
 *
 * @param name name of the definition
 * @param type JSON type besides a string, or empty
 * @param words words to offer first, for closed lists
 * @param pattern what a string must match, or empty
 */
record ValueForm(String name, String type, List<String> words, String pattern) {
    private static final String NUMBER = "[+\\-\u2212]?([0-9][0-9 '.,\u00a0]*|[.,][0-9]+)([eE][+\\-]?[0-9]{1,3})?";
    private static final String DATE = "^[0-9]{4}-[0-9]{2}-[0-9]{2}$";

    /** The form of a field's value. */
    static ValueForm of(Slot slot) {
        Class<?> type = slot.type();
        if (type == String.class || type == End.class) {
            return new ValueForm(type == End.class ? "end" : "text", "number", List.of(), "");
        }
        if (type == Double.class) {
            return number(FieldUnit.of(slot.name()));
        }
        if (type == Integer.class) {
            return new ValueForm("whole", "integer", List.of(), "[+\\-]?[0-9]+([.,]0+)?|0[xX][0-9a-fA-F]+");
        }
        if (type == Boolean.class) {
            String words = anyCase(List.of("yes", "y", "true", "x", "on", "1", "no", "n", "false", "off", "0", "-"));
            return new ValueForm("yesNo", "boolean", List.of("yes", "no"), words);
        }
        if (type == Awg.class) {
            return new ValueForm(
                    "wireGauge", "integer", List.of(), "([aA][wW][gG])?\\s*#?\\s*([1-4]/0|0{1,4}|[1-5]?[0-9])");
        }
        return type == PinMap.class
                ? new ValueForm("pinMap", "", List.of(), "[^\\s,;>=\u2192]+\\s*(>|->|=|\u2192).*")
                : closed(type);
    }

    private static ValueForm number(FieldUnit unit) {
        String name =
                unit.symbol().isEmpty() ? "number" : "number_" + unit.symbol().replaceAll("[^A-Za-z0-9]", "_");
        String units = anyCase(List.copyOf(new TreeMap<>(unit.factors()).keySet()));
        return new ValueForm(
                unit.symbol().equals("%") ? "number_percent" : name,
                "number",
                List.of(),
                NUMBER + (units.isEmpty() ? "" : "\\s*(" + units + ")?"));
    }

    private static ValueForm closed(Class<?> type) {
        List<String> accepted = java.util.Arrays.stream(type.getEnumConstants())
                .flatMap(constant -> ((Word) constant).words().stream())
                .toList();
        String name = type.getSimpleName();
        return new ValueForm(
                Character.toLowerCase(name.charAt(0)) + name.substring(1), "", Words.all(type), anyCase(accepted));
    }

    /** An alternative of words in any case, a blank or an underscore between them. */
    private static String anyCase(List<String> words) {
        return words.stream()
                .map(word -> word.toLowerCase(Locale.ROOT))
                .distinct()
                .map(ValueForm::anyCase)
                .collect(Collectors.joining("|"));
    }

    private static String anyCase(String word) {
        StringBuilder pattern = new StringBuilder();
        for (int i = 0; i < word.length(); i++) {
            char c = word.charAt(i);
            if (Character.isLetter(c)) {
                char upper = Character.toUpperCase(c);
                pattern.append(upper == c ? String.valueOf(c) : "[" + c + upper + "]");
            } else if (c == ' ') {
                pattern.append("[ _]");
            } else {
                pattern.append("+-*/.()[]{}^$|?\\".indexOf(c) >= 0 ? "\\" + c : String.valueOf(c));
            }
        }
        return pattern.toString();
    }

    /** Writes the definition of the value alone. */
    void write(JsonGenerator json) {
        json.writeStartObject();
        json.writeArrayPropertyStart("anyOf");
        if (!words.isEmpty()) {
            json.writeStartObject();
            json.writeArrayPropertyStart("enum");
            words.forEach(json::writeString);
            json.writeEndArray();
            json.writeEndObject();
        }
        if (!type.isEmpty()) {
            single(json, "type", type);
        }
        json.writeStartObject();
        json.writeStringProperty("type", "string");
        if (!pattern.isEmpty()) {
            json.writeStringProperty("pattern", "^\\s*(" + pattern + ")\\s*$");
        }
        json.writeEndObject();
        json.writeEndArray();
        json.writeEndObject();
    }

    /** Writes the definition of a datum: the value, a mark, nothing, or the value with its origin and date. */
    static void datum(JsonGenerator json, String plain) {
        json.writeStartObject();
        json.writeArrayPropertyStart("anyOf");
        single(json, "$ref", plain);
        json.writeStartObject();
        json.writeArrayPropertyStart("enum");
        json.writeString("?");
        json.writeString("n/a");
        json.writeNull();
        json.writeEndArray();
        json.writeEndObject();
        json.writeStartObject();
        json.writeStringProperty("type", "string");
        json.writeStringProperty("pattern", "^(\\?|[nN]/?[aA])?$");
        json.writeEndObject();
        sourced(json, plain);
        json.writeEndArray();
        json.writeEndObject();
    }

    private static void sourced(JsonGenerator json, String plain) {
        json.writeStartObject();
        json.writeStringProperty("type", "object");
        json.writeStringProperty("description", "the value with where it comes from and when");
        json.writeArrayPropertyStart("required");
        json.writeString("value");
        json.writeEndArray();
        json.writeObjectPropertyStart("properties");
        json.writeObjectPropertyStart("value");
        json.writeStringProperty("description", "the value");
        json.writeStringProperty("$ref", plain);
        json.writeEndObject();
        json.writeObjectPropertyStart("origin");
        json.writeStringProperty("description", "where it comes from, best first");
        json.writeArrayPropertyStart("enum");
        Words.all(Origin.class).forEach(json::writeString);
        json.writeEndArray();
        json.writeEndObject();
        json.writeObjectPropertyStart("date");
        json.writeStringProperty("description", "when it was taken, YYYY-MM-DD");
        json.writeStringProperty("type", "string");
        json.writeStringProperty("pattern", DATE);
        json.writeEndObject();
        json.writeEndObject();
        json.writeBooleanProperty("additionalProperties", false);
        json.writeEndObject();
    }

    private static void single(JsonGenerator json, String name, String value) {
        json.writeStartObject();
        json.writeStringProperty(name, value);
        json.writeEndObject();
    }
}
