package ringout.present.sarif;

import java.io.StringWriter;
import java.util.List;
import java.util.function.Consumer;
import ringout.check.Catalogue;
import ringout.check.form.CheckInfo;
import ringout.finding.CannotTell;
import ringout.finding.Finding;
import ringout.finding.Headline;
import ringout.finding.Report;
import ringout.finding.Severity;
import ringout.present.json.Layout;
import ringout.present.lines.RepairChange;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.json.JsonFactory;

/**
 * A report as a SARIF 2.1.0 log. A headline is a result of kind {@code fail}; what it explains stands in its properties; a
 * waived one is suppressed; what could not be told is a result of kind {@code open}, which is never a pass.
 */
public final class SarifReport {
    private static final JsonFactory FACTORY = new JsonFactory();
    /** Where the standard keeps its schema; written, never fetched. */
    static final String SCHEMA =
            "https://docs.oasis-open.org/sarif/sarif/v2.1.0/errata01/os/schemas/sarif-schema-2.1.0.json";

    private final JsonGenerator json;
    private final List<String> codes = Catalogue.all().stream()
            .map(check -> check.getClass().getAnnotation(CheckInfo.class).code())
            .toList();

    private final List<RepairChange> repairs;

    private SarifReport(JsonGenerator json, List<RepairChange> repairs) {
        this.json = json;
        this.repairs = repairs;
    }

    /** The whole log, ending in \n; repairs that were looked for stand with their results as fixes. */
    public static String of(Report report, List<RepairChange> repairs, String version) {
        StringWriter text = new StringWriter();
        try (JsonGenerator json = FACTORY.createGenerator(new Layout(), text)) {
            new SarifReport(json, repairs).log(report, version);
        }
        return text.append('\n').toString();
    }

    private void log(Report report, String version) {
        json.writeStartObject();
        json.writeStringProperty("$schema", SCHEMA);
        json.writeStringProperty("version", "2.1.0");
        json.writeArrayPropertyStart("runs");
        json.writeStartObject();
        json.writeObjectPropertyStart("tool");
        new SarifRules(json).driver(version);
        json.writeEndObject();
        json.writeStringProperty("columnKind", "utf16CodeUnits");
        array("results", report);
        json.writeEndObject();
        json.writeEndArray();
        json.writeEndObject();
    }

    private void array(String name, Report report) {
        json.writeArrayPropertyStart(name);
        report.headlines().forEach(headline -> result(headline, false));
        report.waived().forEach(headline -> result(headline, true));
        report.cannotTell().forEach(this::open);
        json.writeEndArray();
    }

    private void result(Headline headline, boolean waived) {
        Finding finding = headline.finding();
        json.writeStartObject();
        rule(finding.code());
        json.writeStringProperty("kind", "fail");
        json.writeStringProperty("level", level(finding.severity()));
        message(finding.severity() + " " + finding.title());
        SarifPlaces.locations(json, finding);
        json.writeObjectPropertyStart("partialFingerprints");
        json.writeStringProperty("finding/v1", finding.id());
        json.writeStringProperty("rows/v1", headline.fingerprint());
        json.writeEndObject();
        if (waived) {
            suppressed();
        }
        List<RepairChange> fixes = repairs.stream()
                .filter(change -> change.repair().finding().equals(finding.id()))
                .filter(change -> !change.lines().isEmpty())
                .toList();
        if (!fixes.isEmpty()) {
            SarifFixes.of(json, fixes);
        }
        json.writeObjectPropertyStart("properties");
        properties(headline);
        json.writeEndObject();
        json.writeEndObject();
    }

    private void properties(Headline headline) {
        Finding finding = headline.finding();
        json.writeStringProperty("severity", finding.severity().name());
        words("states", finding.states(), json::writeString);
        words("path", finding.evidence().path().names(), json::writeString);
        json.writeStringProperty("sum", finding.evidence().sum());
        json.writeStringProperty("source", finding.evidence().source());
        json.writeStringProperty("why", finding.why());
        json.writeStringProperty("meter", finding.meter());
        json.writeStringProperty("fix", finding.fix());
        words(
                "alsoExplains",
                headline.alsoExplains(),
                also -> json.writeString(also.severity() + " " + also.code() + " " + also.title()));
    }

    private <T> void words(String name, List<T> items, Consumer<T> write) {
        json.writeArrayPropertyStart(name);
        items.forEach(write);
        json.writeEndArray();
    }

    private void open(CannotTell open) {
        json.writeStartObject();
        rule(open.code());
        json.writeStringProperty("kind", "open");
        json.writeStringProperty("level", "none");
        message("cannot tell: " + open.missing() + "; " + open.how());
        SarifPlaces.objects(json, open.objects());
        json.writeObjectPropertyStart("properties");
        words("states", open.states(), json::writeString);
        json.writeNumberProperty("minutes", open.minutes());
        json.writeEndObject();
        json.writeEndObject();
    }

    private void rule(String code) {
        json.writeStringProperty("ruleId", code);
        json.writeNumberProperty("ruleIndex", codes.indexOf(code));
    }

    private void message(String words) {
        json.writeObjectPropertyStart("message");
        json.writeStringProperty("text", words);
        json.writeEndObject();
    }

    private void suppressed() {
        json.writeArrayPropertyStart("suppressions");
        json.writeStartObject();
        json.writeStringProperty("kind", "external");
        json.writeStringProperty("status", "accepted");
        json.writeEndObject();
        json.writeEndArray();
    }

    /** S1 and S2 keep an aircraft on the ground: errors. */
    static String level(Severity severity) {
        return switch (severity) {
            case S1, S2 -> "error";
            case S3 -> "warning";
            case S4, S5 -> "note";
        };
    }
}
