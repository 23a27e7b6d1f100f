package ringout.synthetic;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.ObjectWriteContext;
import tools.jackson.core.json.JsonFactory;

/** Keeps each list of an aircraft as JSON and writes them all as one file. */
class JsonSink implements Sink {
    private static final JsonFactory FACTORY = new JsonFactory();
    private static final List<String> TOP =
            List.of("types", "units", "leads", "joints", "buses", "messages", "functions");

    private final Map<String, ListOfRows> lists = new LinkedHashMap<>();

    /** One list, written as it grows; each record on a line of its own. */
    private static final class ListOfRows {
        private final ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        private final JsonGenerator json = FACTORY.createGenerator(ObjectWriteContext.empty(), bytes);

        ListOfRows() {
            json.writeStartArray();
        }

        void add(Row row) {
            json.writeRaw('\n');
            row.write(json);
        }

        void word(String text) {
            json.writeString(text);
        }

        void end(OutputStream out) throws IOException {
            json.writeEndArray();
            json.close();
            bytes.writeTo(out);
        }
    }

    @Override
    public final void add(String list, Row row) {
        lists.computeIfAbsent(list, key -> new ListOfRows()).add(row);
    }

    @Override
    public final void word(String list, String text) {
        lists.computeIfAbsent(list, key -> new ListOfRows()).word(text);
    }

    @Override
    public void made(Made made) {
        // a file needs no memory of what its leads are for
    }

    /** Writes the file. */
    final void write(OutputStream out, String name) {
        try {
            text(out, "{\"name\": \"" + name + "\",\n");
            for (String list : TOP) {
                list(out, list);
                text(out, ",\n");
            }
            text(
                    out,
                    "\"airframe\": {\"kind\": \"ring of rotors\", \"conventionSource\": \"made with the aircraft\",\n");
            list(out, "rotors");
            text(out, ",\n");
            list(out, "plugOrder");
            text(out, "},\n\"project\": {\"ruleSet\": \"short-lead practice\", \"railColour\": \"RD\", ");
            text(out, "\"zeroColour\": \"BK\", \"canHighColour\": \"YE\", \"canLowColour\": \"GN\"}}\n");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void list(OutputStream out, String list) throws IOException {
        text(out, "\"" + list + "\": ");
        lists.computeIfAbsent(list, key -> new ListOfRows()).end(out);
    }

    private static void text(OutputStream out, String text) throws IOException {
        out.write(text.getBytes(StandardCharsets.UTF_8));
    }
}
