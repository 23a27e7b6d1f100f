package ringout.present.sarif;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import ringout.present.lines.LineChange;
import ringout.present.lines.RepairChange;
import tools.jackson.core.JsonGenerator;

/** Repairs as fixes: whole lines of the user's files replaced. */
final class SarifFixes {
    private SarifFixes() {}

    static void of(JsonGenerator json, List<RepairChange> repairs) {
        json.writeArrayPropertyStart("fixes");
        for (RepairChange change : repairs) {
            json.writeStartObject();
            json.writeObjectPropertyStart("description");
            json.writeStringProperty(
                    "text",
                    String.join("; ", change.repair().words()) + " ("
                            + change.repair().sureness().words() + ")");
            json.writeEndObject();
            json.writeArrayPropertyStart("artifactChanges");
            byFile(change.lines()).forEach((file, lines) -> file(json, file, lines));
            json.writeEndArray();
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private static Map<String, List<LineChange>> byFile(List<LineChange> lines) {
        Map<String, List<LineChange>> files = new LinkedHashMap<>();
        for (LineChange line : lines) {
            files.computeIfAbsent(line.file(), file -> new java.util.ArrayList<>())
                    .add(line);
        }
        return files;
    }

    private static void file(JsonGenerator json, String file, List<LineChange> lines) {
        json.writeStartObject();
        json.writeObjectPropertyStart("artifactLocation");
        json.writeStringProperty("uri", SarifPlaces.uri(file));
        json.writeEndObject();
        json.writeArrayPropertyStart("replacements");
        lines.forEach(line -> replacement(json, line));
        json.writeEndArray();
        json.writeEndObject();
    }

    /** From the start of the first line to the start of the one after the last, as the standard counts. */
    private static void replacement(JsonGenerator json, LineChange change) {
        json.writeStartObject();
        json.writeObjectPropertyStart("deletedRegion");
        json.writeNumberProperty("startLine", change.line());
        json.writeNumberProperty("startColumn", 1);
        json.writeNumberProperty("endLine", change.line() + change.out().size());
        json.writeNumberProperty("endColumn", 1);
        json.writeEndObject();
        if (!change.in().isEmpty()) {
            json.writeObjectPropertyStart("insertedContent");
            json.writeStringProperty("text", String.join("\n", change.in()) + "\n");
            json.writeEndObject();
        }
        json.writeEndObject();
    }
}
