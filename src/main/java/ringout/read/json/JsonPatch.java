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

/** Changes a word or a list of words in a JSON text where it stands; everything else stays as its owner wrote it. */
public final class JsonPatch {
    private static final JsonFactory FACTORY = new JsonFactory();

    private JsonPatch() {}

    /**
     * The text with another list of words under a field.
     *
     * @param text a JSON object
     * @param fields names from the outermost in; a number where a list is gone into, 0 for its first
     * @param words the new list
     * @return nothing where there is no such list yet
     */
    public static Optional<String> words(String text, List<String> fields, List<String> words) {
        String written = words.stream().map(JsonPatch::quoted).collect(Collectors.joining(", ", "[", "]"));
        return replaced(text, fields, JsonToken.START_ARRAY, written);
    }

    /**
     * The text with another word under a field.
     *
     * @param text a JSON object
     * @param fields names from the outermost in; a number where a list is gone into, 0 for its first
     * @param word the new word
     * @return nothing where there is no word yet
     */
    public static Optional<String> word(String text, List<String> fields, String word) {
        return replaced(text, fields, JsonToken.VALUE_STRING, quoted(word));
    }

    private static Optional<String> replaced(String text, List<String> fields, JsonToken kind, String written) {
        try (JsonParser json = FACTORY.createParser(ObjectReadContext.empty(), text)) {
            json.nextToken();
            for (String field : fields) {
                if (!(json.currentToken() == JsonToken.START_ARRAY ? counted(json, field) : found(json, field))) {
                    return Optional.empty();
                }
            }
            if (json.currentToken() != kind) {
                return Optional.empty();
            }
            int start = (int) json.currentTokenLocation().getCharOffset();
            json.skipChildren();
            json.finishToken();
            int stop = kind == JsonToken.START_ARRAY
                    ? (int) json.currentTokenLocation().getCharOffset() + 1
                    : (int) json.currentLocation().getCharOffset();
            return Optional.of(text.substring(0, start) + written + text.substring(stop));
        } catch (JacksonException unreadable) {
            return Optional.empty();
        }
    }

    /** Moves to an entry of the list the parser stands at. */
    private static boolean counted(JsonParser json, String number) {
        json.nextToken();
        for (int left = Integer.parseInt(number); left > 0 && json.currentToken() != JsonToken.END_ARRAY; left--) {
            json.skipChildren();
            json.nextToken();
        }
        return json.currentToken() != JsonToken.END_ARRAY;
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

    private static String quoted(String word) {
        return '"' + new String(JsonStringEncoder.getInstance().quoteAsCharArray(word)) + '"';
    }
}
