package ringout.present.sarif;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import ringout.check.Catalogue;
import ringout.check.Pages;
import ringout.check.form.Check;
import ringout.check.form.CheckInfo;
import tools.jackson.core.JsonGenerator;

/** The catalogue as the rules of a log, each with its page as help. */
final class SarifRules {
    private final JsonGenerator json;

    SarifRules(JsonGenerator json) {
        this.json = json;
    }

    void driver(String version) {
        json.writeObjectPropertyStart("driver");
        json.writeStringProperty("name", "ringout");
        json.writeStringProperty("version", version);
        json.writeArrayPropertyStart("rules");
        Catalogue.all().forEach(this::rule);
        json.writeEndArray();
        json.writeEndObject();
    }

    private void rule(Check check) {
        CheckInfo info = check.getClass().getAnnotation(CheckInfo.class);
        String page = Pages.of(info.code());
        List<String> paragraphs = List.of(page.split("\n\n"));
        json.writeStartObject();
        json.writeStringProperty("id", info.code());
        json.writeStringProperty("name", pascal(info.name()));
        text("shortDescription", info.name().replace('-', ' '));
        text("fullDescription", paragraphs.get(1).replace('\n', ' ').strip());
        text("help", page.strip());
        json.writeObjectPropertyStart("defaultConfiguration");
        json.writeStringProperty("level", SarifReport.level(info.severity()));
        json.writeEndObject();
        json.writeEndObject();
    }

    /** The name as the standard likes it: words joined, each with a capital. */
    private static String pascal(String name) {
        return Arrays.stream(name.split("-"))
                .filter(word -> !word.isEmpty())
                .map(word -> Character.toUpperCase(word.charAt(0)) + word.substring(1))
                .collect(Collectors.joining());
    }

    private void text(String name, String words) {
        json.writeObjectPropertyStart(name);
        json.writeStringProperty("text", words);
        json.writeEndObject();
    }
}
