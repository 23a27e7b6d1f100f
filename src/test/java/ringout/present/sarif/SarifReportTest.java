package ringout.present.sarif;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import ringout.check.Catalogue;
import ringout.check.Review;
import ringout.finding.Finding;
import ringout.finding.Report;
import ringout.finding.Severity;
import ringout.read.AircraftReader;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The log against the schema published with the standard (OASIS, SARIF 2.1.0), and against the report it tells. */
class SarifReportTest {
    private static final JsonMapper JSON = new JsonMapper();

    /** The standard knows three levels; what keeps an aircraft on the ground is an error. */
    private static final Map<Severity, String> LEVELS = Map.of(
            Severity.S1,
            "error",
            Severity.S2,
            "error",
            Severity.S3,
            "warning",
            Severity.S4,
            "note",
            Severity.S5,
            "note");

    @ParameterizedTest
    @ValueSource(strings = {"linewarden", "linewarden-review", "dewmaker", "starter"})
    void everySampleIsValidByThePublishedSchema(String sample) throws IOException {
        assertEquals(
                "[]",
                schema().validate(SarifReport.of(report(sample), List.of(), "1"), InputFormat.JSON)
                        .toString());
    }

    @Test
    void theSchemaIsRead() throws IOException {
        String log = SarifReport.of(report("starter"), List.of(), "1").replace("\"2.1.0\"", "\"2.2.0\"");
        assertTrue(schema().validate(log, InputFormat.JSON).size() > 0);
    }

    @Test
    void headlinesAreErrorsAtTheirRowsAndOpenQuestionsAreOpen() {
        Report report = report("linewarden-review");
        JsonNode results = results(report);
        assertEquals(report.headlines().size() + report.cannotTell().size(), results.size());
        List<String> told = new ArrayList<>();
        results.forEach(result -> told.add(result.path("ruleId").asString() + " "
                + result.path("level").asString() + " "
                + result.at("/locations/0/physicalLocation/artifactLocation/uri")
                        .asString() + ":"
                + result.at("/locations/0/physicalLocation/region/startLine").asInt()));
        List<String> expected = report.headlines().stream()
                .map(headline -> headline.finding().code() + " "
                        + LEVELS.get(headline.finding().severity()) + " "
                        + place(headline.finding()))
                .toList();
        assertEquals(expected, told.subList(0, expected.size()));
        assertEquals(
                report.cannotTell().stream()
                        .map(open -> open.code() + " none :0")
                        .toList(),
                told.subList(expected.size(), told.size()));
    }

    /** A table of the whole aircraft stands in no row. */
    private static String place(Finding finding) {
        return finding.at().isEmpty()
                ? ":0"
                : finding.at().get(0).span().file() + ":"
                        + finding.at().get(0).span().line();
    }

    @Test
    void cannotTellIsOpenAndNeverAPass() {
        Report report = report("starter");
        List<String> kinds = new ArrayList<>();
        results(report)
                .forEach(result -> kinds.add(result.path("kind").asString() + " "
                        + result.path("level").asString()));
        assertEquals(
                report.cannotTell().size(),
                kinds.stream().filter("open none"::equals).count());
        assertTrue(report.cannotTell().size() > 0);
    }

    @Test
    void ruleIndexLeadsToTheRuleAndItsPage() {
        JsonNode run = log(report("linewarden-review")).at("/runs/0");
        JsonNode rules = run.at("/tool/driver/rules");
        assertEquals(Catalogue.all().size(), rules.size());
        for (JsonNode result : run.path("results")) {
            JsonNode rule = rules.get(result.path("ruleIndex").asInt());
            assertEquals(result.path("ruleId").asString(), rule.path("id").asString());
            assertTrue(
                    rule.at("/help/text").asString().startsWith(rule.path("id").asString() + " "));
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"my list.csv", "a#b?.csv", "50 %.csv", "ütf.csv", "c:d.csv"})
    void anyFileNameIsAReference(String name) {
        String uri = SarifPlaces.uri(name);
        assertTrue(uri.matches("[A-Za-z0-9%._:/-]+"), uri);
        assertEquals(name, java.net.URI.create("file:///" + uri).getPath().substring(1));
    }

    private static Report report(String sample) {
        return Review.of(AircraftReader.read(Path.of("samples", sample)).aircraft());
    }

    private static JsonNode results(Report report) {
        return log(report).at("/runs/0/results");
    }

    private static JsonNode log(Report report) {
        return JSON.readTree(SarifReport.of(report, List.of(), "1"));
    }

    private static Schema schema() throws IOException {
        try (InputStream text = SarifReportTest.class.getResourceAsStream("/schema/sarif-schema-2.1.0.json")) {
            return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_7)
                    .getSchema(new String(text.readAllBytes(), StandardCharsets.UTF_8));
        }
    }
}
