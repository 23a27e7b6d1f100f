package ringout.read.json;

import java.util.Optional;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.core.json.JsonFactory;

/**
 * What a frozen revision says of itself in its field {@code $frozen}.
 *
 * @param list hash of the list and the plan, as written when it was frozen
 * @param all hash of everything, as written when it was frozen
 */
public record FrozenMark(String list, String all) {
    private static final JsonFactory FACTORY = new JsonFactory();

    /** The mark of a file; nothing when it is not frozen. */
    public static Optional<FrozenMark> of(byte[] bytes) {
        try (JsonParser json = FACTORY.createParser(ObjectReadContext.empty(), bytes)) {
            if (json.nextToken() != JsonToken.START_OBJECT) {
                return Optional.empty();
            }
            while (json.nextToken() == JsonToken.PROPERTY_NAME) {
                boolean frozen = json.currentName().equals("$frozen");
                json.nextToken();
                if (frozen) {
                    return Optional.of(mark(json));
                }
                json.skipChildren();
            }
            return Optional.empty();
        } catch (JacksonException unreadable) {
            return Optional.empty();
        }
    }

    private static FrozenMark mark(JsonParser json) {
        String list = "";
        String all = "";
        boolean open = json.currentToken() == JsonToken.START_OBJECT;
        while (open && json.nextToken() == JsonToken.PROPERTY_NAME) {
            String name = json.currentName();
            boolean text = json.nextToken() == JsonToken.VALUE_STRING;
            if (text && name.equals("list")) {
                list = json.getString();
            } else if (text && name.equals("all")) {
                all = json.getString();
            }
            json.skipChildren();
        }
        return new FrozenMark(list, all);
    }
}
