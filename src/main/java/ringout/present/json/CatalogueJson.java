package ringout.present.json;

import java.io.StringWriter;
import ringout.check.Catalogue;
import ringout.check.form.Check;
import ringout.check.form.CheckInfo;
import ringout.check.form.Threshold;
import ringout.check.form.Thresholds;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.json.JsonFactory;

/** The catalogue of checks and their limits as JSON. */
public final class CatalogueJson {
    private static final JsonFactory FACTORY = new JsonFactory();

    private CatalogueJson() {}

    /** All checks in order, then all limits with unit and source. */
    public static String of() {
        StringWriter text = new StringWriter();
        try (JsonGenerator json = FACTORY.createGenerator(new Layout(), text)) {
            json.writeStartObject();
            json.writeArrayPropertyStart("checks");
            Catalogue.all().forEach(check -> check(json, check));
            json.writeEndArray();
            json.writeArrayPropertyStart("limits");
            Thresholds.all().forEach(limit -> limit(json, limit));
            json.writeEndArray();
            json.writeEndObject();
        }
        return text.append('\n').toString();
    }

    private static void check(JsonGenerator json, Check check) {
        CheckInfo info = check.getClass().getAnnotation(CheckInfo.class);
        json.writeStartObject();
        json.writeStringProperty("code", info.code());
        json.writeStringProperty("name", info.name());
        json.writeStringProperty("severity", info.severity().name());
        json.writeStringProperty("since", info.since());
        json.writeArrayPropertyStart("needs");
        for (String need : info.needs()) {
            json.writeString(need);
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    private static void limit(JsonGenerator json, Threshold limit) {
        json.writeStartObject();
        json.writeStringProperty("name", limit.name());
        json.writeNumberProperty("value", limit.value());
        json.writeStringProperty("unit", limit.unit());
        json.writeStringProperty("source", limit.source());
        json.writeEndObject();
    }
}
