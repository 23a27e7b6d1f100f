package ringout.present.html;

import java.io.StringWriter;
import java.util.List;
import java.util.Optional;
import ringout.finding.CannotTell;
import ringout.finding.Finding;
import ringout.finding.Headline;
import ringout.finding.Report;
import ringout.present.words.Cautions;
import ringout.present.words.OhmsWords;
import ringout.present.words.ReadingWords;
import ringout.sheet.page.PageBook;
import ringout.sheet.page.PageNet;
import ringout.sheet.page.PagePull;
import ringout.sheet.page.PageState;
import ringout.solve.meter.Accepted;
import ringout.solve.meter.Reading;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.ObjectWriteContext;
import tools.jackson.core.json.JsonFactory;

/** What the page looks up, as JSON that may stand inside a page: no character that could end it there. */
final class PageJson {
    private static final JsonFactory FACTORY = new JsonFactory();
    private static final double MILLI = 1000;

    private final JsonGenerator json;

    private PageJson(JsonGenerator json) {
        this.json = json;
    }

    static String of(PageHead head, Report report, PageBook book) {
        StringWriter text = new StringWriter();
        try (JsonGenerator json = FACTORY.createGenerator(ObjectWriteContext.empty(), text)) {
            PageJson page = new PageJson(json);
            json.writeStartObject();
            json.writeStringProperty("aircraft", head.aircraft().name());
            json.writeStringProperty("tail", head.aircraft().tail().or(""));
            json.writeStringProperty("hash", head.hash());
            page.report(report);
            page.book(book);
            new SearchJson(json).write(book.search());
            page.words("ohmsCautions", Cautions.OHMS);
            page.words("voltsCautions", Cautions.VOLTS);
            json.writeEndObject();
        }
        return text.toString()
                .replace("<", "\\u003c")
                .replace(">", "\\u003e")
                .replace("&", "\\u0026")
                .replace("\u2028", "\\u2028")
                .replace("\u2029", "\\u2029");
    }

    private void report(Report report) {
        json.writeNumberProperty("passed", report.passed());
        json.writeArrayPropertyStart("findings");
        report.headlines().forEach(headline -> headline(headline, false));
        report.waived().forEach(headline -> headline(headline, true));
        json.writeEndArray();
        json.writeArrayPropertyStart("open");
        report.cannotTell().forEach(this::cannotTell);
        json.writeEndArray();
    }

    private void headline(Headline headline, boolean waived) {
        json.writeStartObject();
        finding(headline.finding());
        json.writeBooleanProperty("waived", waived);
        words(
                "also",
                headline.alsoExplains().stream()
                        .map(also -> also.severity().name() + " " + also.code() + " " + also.title())
                        .toList());
        json.writeEndObject();
    }

    private void finding(Finding finding) {
        json.writeStringProperty("code", finding.code());
        json.writeStringProperty("severity", finding.severity().name());
        json.writeStringProperty("title", finding.title());
        words("states", finding.states());
        words("objects", finding.objects());
        words(
                "rows",
                finding.at().stream()
                        .map(place -> place.span().words() + ", " + place.words())
                        .toList());
        words("leads", finding.at().stream().map(place -> place.row()).toList());
        json.writeStringProperty("path", finding.evidence().path().words());
        String source = finding.evidence().source();
        json.writeStringProperty("sum", finding.evidence().sum() + (source.isEmpty() ? "" : " (" + source + ")"));
        json.writeStringProperty("why", finding.why());
        json.writeStringProperty("meter", finding.meter());
        json.writeStringProperty("fix", finding.fix());
    }

    private void cannotTell(CannotTell open) {
        json.writeStartObject();
        json.writeStringProperty("code", open.code());
        json.writeStringProperty("severity", "Q");
        json.writeStringProperty("title", "cannot tell: " + open.missing());
        words("objects", open.objects());
        words("states", open.states());
        json.writeStringProperty("fix", open.how() + ", " + open.minutes() + " min");
        json.writeEndObject();
    }

