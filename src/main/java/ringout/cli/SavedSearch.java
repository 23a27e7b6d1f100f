package ringout.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import ringout.trace.predict.TestCard;
import ringout.trace.session.Progress;
import ringout.trace.session.Scene;
import ringout.trace.session.TestReading;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.core.json.JsonFactory;

/**
 * A search read from the file it was saved in. Every name in it is held against the aircraft: a file of another one is refused.
 *
 * @param state state of the aircraft
 * @param content what the file holds, objects as maps
 */
record SavedSearch(String state, Map<?, ?> content) {
    private static final JsonFactory FACTORY = new JsonFactory();

    /** Reads a file as it was written by {@code save} or by {@code --format json}. */
    static SavedSearch read(Path file) throws FaultNames.Unknown {
        try (JsonParser parser = FACTORY.createParser(ObjectReadContext.empty(), Files.readAllBytes(file))) {
            parser.nextToken();
            if (value(parser) instanceof Map<?, ?> all && all.get("state") instanceof String state) {
                return new SavedSearch(state, all);
            }
        } catch (IOException | JacksonException failed) {
            throw new FaultNames.Unknown("cannot take up " + file + ": " + failed.getMessage());
        }
        throw new FaultNames.Unknown("cannot take up " + file + ": it is no search for a fault");
    }

    private static Object value(JsonParser parser) {
        if (parser.currentToken() == JsonToken.START_OBJECT) {
            Map<String, Object> object = new LinkedHashMap<>();
            while (parser.nextToken() == JsonToken.PROPERTY_NAME) {
                String name = parser.currentName();
                parser.nextToken();
                object.put(name, value(parser));
            }
            return object;
        }
        if (parser.currentToken() == JsonToken.START_ARRAY) {
            List<Object> array = new ArrayList<>();
            while (parser.nextToken() != JsonToken.END_ARRAY) {
                array.add(value(parser));
            }
            return array;
        }
        boolean yes = parser.currentToken() == JsonToken.VALUE_TRUE;
        boolean no = parser.currentToken() == JsonToken.VALUE_FALSE;
        return yes || no ? (Object) yes : String.valueOf(parser.getString());
    }

    /** What was seen. */
    Scene scene(FaultNames names) throws FaultNames.Unknown {
        Map<?, ?> seen = content.get("scene") instanceof Map<?, ?> map ? map : Map.of();
        Scene scene = Scene.silent(names.modules(words(seen, "silent")))
                .withAlive(names.units(words(seen, "alive")))
                .withLit(names.units(words(seen, "lit")))
                .withDark(names.units(words(seen, "dark")))
                .changed(
                        names.objects(words(seen, "touched")),
                        Boolean.TRUE.equals(seen.get("crash")),
                        Boolean.TRUE.equals(seen.get("update")));
        Object others = seen.get("others");
        return "respond".equals(others)
                ? scene.withOthersAlive()
                : scene.withOthers("unknown".equals(others) ? Scene.Others.UNKNOWN : Scene.Others.ASSUMED);
    }

    /** What was done. */
    Progress progress(FaultNames names) throws FaultNames.Unknown {
        List<TestReading> readings = new ArrayList<>();
        if (content.get("readings") instanceof List<?> list) {
            for (Object one : list) {
                Map<?, ?> map = one instanceof Map<?, ?> found ? found : Map.of();
                TestCard card = names.test(String.valueOf(map.get("test")));
                TestReading read = names.reading(card, String.valueOf(map.get("outcome")));
                readings.add(new TestReading(read.test(), read.outcome(), String.valueOf(map.get("value"))));
            }
        }
        return new Progress(
                readings,
                new TreeSet<>(words(content, "opened")),
                new TreeSet<>(words(content, "skipped")),
                new TreeSet<>(words(content, "inVain")));
    }

    private static List<String> words(Map<?, ?> object, String name) {
        return object.get(name) instanceof List<?> list
                ? list.stream().map(String::valueOf).toList()
                : List.of();
    }
}
