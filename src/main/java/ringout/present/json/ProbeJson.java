package ringout.present.json;

import java.io.StringWriter;
import java.util.List;
import java.util.function.Consumer;
import ringout.model.Lead;
import ringout.present.words.Cautions;
import ringout.present.words.FaultWords;
import ringout.present.words.OhmsWords;
import ringout.solve.meter.BusTable;
import ringout.solve.meter.Fault;
import ringout.solve.meter.Meaning;
import ringout.solve.meter.OhmsAnswer;
import ringout.solve.meter.Reading;
import ringout.solve.meter.Route;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.json.JsonFactory;

/** Expected meter readings as JSON, by schemas/probe.schema.json. */
public final class ProbeJson {
    private static final JsonFactory FACTORY = new JsonFactory();

    private final JsonGenerator json;

    private ProbeJson(JsonGenerator json) {
        this.json = json;
    }

    /** A reading between two points, ending in \n. */
    public static String of(OhmsAnswer answer) {
        return written(probe -> probe.answer(answer));
    }

    /** The tables of a bus, ending in \n. */
    public static String of(List<BusTable> tables) {
        return written(probe -> {
            probe.json.writeStringProperty("measured", "ohms between H and L at every plug");
            probe.words("cautions", Cautions.OHMS);
            probe.json.writeArrayPropertyStart("tables");
            tables.forEach(probe::table);
            probe.json.writeEndArray();
        });
    }

    private static String written(Consumer<ProbeJson> content) {
        StringWriter text = new StringWriter();
        try (JsonGenerator json = FACTORY.createGenerator(new Layout(), text)) {
            json.writeStartObject();
            content.accept(new ProbeJson(json));
            json.writeEndObject();
        }
        return text.append('\n').toString();
    }

    private void answer(OhmsAnswer answer) {
        json.writeStringProperty("measured", "ohms");
        words("cautions", Cautions.OHMS);
        json.writeStringProperty("from", answer.from());
        json.writeStringProperty("to", answer.to());
        json.writeStringProperty("state", answer.state());
        words("pulled", answer.pulled());
        json.writeName("expected");
        reading(answer.reading());
        if (answer.reading().connected()) {
            json.writeNumberProperty("rootSumSquareOhm", answer.spreadOhm());
        }
        json.writeArrayPropertyStart("paths");
        answer.routes().forEach(this::route);
        json.writeEndArray();
        json.writeNumberProperty("otherPathsShare", answer.rest());
        words("otherPathsThrough", answer.restThrough());
        words("insideOfUnits", answer.inside());
        meanings(answer);
        json.writeArrayPropertyStart("notFound");
        answer.unseen().forEach(this::fault);
        json.writeEndArray();
        json.writeNumberProperty("faultsNotTried", answer.notTried());
        gaps(answer);
        states(answer);
    }

    private void reading(Reading reading) {
        json.writeStartObject();
        if (reading instanceof Reading.Ohms ohms) {
            json.writeBooleanProperty("connected", true);
            json.writeNumberProperty("ohm", ohms.ohm());
            json.writeNumberProperty("leastOhm", ohms.least());
            json.writeNumberProperty("mostOhm", ohms.most());
        } else {
            json.writeBooleanProperty("connected", false);
        }
        json.writeStringProperty("words", OhmsWords.of(reading));
        json.writeEndObject();
    }

    private void route(Route route) {
        json.writeStartObject();
        json.writeNumberProperty("share", route.share());
        words("steps", route.trail().names());
        json.writeStringProperty("words", route.trail().words());
        rows(route.rows());
        json.writeEndObject();
    }

    private void rows(List<Lead> rows) {
        json.writeArrayPropertyStart("rows");
        for (Lead lead : rows) {
            json.writeStartObject();
            json.writeStringProperty("row", lead.id());
            json.writeStringProperty("file", lead.at().file());
            json.writeNumberProperty("line", lead.at().line());
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private void meanings(OhmsAnswer answer) {
        json.writeArrayPropertyStart("otherReadings");
        for (Meaning meaning : answer.meanings()) {
            json.writeStartObject();
            json.writeName("first");
            reading(meaning.first());
            json.writeName("last");
            reading(meaning.last());
            json.writeStringProperty("words", OhmsWords.of(meaning));
            json.writeArrayPropertyStart("faults");
            meaning.faults().forEach(this::fault);
            json.writeEndArray();
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private void fault(Fault fault) {
        json.writeStartObject();
        json.writeStringProperty("kind", FaultWords.kind(fault.kind()));
        json.writeStringProperty("object", fault.object());
        words("details", fault.details());
        json.writeStringProperty("words", FaultWords.of(fault));
        rows(fault.rows());
        json.writeEndObject();
    }

    private void gaps(OhmsAnswer answer) {
        json.writeArrayPropertyStart("unknown");
        answer.gaps().forEach(gap -> {
            json.writeStartObject();
            json.writeStringProperty("datum", gap.datum());
            json.writeStringProperty("of", gap.of());
            json.writeEndObject();
        });
        json.writeEndArray();
    }

    private void states(OhmsAnswer answer) {
        json.writeArrayPropertyStart("otherStates");
        for (OhmsAnswer.StateReading other : answer.otherStates()) {
            json.writeStartObject();
            json.writeStringProperty("state", other.state());
            json.writeName("expected");
            reading(other.reading());
            json.writeBooleanProperty("same", other.same());
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private void table(BusTable table) {
        json.writeStartObject();
        json.writeStringProperty("bus", table.bus());
        json.writeStringProperty("state", table.state());
        json.writeArrayPropertyStart("rows");
        for (BusTable.Row row : table.rows()) {
            json.writeStartObject();
            json.writeStringProperty("bus", row.fault().map(FaultWords::of).orElse("as listed"));
            if (row.fault().isPresent()) {
                json.writeName("fault");
                fault(row.fault().get());
            }
            json.writeArrayPropertyStart("readings");
            for (int i = 0; i < table.spots().size(); i++) {
                cell(table.spots().get(i), row.readings().get(i));
            }
            json.writeEndArray();
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    private void cell(BusTable.Spot spot, Reading reading) {
        json.writeStartObject();
        json.writeStringProperty("plug", spot.plug());
        json.writeStringProperty("lead", spot.lead().id());
        json.writeStringProperty("side", FaultWords.side(spot.side()));
        json.writeName("expected");
        reading(reading);
        json.writeEndObject();
    }

    private void words(String name, List<String> words) {
        json.writeArrayPropertyStart(name);
        words.forEach(json::writeString);
        json.writeEndArray();
    }
}
