package ringout.read.json;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.core.io.JsonStringEncoder;
import tools.jackson.core.json.JsonFactory;

/** Changes a list of words in a JSON text where it stands; everything else stays as its owner wrote it. */
public final class JsonPatch {
    private static final JsonFactory FACTORY = new JsonFactory();

    private JsonPatch() {}

    /**
     * The text with another list of words under a field.
     *
     * @param text a JSON object
     * @param fields names from the outermost in
     * @param words the new list
     * @return nothing where there is no such list yet
     */
    public static Optional<String> words(String text, List<String> fields, List<String> words) {
        try (JsonParser json = FACTORY.createParser(ObjectReadContext.empty(), text)) {
            json.nextToken();
            for (String field : fields) {
                if (!found(json, field)) {
                    return Optional.empty();
                }
            }
            if (json.currentToken() != JsonToken.START_ARRAY) {
                return Optional.empty();
            }
            int start = (int) json.currentTokenLocation().getCharOffset();
            json.skipChildren();
            int stop = (int) json.currentTokenLocation().getCharOffset() + 1;
            return Optional.of(text.substring(0, start) + written(words) + text.substring(stop));
        } catch (JacksonException unreadable) {
            return Optional.empty();
        }
    }

    /** Moves to the value of a field of the object the parser stands at. */
    private static boolean found(JsonParser json, String field) {
        if (json.currentToken() != JsonToken.START_OBJECT) {
            return false;
        }
        while (json.nextToken() == JsonToken.PROPERTY_NAME) {
            boolean here = json.currentName().equals(field);
            json.nextToken();
            if (here) {
                return true;
            }
            json.skipChildren();
        }
        return false;
    }

    private static String written(List<String> words) {
        return words.stream()
                .map(word -> '"' + new String(JsonStringEncoder.getInstance().quoteAsCharArray(word)) + '"')
                .collect(Collectors.joining(", ", "[", "]"));
    }
}
