package ringout.present.json;

import java.io.StringWriter;
import java.util.List;
import java.util.OptionalDouble;
import ringout.finding.CannotTell;
import ringout.finding.Evidence;
import ringout.finding.Finding;
import ringout.finding.Headline;
import ringout.finding.LapsedWaiver;
import ringout.finding.NextDatum;
import ringout.finding.Place;
import ringout.finding.Report;
import ringout.model.Aircraft;
import ringout.model.Datum;
import ringout.present.lines.RepairChange;
import ringout.repair.Repair;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.json.JsonFactory;

/** A report as JSON, by schemas/findings.schema.json: the contract other programs rely on. */
public final class FindingsJson {
    private static final JsonFactory FACTORY = new JsonFactory();

    private final JsonGenerator json;
    private final List<RepairChange> repairs;

    private FindingsJson(JsonGenerator json, List<RepairChange> repairs) {
        this.json = json;
        this.repairs = repairs;
    }

    /** The whole report, ending in \n. */
    public static String of(Aircraft aircraft, Report report, String version) {
        return of(aircraft, report, List.of(), version);
    }

    /** The whole report with the repairs that were looked for, ending in \n. */
    public static String of(Aircraft aircraft, Report report, List<RepairChange> repairs, String version) {
        StringWriter text = new StringWriter();
        try (JsonGenerator json = FACTORY.createGenerator(new Layout(), text)) {
            new FindingsJson(json, repairs).report(aircraft, report, version);
        }
        return text.append('\n').toString();
    }

    private void report(Aircraft aircraft, Report report, String version) {
        json.writeStartObject();
        json.writeObjectPropertyStart("tool");
        json.writeStringProperty("name", "ringout");
        json.writeStringProperty("version", version);
        json.writeEndObject();
        aircraft(aircraft);
        words("states", report.states());
        summary(report);
        headlines("findings", report.headlines());
        headlines("waived", report.waived());
        lapsed(report.lapsed());
        json.writeArrayPropertyStart("cannotTell");
        report.cannotTell().forEach(this::cannotTell);
        json.writeEndArray();
        json.writeArrayPropertyStart("next");
        report.next().forEach(this::next);
        json.writeEndArray();
        json.writeEndObject();
    }

    private void lapsed(List<LapsedWaiver> waivers) {
        json.writeArrayPropertyStart("lapsedWaivers");
        for (LapsedWaiver waiver : waivers) {
            json.writeStartObject();
            json.writeStringProperty("finding", waiver.finding());
            json.writeStringProperty("why", waiver.why());
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private void aircraft(Aircraft aircraft) {
        json.writeObjectPropertyStart("aircraft");
        json.writeStringProperty("name", aircraft.name());
        datum("designation", aircraft.designation());
        datum("tail", aircraft.tail());
        datum("typeRevision", aircraft.typeRevision());
        datum("tailRevision", aircraft.tailRevision());
        json.writeEndObject();
    }

    private void datum(String name, Datum<String> datum) {
        datum.known().ifPresent(value -> json.writeStringProperty(name, value));
    }

    private void summary(Report report) {
        json.writeObjectPropertyStart("summary");
        json.writeNumberProperty("passed", report.passed());
        json.writeNumberProperty("findings", report.headlines().size());
        json.writeNumberProperty("cannotTell", report.cannotTell().size());
        json.writeNumberProperty("waived", report.waived().size());
        json.writeNumberProperty("notApplicable", report.notApplicable());
        json.writeEndObject();
    }

    private void headlines(String name, List<Headline> headlines) {
        json.writeArrayPropertyStart(name);
        for (Headline headline : headlines) {
            json.writeStartObject();
            finding(headline.finding());
            json.writeStringProperty("fingerprint", headline.fingerprint());
            json.writeArrayPropertyStart("alsoExplains");
            headline.alsoExplains().forEach(this::folded);
            json.writeEndArray();
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private void folded(Finding finding) {
        json.writeStartObject();
        finding(finding);
        json.writeEndObject();
    }

    private void finding(Finding finding) {
        json.writeStringProperty("id", finding.id());
        json.writeStringProperty("code", finding.code());
        json.writeStringProperty("name", finding.name());
        json.writeStringProperty("severity", finding.severity().name());
        json.writeStringProperty("title", finding.title());
        words("states", finding.states());
        words("objects", finding.objects());
        json.writeArrayPropertyStart("at");
        finding.at().forEach(this::place);
        json.writeEndArray();
        evidence(finding.evidence());
        json.writeStringProperty("why", finding.why());
        json.writeStringProperty("meter", finding.meter());
        json.writeObjectPropertyStart("fix");
        json.writeStringProperty("words", finding.fix());
        repairs.stream()
                .map(RepairChange::repair)
                .filter(repair -> repair.finding().equals(finding.id()))
                .forEach(this::repair);
        json.writeEndObject();
    }

    private void repair(Repair repair) {
        words("edits", repair.edits().stream().map(EditText::of).toList());
        words("changes", repair.words());
        json.writeStringProperty("sureness", repair.sureness().words());
        json.writeNumberProperty("others", repair.others());
        json.writeStringProperty("decide", repair.decide());
    }

    private void place(Place place) {
        json.writeStartObject();
        json.writeStringProperty("file", place.span().file());
        json.writeNumberProperty("line", place.span().line());
        json.writeNumberProperty("column", place.span().column());
        json.writeStringProperty("row", place.row());
        json.writeStringProperty("words", place.words());
        json.writeEndObject();
    }

    private void evidence(Evidence evidence) {
        json.writeObjectPropertyStart("evidence");
        words("path", evidence.path().names());
        json.writeStringProperty("sum", evidence.sum());
        number("value", evidence.value());
        number("limit", evidence.limit());
        json.writeStringProperty("unit", evidence.unit());
        json.writeStringProperty("source", evidence.source());
        json.writeStringProperty("origin", evidence.origin().word());
        json.writeBooleanProperty("dependsOnAssumption", evidence.onAssumption());
        json.writeEndObject();
    }

    private void number(String name, OptionalDouble value) {
        if (value.isPresent() && Double.isFinite(value.getAsDouble())) {
            json.writeNumberProperty(name, value.getAsDouble());
        }
    }

    private void cannotTell(CannotTell open) {
        json.writeStartObject();
        json.writeStringProperty("code", open.code());
        json.writeStringProperty("name", open.name());
        words("states", open.states());
        words("objects", open.objects());
        json.writeStringProperty("missing", open.missing());
        json.writeStringProperty("how", open.how());
        json.writeNumberProperty("minutes", open.minutes());
        json.writeEndObject();
    }

    private void next(NextDatum datum) {
        json.writeStartObject();
        json.writeStringProperty("missing", datum.missing());
        json.writeStringProperty("how", datum.how());
        json.writeNumberProperty("minutes", datum.minutes());
        json.writeNumberProperty("verdicts", datum.verdicts());
        words("codes", datum.codes());
        json.writeNumberProperty("weight", datum.weight());
        json.writeEndObject();
    }

    private void words(String name, List<String> words) {
        json.writeArrayPropertyStart(name);
        words.forEach(json::writeString);
        json.writeEndArray();
    }
}
