package ringout.present.json;

import java.io.StringWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ringout.draw.scene.Earlier;
import ringout.draw.scene.Spot;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.core.ObjectWriteContext;
import tools.jackson.core.json.JsonFactory;

/** The places on wiring sheets as JSON, to be kept beside them and held by a later drawing. */
public final class LayoutJson {
    private static final JsonFactory FACTORY = new JsonFactory();

    private LayoutJson() {}

    /** {@return the places as one line a sheet, ending in \n} */
    public static String of(Earlier layout) {
        StringBuilder text = new StringBuilder("{\"sheets\":[");
        for (int i = 0; i < layout.sheets().size(); i++) {
            text.append(i == 0 ? "\n" : ",\n").append(sheet(layout.sheets().get(i)));
        }
        return text.append("\n]}\n").toString();
    }

    private static String sheet(Earlier.Sheet sheet) {
        StringWriter text = new StringWriter();
        try (JsonGenerator json = FACTORY.createGenerator(ObjectWriteContext.empty(), text)) {
            json.writeStartObject();
            json.writeStringProperty("name", sheet.name());
            words(json, "wires", sheet.wires());
            json.writeArrayPropertyStart("spots");
            for (Spot spot : sheet.spots()) {
                json.writeStartObject();
                json.writeStringProperty("id", spot.id());
                json.writeNumberProperty("column", spot.column());
                json.writeNumberProperty("rank", spot.rank());
                words(json, "left", spot.left());
                words(json, "right", spot.right());
                json.writeEndObject();
            }
            json.writeEndArray();
            json.writeEndObject();
        }
        return text.toString();
    }

    private static void words(JsonGenerator json, String name, List<String> words) {
        json.writeArrayPropertyStart(name);
        words.forEach(json::writeString);
        json.writeEndArray();
    }

    /** {@return the places that such a text holds; nothing when it is no such text} */
    public static Optional<Earlier> read(String text) {
        try (JsonParser json = FACTORY.createParser(ObjectReadContext.empty(), text)) {
            List<Earlier.Sheet> sheets = new ArrayList<>();
            boolean found = false;
            while (json.nextToken() != null) {
                if (json.currentToken() == JsonToken.PROPERTY_NAME
                        && json.currentName().equals("sheets")) {
                    found = true;
                    json.nextToken();
                    while (json.nextToken() == JsonToken.START_OBJECT) {
                        sheets.add(readSheet(json));
                    }
                }
            }
            return found ? Optional.of(new Earlier(sheets)) : Optional.empty();
        } catch (JacksonException e) {
            return Optional.empty();
        }
    }

    private static Earlier.Sheet readSheet(JsonParser json) {
        String name = "";
        List<String> wires = List.of();
        List<Spot> spots = new ArrayList<>();
        while (json.nextToken() == JsonToken.PROPERTY_NAME) {
            String field = json.currentName();
            json.nextToken();
            switch (field) {
                case "name" -> name = json.getString();
                case "wires" -> wires = readWords(json);
                case "spots" -> {
                    while (json.nextToken() == JsonToken.START_OBJECT) {
                        spots.add(readSpot(json));
                    }
                }
                default -> json.skipChildren();
            }
        }
        return new Earlier.Sheet(name, wires, spots);
    }

    private static Spot readSpot(JsonParser json) {
        String id = "";
        int column = 0;
        int rank = 0;
        List<String> left = List.of();
        List<String> right = List.of();
        while (json.nextToken() == JsonToken.PROPERTY_NAME) {
            String field = json.currentName();
            json.nextToken();
            switch (field) {
                case "id" -> id = json.getString();
                case "column" -> column = json.getIntValue();
                case "rank" -> rank = json.getIntValue();
                case "left" -> left = readWords(json);
                case "right" -> right = readWords(json);
                default -> json.skipChildren();
            }
        }
        return new Spot(id, Math.max(0, column), rank, left, right);
    }

    private static List<String> readWords(JsonParser json) {
        List<String> words = new ArrayList<>();
        while (json.nextToken() == JsonToken.VALUE_STRING) {
            words.add(json.getString());
        }
        return words;
    }
}
