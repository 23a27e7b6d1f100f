package ringout.read.json;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import ringout.model.Datum;
import ringout.model.shape.Marks;
import ringout.model.shape.Shape;
import ringout.model.shape.Slot;
import ringout.read.bind.Bag;
import ringout.read.bind.Scribe;
import ringout.text.Characters;
import ringout.text.Nearest;
import ringout.text.Problem;
import ringout.text.Problems;
import ringout.text.Span;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.core.TokenStreamLocation;
import tools.jackson.core.json.JsonFactory;

/** Reads JSON into half-read records, as a stream, with the place of every record. */
public final class JsonReader {
    private static final JsonFactory FACTORY = new JsonFactory();

    private final String file;
    private final Problems problems;
    private final Scribe scribe;
    private final JsonParser parser;

    private JsonReader(String file, byte[] bytes, Problems problems) {
        this.file = file;
        this.problems = problems;
        this.scribe = new Scribe(problems);
        this.parser = FACTORY.createParser(ObjectReadContext.empty(), bytes);
    }

    /** Reads one record from a file; what cannot be read is told and left out. */
    public static Bag read(String file, byte[] bytes, Shape<?> shape, Problems problems) {
        JsonReader reader = new JsonReader(file, bytes, problems);
        Bag bag = new Bag(shape, Span.at(file, 1, 1));
        try {
            reader.root(bag);
        } catch (JacksonException e) {
            problems.add(new Problem(
                    reader.place(e.getLocation()),
                    "not readable as JSON: " + e.getOriginalMessage(),
                    "mend the text here first; what follows was not read"));
        }
        return bag;
    }

    private void root(Bag bag) {
        if (parser.nextToken() != JsonToken.START_OBJECT) {
            problems.add(here(), "this does not start with {", "a record stands in { }");
            return;
        }
        object(bag);
        if (parser.nextToken() != null) {
            problems.add(here(), "text after the closing }", "");
        }
    }

    private void object(Bag bag) {
        while (parser.nextToken() == JsonToken.PROPERTY_NAME) {
            String name = parser.currentName();
            Slot slot = bag.shape()
                    .slot(name)
                    .filter(s -> s.kind() != Slot.Kind.SPAN)
                    .orElse(null);
            if (slot == null) {
                unknown(bag, name);
            } else {
                field(bag, slot);
            }
        }
    }

    private void unknown(Bag bag, String name) {
        Span at = here();
        parser.nextToken();
        parser.skipChildren();
        if (!name.startsWith("$")) {
            List<String> names = bag.shape().slots().stream()
                    .filter(s -> s.kind() != Slot.Kind.SPAN)
                    .map(Slot::name)
                    .toList();
            String hint = Nearest.hint(name, names);
            problems.add(at, "no field `" + name + "` here", hint.isEmpty() ? String.join(", ", names) : hint);
        }
    }

    private void field(Bag bag, Slot slot) {
        if (bag.has(slot)) {
            problems.add(here(), "`" + slot.name() + "` is given twice in one record", "keep one of them");
        }
        JsonToken token = parser.nextToken();
        switch (slot.kind()) {
            case RECORD -> nested(bag, slot, token);
            case RECORDS -> records(bag, slot, token);
            case SCALARS -> scalars(bag, slot, token);
            case REQUIRED -> put(bag, slot, required(slot, token));
            default -> put(bag, slot, datum(slot, token));
        }
    }

    private static void put(Bag bag, Slot slot, @Nullable Object value) {
        if (value != null) {
            bag.put(slot, value);
        } else {
            bag.spoil(slot);
        }
    }

    private void nested(Bag bag, Slot slot, JsonToken token) {
        if (wants(token, JsonToken.START_OBJECT, slot, "a record in { }")) {
            Bag child = bag.child(slot);
            child.at(here());
            object(child);
        }
    }

