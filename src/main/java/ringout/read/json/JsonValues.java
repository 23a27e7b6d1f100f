package ringout.read.json;

import java.util.HashMap;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import ringout.model.Datum;
import ringout.model.shape.Marks;
import ringout.model.shape.Slot;
import ringout.read.bind.Scribe;
import ringout.text.Characters;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;

/** Reads single values at the parser's current token. What cannot be read is told, and null. */
final class JsonValues {
    private static final int LONGEST_REMEMBERED = 64;
    private static final Datum<?> YES = Datum.of(true);
    private static final Datum<?> NO = Datum.of(false);

    private final JsonParser parser;
    private final Scribe scribe;
    private final JsonPlaces places;
    private final Recent recent = new Recent();

    JsonValues(JsonParser parser, Scribe scribe, JsonPlaces places) {
        this.parser = parser;
        this.scribe = scribe;
        this.places = places;
    }

    /** A scalar that must be there. */
    @Nullable
    Object required(Slot slot, JsonToken token) {
        if (!token.isScalarValue() || token == JsonToken.VALUE_NULL) {
            return notSingle(slot.name());
        }
        String text = parser.getString();
        if (slot.type() == String.class && Characters.unprintable(text) < 0) {
            return text;
        }
        return scribe.scalar(slot, text, places::here);
    }

    private @Nullable Object notSingle(String name) {
        places.tell("`" + name + "` must be a single value", "");
        parser.skipChildren();
        return null;
    }

    /** A datum: a value, a mark, nothing, or a value with its origin and date. */
    @Nullable
    Object datum(Slot slot, JsonToken token) {
        return switch (token) {
            case VALUE_NULL -> Datum.notAsked();
            case START_OBJECT -> sourced(slot);
            case VALUE_TRUE -> slot.type() == Boolean.class ? YES : text(slot);
            case VALUE_FALSE -> slot.type() == Boolean.class ? NO : text(slot);
            case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> slot.type() == Double.class ? number(slot, token) : text(slot);
            case VALUE_STRING -> text(slot);
            default -> notSingle(slot.name());
        };
    }

    private @Nullable Object number(Slot slot, JsonToken token) {
        boolean shortWhole = token == JsonToken.VALUE_NUMBER_INT && parser.getStringLength() < 9;
        double value = shortWhole ? parser.getIntValue() : parser.getDoubleValue();
        if (Double.isFinite(value)) {
            return recent.number(value + 0.0);
        }
        places.tell("`" + slot.name() + "` is too large", "");
        return null;
    }

    private @Nullable Object text(Slot slot) {
        int length = parser.getStringLength();
        if (length == 0) {
            return Datum.notAsked();
        }
        boolean lasting = length <= LONGEST_REMEMBERED && (slot.type() != Double.class);
        if (lasting) {
            Datum<?> known = recent.get(slot.type(), parser.getStringCharacters(), parser.getStringOffset(), length);
            if (known != null) {
                return known;
            }
        }
        String text = parser.getString();
        Datum<?> datum = fresh(slot, text);
        if (lasting && datum != null) {
            recent.put(slot.type(), text, datum);
        }
        return datum;
    }

    private @Nullable Datum<?> fresh(Slot slot, String text) {
        boolean plain = slot.type() == String.class && Marks.of(text).isEmpty() && Characters.unprintable(text) < 0;
        return plain ? Datum.of(text) : scribe.datum(slot, text, places::here);
    }

    private @Nullable Object sourced(Slot slot) {
        var at = places.here();
        Map<String, String> parts = new HashMap<>();
        while (parser.nextToken() == JsonToken.PROPERTY_NAME) {
            String name = parser.currentName();
            JsonToken token = parser.nextToken();
            if (!token.isScalarValue()) {
                notSingle(name);
            } else if (name.equals("value") || name.equals("origin") || name.equals("date")) {
                parts.put(name, token == JsonToken.VALUE_NULL ? "" : parser.getString());
            } else {
                places.tell("no field `" + name + "` here", "value, origin, date");
            }
        }
        String value = Objects.requireNonNullElse(parts.get("value"), "");
        return value.isEmpty()
                ? Datum.notAsked()
                : scribe.datum(slot, value, parts.getOrDefault("origin", ""), parts.getOrDefault("date", ""), () -> at);
    }
}
