package ringout.read.json;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import ringout.model.shape.Shape;
import ringout.model.shape.Slot;
import ringout.read.bind.Bag;
import ringout.read.bind.Scribe;
import ringout.text.Problem;
import ringout.text.Problems;
import ringout.text.Span;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.core.json.JsonFactory;
import tools.jackson.core.sym.PropertyNameMatcher;

/** Reads JSON into half-read records, as a stream, with the place of every record. */
public final class JsonReader {
    private static final JsonFactory FACTORY = new JsonFactory();

    private final JsonParser parser;
    private final JsonPlaces places;
    private final JsonValues values;

    private JsonReader(String file, JsonParser parser, Problems problems) {
        this.parser = parser;
        this.places = new JsonPlaces(file, parser, problems);
        this.values = new JsonValues(parser, new Scribe(problems), places);
    }

    /** Reads one record from a file; what cannot be read is told and left out. */
    public static Bag read(String file, byte[] bytes, Shape<?> shape, Problems problems) {
        Bag bag = new Bag(shape, Span.at(file, 1, 1));
        try (JsonParser parser = FACTORY.createParser(ObjectReadContext.empty(), bytes)) {
            new JsonReader(file, parser, problems).root(bag);
        } catch (JacksonException e) {
            problems.add(new Problem(
                    JsonPlaces.of(file, e.getLocation()),
                    "not readable as JSON: " + e.getOriginalMessage(),
                    "mend the text here first; what follows was not read"));
        }
        return bag;
    }

    private void root(Bag bag) {
        if (parser.nextToken() != JsonToken.START_OBJECT) {
            places.tell("this does not start with {", "a record stands in { }");
            return;
        }
        object(bag, Names.of(bag.shape(), FACTORY));
        if (parser.nextToken() != null) {
            places.tell("text after the closing }", "");
        }
    }

    private void object(Bag bag, Names names) {
        List<Slot> slots = bag.shape().slots();
        int match = parser.nextNameMatch(names.matcher());
        while (match != PropertyNameMatcher.MATCH_END_OBJECT) {
            if (match >= 0) {
                field(bag, slots.get(match + 1));
            } else {
                unknown(names, parser.currentName());
            }
            match = parser.nextNameMatch(names.matcher());
        }
    }

    private void unknown(Names names, String name) {
        Span at = places.here();
        parser.nextToken();
        parser.skipChildren();
        if (!name.startsWith("$")) {
            places.tell(at, "no field `" + name + "` here", names.hint(name));
        }
    }

    private void field(Bag bag, Slot slot) {
        if (bag.has(slot)) {
            places.tell("`" + slot.name() + "` is given twice in one record", "keep one of them");
        }
        JsonToken token = parser.nextToken();
        switch (slot.kind()) {
            case RECORD -> nested(bag, slot, token);
            case RECORDS -> records(bag, slot, token);
            case SCALARS -> scalars(bag, slot, token);
            case REQUIRED -> put(bag, slot, values.required(slot, token));
            default -> put(bag, slot, values.datum(slot, token));
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
            child.at(places.here());
            object(child, Names.of(child.shape(), FACTORY));
        }
    }

    private void records(Bag bag, Slot slot, JsonToken token) {
        if (!wants(token, JsonToken.START_ARRAY, slot, "a list in [ ]")) {
            return;
        }
        List<Bag> children = bag.children(slot);
        Shape<?> shape = Shape.of(slot.type());
        Names names = Names.of(shape, FACTORY);
        for (JsonToken item = parser.nextToken(); item != JsonToken.END_ARRAY; item = parser.nextToken()) {
            if (wants(item, JsonToken.START_OBJECT, slot, "a list of records in { }")) {
                Bag child = new Bag(shape, places.here());
                object(child, names);
                child.settle();
                children.add(child);
            }
        }
    }

    private void scalars(Bag bag, Slot slot, JsonToken token) {
        if (!wants(token, JsonToken.START_ARRAY, slot, "a list in [ ]")) {
            return;
        }
        List<Object> items = new ArrayList<>();
        for (JsonToken item = parser.nextToken(); item != JsonToken.END_ARRAY; item = parser.nextToken()) {
            Object value = values.required(slot, item);
            if (value != null) {
                items.add(value);
            }
        }
        bag.put(slot, List.copyOf(items));
    }

    private boolean wants(JsonToken token, JsonToken wanted, Slot slot, String words) {
        if (token == wanted) {
            return true;
        }
        places.tell("`" + slot.name() + "` must be " + words, "");
        parser.skipChildren();
        return false;
    }
}
