package ringout.present.sarif;

import java.net.URI;
import java.net.URISyntaxException;
import java.util.List;
import ringout.finding.Finding;
import ringout.finding.Place;
import ringout.text.Span;
import tools.jackson.core.JsonGenerator;

/** Where a finding stands: rows of the user's files, and the objects by the user's names. */
final class SarifPlaces {
    private SarifPlaces() {}

    /** The first row is the place of the result; the other rows at fault are related. */
    static void locations(JsonGenerator json, Finding finding) {
        List<Place> places =
                finding.at().stream().filter(place -> place.span().known()).toList();
        if (places.isEmpty()) {
            objects(json, finding.objects());
            return;
        }
        json.writeArrayPropertyStart("locations");
        json.writeStartObject();
        physical(json, places.get(0));
        logical(json, finding.objects());
        json.writeEndObject();
        json.writeEndArray();
        if (places.size() > 1) {
            json.writeArrayPropertyStart("relatedLocations");
            for (int i = 1; i < places.size(); i++) {
                json.writeStartObject();
                json.writeNumberProperty("id", i);
                physical(json, places.get(i));
                json.writeEndObject();
            }
            json.writeEndArray();
        }
    }

    /** A place without a file: the objects alone. */
    static void objects(JsonGenerator json, List<String> objects) {
        json.writeArrayPropertyStart("locations");
        json.writeStartObject();
        logical(json, objects);
        json.writeEndObject();
        json.writeEndArray();
    }

    private static void logical(JsonGenerator json, List<String> objects) {
        json.writeArrayPropertyStart("logicalLocations");
        for (String name : objects) {
            json.writeStartObject();
            json.writeStringProperty("name", name);
            json.writeStringProperty("kind", "element");
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private static void physical(JsonGenerator json, Place place) {
        Span span = place.span();
        json.writeObjectPropertyStart("physicalLocation");
        json.writeObjectPropertyStart("artifactLocation");
        json.writeStringProperty("uri", uri(span.workbook()));
        json.writeEndObject();
        json.writeObjectPropertyStart("region");
        json.writeNumberProperty("startLine", span.line());
        if (span.column() > 0 && span.cell().isEmpty()) {
            json.writeNumberProperty("startColumn", span.column());
        }
        json.writeEndObject();
        json.writeEndObject();
        json.writeObjectPropertyStart("message");
        json.writeStringProperty("text", place.words());
        json.writeEndObject();
    }

    /** A file name as a relative reference, letters that have a meaning in one escaped. */
    static String uri(String file) {
        String slashed = file.replace('\\', '/');
        try {
            String safe = new URI(null, null, "/" + slashed, null).toASCIIString();
            return safe.substring(1);
        } catch (URISyntaxException e) {
            throw new IllegalArgumentException("not a file name: " + file, e);
        }
    }
}
