package ringout.present.json;

import java.io.StringWriter;
import java.util.List;
import java.util.function.Consumer;
import ringout.model.Lead;
import ringout.present.words.Cautions;
import ringout.present.words.FaultWords;
import ringout.present.words.ReadingWords;
import ringout.solve.meter.BadContact;
import ringout.solve.meter.BusTable;
import ringout.solve.meter.Fault;
import ringout.solve.meter.Meaning;
import ringout.solve.meter.MeterAnswer;
import ringout.solve.meter.OhmsAnswer;
import ringout.solve.meter.Reading;
import ringout.solve.meter.Route;
import ringout.solve.meter.VoltsAnswer;
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

    /** A voltage between two points, ending in \n. */
    public static String of(VoltsAnswer answer) {
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

    private void head(MeterAnswer answer, String measured, List<String> cautions) {
        json.writeStringProperty("measured", measured);
        words("cautions", cautions);
        json.writeStringProperty("from", answer.from());
        json.writeStringProperty("to", answer.to());
        json.writeStringProperty("state", answer.state());
        words("pulled", answer.pulled());
        json.writeName("expected");
        reading(answer.reading());
    }

    private void answer(VoltsAnswer answer) {
        head(answer, "volts", Cautions.VOLTS);
        answer.event().ifPresent(event -> json.writeStringProperty("event", event));
        answer.least().ifPresent(end -> extreme("least", end));
        answer.most().ifPresent(end -> extreme("most", end));
        words("noFigure", answer.withoutFigure());
        json.writeArrayPropertyStart("paths");
        answer.ways().forEach(this::way);
        json.writeEndArray();
        answer.amps().ifPresent(amps -> json.writeNumberProperty("lastLeadA", amps));
        others(answer.meanings(), answer.unseen(), answer.notTried());
        json.writeArrayPropertyStart("assumed");
        answer.assumed().forEach(assumption -> {
            json.writeStartObject();
            json.writeStringProperty("datum", assumption.gap().datum());
            json.writeStringProperty("of", assumption.gap().of());
            json.writeStringProperty("value", assumption.value());
            json.writeEndObject();
        });
        json.writeEndArray();
    }

    private void extreme(String name, VoltsAnswer.Extreme end) {
        json.writeObjectPropertyStart(name);
        json.writeNumberProperty("volts", end.volts());
        json.writeStringProperty("packs", end.packs());
        json.writeStringProperty("loads", end.loads());
        json.writeStringProperty("regulators", end.tolerance());
        json.writeEndObject();
    }

    private void way(VoltsAnswer.Way way) {
        json.writeStartObject();
        json.writeBooleanProperty("supply", way.supply());
        words("steps", way.trail().names());
        json.writeStringProperty("words", way.trail().words());
        rows(way.rows());
        json.writeEndObject();
    }

    private void answer(OhmsAnswer answer) {
        head(answer, "ohms", Cautions.OHMS);
        if (answer.reading().connected()) {
            json.writeNumberProperty("rootSumSquareOhm", answer.spreadOhm());
        }
        json.writeArrayPropertyStart("paths");
        answer.routes().forEach(this::route);
        json.writeEndArray();
        json.writeNumberProperty("otherPathsShare", answer.rest());
        words("otherPathsThrough", answer.restThrough());
        words("insideOfUnits", answer.inside());
        others(answer.meanings(), answer.unseen(), answer.notTried());
        answer.badContact().ifPresent(this::badContact);
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
        } else if (reading instanceof Reading.Volts volts) {
            json.writeBooleanProperty("connected", true);
            json.writeNumberProperty("volts", volts.volts());
            json.writeNumberProperty("leastVolts", volts.least());
            json.writeNumberProperty("mostVolts", volts.most());
        } else {
            json.writeBooleanProperty("connected", false);
        }
        json.writeStringProperty("words", ReadingWords.of(reading));
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

    private void others(List<Meaning> meanings, List<Fault> unseen, int notTried) {
        json.writeArrayPropertyStart("otherReadings");
        for (Meaning meaning : meanings) {
            json.writeStartObject();
            json.writeName("first");
            reading(meaning.first());
            json.writeName("last");
            reading(meaning.last());
            json.writeStringProperty("words", ReadingWords.of(meaning));
            json.writeArrayPropertyStart("faults");
            meaning.faults().forEach(this::fault);
            json.writeEndArray();
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeArrayPropertyStart("notFound");
        unseen.forEach(this::fault);
        json.writeEndArray();
        json.writeNumberProperty("faultsNotTried", notTried);
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

    private void badContact(BadContact bad) {
        json.writeObjectPropertyStart("badContact");
        json.writeStringProperty("lead", bad.lead());
        json.writeStringProperty("pin", bad.pin());
        json.writeNumberProperty("fromOhm", bad.fromOhm());
        json.writeNumberProperty("toOhm", bad.toOhm());
        json.writeName("from");
        reading(bad.from());
        json.writeName("to");
        reading(bad.to());
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