    private void records(Bag bag, Slot slot, JsonToken token) {
        if (!wants(token, JsonToken.START_ARRAY, slot, "a list in [ ]")) {
            return;
        }
        List<Bag> children = bag.children(slot);
        Shape<?> shape = Shape.of(slot.type());
        for (JsonToken item = parser.nextToken(); item != JsonToken.END_ARRAY; item = parser.nextToken()) {
            if (wants(item, JsonToken.START_OBJECT, slot, "a list of records in { }")) {
                Bag child = new Bag(shape, here());
                object(child);
                children.add(child);
            }
        }
    }

    private void scalars(Bag bag, Slot slot, JsonToken token) {
        if (!wants(token, JsonToken.START_ARRAY, slot, "a list in [ ]")) {
            return;
        }
        List<Object> values = new ArrayList<>();
        for (JsonToken item = parser.nextToken(); item != JsonToken.END_ARRAY; item = parser.nextToken()) {
            Object value = required(slot, item);
            if (value != null) {
                values.add(value);
            }
        }
        bag.put(slot, List.copyOf(values));
    }

    private boolean wants(JsonToken token, JsonToken wanted, Slot slot, String words) {
        if (token == wanted) {
            return true;
        }
        problems.add(here(), "`" + slot.name() + "` must be " + words, "");
        parser.skipChildren();
        return false;
    }

    private @Nullable Object required(Slot slot, JsonToken token) {
        if (!token.isScalarValue() || token == JsonToken.VALUE_NULL) {
            problems.add(here(), "`" + slot.name() + "` must be a single value", "");
            parser.skipChildren();
            return null;
        }
        return scribe.scalar(slot, parser.getString(), here());
    }

    private @Nullable Object datum(Slot slot, JsonToken token) {
        if (token == JsonToken.VALUE_NULL) {
            return Datum.notAsked();
        }
        if (token == JsonToken.START_OBJECT) {
            return sourced(slot);
        }
        if (!token.isScalarValue()) {
            problems.add(here(), "`" + slot.name() + "` must be a single value", "");
            parser.skipChildren();
            return null;
        }
        return plain(slot, token);
    }

    private @Nullable Object plain(Slot slot, JsonToken token) {
        if (slot.type() == Double.class && token.isNumeric()) {
            return finite(slot);
        }
        String text = parser.getString();
        if (text.isEmpty()) {
            return Datum.notAsked();
        }
        if (slot.type() == String.class
                && token == JsonToken.VALUE_STRING
                && Marks.of(text).isEmpty()
                && Characters.unprintable(text) < 0) {
            return Datum.of(text);
        }
        return scribe.datum(slot, text, here());
    }

    private @Nullable Object finite(Slot slot) {
        double value = parser.getDoubleValue();
        if (Double.isFinite(value)) {
            return Datum.of(value);
        }
        problems.add(here(), "`" + slot.name() + "` is too large", "");
        return null;
    }

    private @Nullable Object sourced(Slot slot) {
        Span at = here();
        String value = "";
        String origin = "";
        String date = "";
        while (parser.nextToken() == JsonToken.PROPERTY_NAME) {
            String name = parser.currentName();
            JsonToken token = parser.nextToken();
            if (!token.isScalarValue()) {
                problems.add(here(), "`" + name + "` must be a single value", "");
                parser.skipChildren();
                continue;
            }
            String text = token == JsonToken.VALUE_NULL ? "" : parser.getString();
            switch (name) {
                case "value" -> value = text;
                case "origin" -> origin = text;
                case "date" -> date = text;
                default -> problems.add(here(), "no field `" + name + "` here", "value, origin, date");
            }
        }
        return value.isEmpty() ? Datum.notAsked() : scribe.datum(slot, value, origin, date, at);
    }

    private Span here() {
        return place(parser.currentTokenLocation());
    }

    private Span place(@Nullable TokenStreamLocation location) {
        return location == null
                ? Span.at(file, 1, 1)
                : Span.at(file, Math.max(1, location.getLineNr()), Math.max(1, location.getColumnNr()));
    }
}