    private void book(PageBook book) {
        json.writeArrayPropertyStart("wires");
        book.wires().forEach(wire -> {
            json.writeStartObject();
            json.writeStringProperty("lead", wire.lead());
            json.writeStringProperty("from", wire.from());
            json.writeStringProperty("to", wire.to());
            json.writeStringProperty("leg", wire.leg());
            json.writeStringProperty("carries", wire.carries());
            words("facts", wire.facts());
            json.writeStringProperty("note", wire.note());
            json.writeEndObject();
        });
        json.writeEndArray();
        json.writeArrayPropertyStart("plugs");
        book.plugs().forEach(plug -> {
            json.writeStartObject();
            json.writeStringProperty("name", plug.name());
            json.writeStringProperty("unit", plug.unit());
            numbers("wires", plug.wires());
            json.writeEndObject();
        });
        json.writeEndArray();
        json.writeArrayPropertyStart("states");
        book.states().forEach(this::state);
        json.writeEndArray();
    }

    private void state(PageState state) {
        json.writeStartObject();
        json.writeStringProperty("name", state.name());
        words("absent", state.absent());
        words("apart", state.apart());
        json.writeStringProperty("noVolts", state.noVolts());
        numbers("netOf", state.netOf());
        json.writeArrayPropertyStart("nets");
        state.nets().forEach(this::net);
        json.writeEndArray();
        words("ohms", state.ohms().stream().map(PageJson::reading).toList());
        json.writeArrayPropertyStart("accept");
        state.ohms().forEach(this::accepted);
        json.writeEndArray();
        json.writeObjectPropertyStart("buses");
        state.buses().forEach((plug, reading) -> json.writeStringProperty(plug, reading(reading)));
        json.writeEndObject();
        json.writeObjectPropertyStart("busAccept");
        state.buses().forEach((plug, reading) -> {
            json.writeName(plug);
            accepted(reading);
        });
        json.writeEndObject();
        json.writeArrayPropertyStart("pulls");
        state.pulls().forEach(this::pull);
        json.writeEndArray();
        json.writeEndObject();
    }

    private void net(PageNet net) {
        json.writeStartObject();
        json.writeStringProperty("name", net.name());
        words("pins", net.pins());
        json.writeStringProperty("way", net.way());
        if (net.volts().isPresent()) {
            json.writeStringProperty("volts", ReadingWords.volts(net.volts().getAsDouble()));
            json.writeStringProperty("against", net.against());
        }
        json.writeEndObject();
    }

    private void pull(PagePull pull) {
        json.writeStartObject();
        json.writeBooleanProperty("mated", pull.mated());
        words("dark", pull.dark());
        words("cut", pull.cut());
        words("motors", pull.motors());
        words("functions", pull.functions());
        json.writeArrayPropertyStart("changes");
        pull.changes().forEach(change -> {
            json.writeStartArray();
            json.writeString(change.plug());
            json.writeString(reading(change.before()));
            json.writeString(reading(change.after()));
            json.writeEndArray();
        });
        json.writeEndArray();
        json.writeEndObject();
    }

    /** The band a reading may lie in when all is well, to the milliohm; null where the meter should show over range. */
    private void accepted(Reading reading) {
        Optional<Accepted> band = Accepted.of(reading);
        if (band.isEmpty()) {
            json.writeNull();
        } else {
            json.writeStartArray();
            json.writeNumber(milli(band.get().low()));
            json.writeNumber(milli(band.get().high()));
            json.writeEndArray();
        }
    }

    private static double milli(double ohm) {
        return Math.round(ohm * MILLI) / MILLI;
    }

    /** An expected reading with the band a good one lies in. */
    private static String reading(Reading reading) {
        if (reading instanceof Reading.Ohms ohms) {
            return ReadingWords.of(reading) + " (" + OhmsWords.range(ohms.least(), ohms.most()) + ")";
        }
        return ReadingWords.of(reading);
    }

    private void words(String name, List<String> words) {
        json.writeArrayPropertyStart(name);
        words.forEach(json::writeString);
        json.writeEndArray();
    }

    private void numbers(String name, List<Integer> numbers) {
        json.writeArrayPropertyStart(name);
        numbers.forEach(json::writeNumber);
        json.writeEndArray();
    }
}
