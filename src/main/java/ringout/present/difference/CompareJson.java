package ringout.present.difference;

import java.io.StringWriter;
import java.util.List;
import java.util.OptionalDouble;
import ringout.compare.difference.Difference;
import ringout.compare.fleet.Fleet;
import ringout.compare.fleet.FleetRow;
import ringout.compare.fleet.Tail;
import ringout.compare.fleet.Trend;
import ringout.compare.judge.Judged;
import ringout.compare.judge.Retest;
import ringout.finding.Finding;
import ringout.finding.Place;
import ringout.present.json.Layout;
import ringout.present.words.ReadingWords;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.json.JsonFactory;

/** Differences and the table of the fleet as JSON. */
public final class CompareJson {
    private static final JsonFactory FACTORY = new JsonFactory();

    private final JsonGenerator json;

    private CompareJson(JsonGenerator json) {
        this.json = json;
    }

    /** {@return everything, ending in \n} */
    public static String of(Fleet fleet, String version) {
        StringWriter text = new StringWriter();
        try (JsonGenerator json = FACTORY.createGenerator(new Layout(), text)) {
            new CompareJson(json).fleet(fleet, version);
        }
        return text.append('\n').toString();
    }

    private void fleet(Fleet fleet, String version) {
        json.writeStartObject();
        json.writeObjectPropertyStart("tool");
        json.writeStringProperty("name", "ringout");
        json.writeStringProperty("version", version);
        json.writeEndObject();
        json.writeStringProperty("base", DifferenceWords.of(fleet.base()));
        json.writeStringProperty("baseFile", fleet.baseName());
        json.writeArrayPropertyStart("rows");
        fleet.rows().forEach(this::row);
        json.writeEndArray();
        json.writeArrayPropertyStart("tails");
        fleet.tails().forEach(this::tail);
        json.writeEndArray();
        json.writeEndObject();
    }

    private void row(FleetRow row) {
        json.writeStartObject();
        json.writeStringProperty("severity", row.severity().name());
        json.writeStringProperty("what", row.what());
        json.writeStringProperty("base", row.base());
        words("tails", row.cells());
        json.writeStringProperty("finding", row.finding().orElse(""));
        json.writeStringProperty("usual", row.fate().words());
        json.writeNumberProperty("undocumented", row.undocumented());
        json.writeEndObject();
    }

    private void tail(Tail tail) {
        json.writeStartObject();
        json.writeStringProperty("name", DifferenceWords.of(tail.aircraft()));
        json.writeStringProperty("file", tail.name());
        json.writeArrayPropertyStart("differences");
        tail.judgement().all().forEach(this::difference);
        json.writeEndArray();
        json.writeArrayPropertyStart("trends");
        tail.trends().forEach(this::trend);
        json.writeEndArray();
        findings("otherFindings", tail.judgement().otherwise());
        words(
                "noLongerTold",
                tail.judgement().blind().stream()
                        .map(open -> open.code() + " " + open.missing())
                        .toList());
        nets(tail);
        json.writeEndObject();
    }

    private void nets(Tail tail) {
        json.writeObjectPropertyStart("nets");
        json.writeArrayPropertyStart("opened");
        tail.judgement().differences().nets().opened().forEach(this::array);
        json.writeEndArray();
        json.writeArrayPropertyStart("joined");
        tail.judgement().differences().nets().joined().forEach(this::array);
        json.writeEndArray();
        json.writeEndObject();
    }

    private void difference(Judged judged) {
        Difference difference = judged.difference();
        json.writeStartObject();
        json.writeStringProperty("severity", judged.severity().name());
        json.writeStringProperty("kind", difference.kind().word());
        json.writeStringProperty("object", difference.object());
        json.writeStringProperty("what", difference.what());
        json.writeStringProperty("before", difference.before());
        json.writeStringProperty("after", difference.after());
        words("nets", difference.effects());
        places("at", difference.at());
        places("there", difference.there());
        findings("comes", judged.appear());
        findings("goes", judged.vanish());
        json.writeStringProperty("usual", judged.fate().words());
        json.writeStringProperty("change", judged.change().orElse(""));
        json.writeArrayPropertyStart("testAgain");
        judged.retests().forEach(this::retest);
        json.writeEndArray();
        words("signaturesLapse", judged.lapsing());
        json.writeEndObject();
    }

    private void retest(Retest test) {
        json.writeStartObject();
        json.writeStringProperty("test", test.kind().word());
        json.writeStringProperty("what", test.what());
        words("points", test.points());
        json.writeStringProperty(
                "expected", test.expected().map(ReadingWords::of).orElse(""));
        json.writeStringProperty(
                "whenPutBack", test.putBack().map(ReadingWords::of).orElse(""));
        json.writeEndObject();
    }

    private void trend(Trend trend) {
        json.writeStartObject();
        json.writeStringProperty("severity", trend.severity().name());
        json.writeStringProperty("where", trend.where());
        json.writeStringProperty("quantity", trend.quantity());
        json.writeArrayPropertyStart("readings");
        for (Trend.Point point : trend.points()) {
            json.writeStartObject();
            json.writeNumberProperty("flightHours", point.hours());
            json.writeNumberProperty("value", point.value());
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeNumberProperty("limit", trend.limit());
        json.writeNumberProperty("perHour", trend.slope());
        number("scatter", trend.scatter());
        number("meetsLimitAtHours", trend.crossing());
        number("standardErrorHours", trend.error());
        number("outsideSinceHours", trend.overSince());
        json.writeEndObject();
    }

    private void number(String name, OptionalDouble value) {
        if (value.isPresent() && Double.isFinite(value.getAsDouble())) {
            json.writeNumberProperty(name, value.getAsDouble());
        } else {
            json.writeNullProperty(name);
        }
    }

    private void findings(String name, List<Finding> findings) {
        json.writeArrayPropertyStart(name);
        for (Finding finding : findings) {
            json.writeStartObject();
            json.writeStringProperty("id", finding.id());
            json.writeStringProperty("code", finding.code());
            json.writeStringProperty("severity", finding.severity().name());
            json.writeStringProperty("title", finding.title());
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private void places(String name, List<Place> places) {
        json.writeArrayPropertyStart(name);
        for (Place place : places) {
            json.writeStartObject();
            json.writeStringProperty("file", place.span().file());
            json.writeNumberProperty("line", place.span().line());
            json.writeStringProperty("row", place.row());
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private void words(String name, List<String> words) {
        json.writeName(name);
        array(words);
    }

    private void array(List<String> words) {
        json.writeStartArray();
        words.forEach(json::writeString);
        json.writeEndArray();
    }
}
