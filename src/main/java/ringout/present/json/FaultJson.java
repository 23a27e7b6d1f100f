package ringout.present.json;

import java.io.StringWriter;
import java.util.Collection;
import java.util.List;
import java.util.function.Consumer;
import ringout.trace.candidate.Circumstance;
import ringout.trace.predict.TestCard;
import ringout.trace.session.FaultReport;
import ringout.trace.session.NextStep;
import ringout.trace.session.Ranked;
import ringout.trace.session.Scene;
import ringout.trace.session.TestReading;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.json.JsonFactory;

/** Where a search for a fault stands, as JSON by schemas/fault.schema.json; what is seen and read in it is enough to take the search up again. */
public final class FaultJson {
    private static final JsonFactory FACTORY = new JsonFactory();

    private final JsonGenerator json;

    private FaultJson(JsonGenerator json) {
        this.json = json;
    }

    /** The report, ending in \n. */
    public static String of(FaultReport report) {
        StringWriter text = new StringWriter();
        try (JsonGenerator json = FACTORY.createGenerator(new Layout(), text)) {
            json.writeStartObject();
            new FaultJson(json).report(report);
            json.writeEndObject();
        }
        return text.append('\n').toString();
    }

    private void report(FaultReport report) {
        json.writeStringProperty("aircraft", report.aircraft());
        json.writeStringProperty("state", report.state());
        scene(report.scene());
        list("readings", report.progress().readings(), this::reading);
        words("opened", report.progress().opened());
        words("skipped", report.progress().skipped());
        words("inVain", report.progress().vain());
        words("behind", report.behind());
        words("askWhoElse", report.lookAt());
        list("ways", report.ways(), way -> {
            json.writeStringProperty("unit", way.unit());
            json.writeStringProperty("of", way.power() ? "power" : "signal");
            words("steps", way.trail().names());
        });
        json.writeBooleanProperty("oneFaultExplainsAll", report.single());
        json.writeNumberProperty("bitsLeft", rounded(report.bits()));
        list("faults", report.ranked(), this::fault);
        json.writeNumberProperty("faultsBelowOnePercent", report.others());
        json.writeNumberProperty("notInTheModel", rounded(report.unknown()));
        list("repairs", report.jobs(), this::job);
        json.writeObjectPropertyStart("next");
        next(report.next());
        json.writeEndObject();
        pairs(report);
        list("listDoubts", report.listDoubts(), doubt -> {
            json.writeStringProperty("row", doubt.row());
            json.writeStringProperty("says", doubt.says());
            json.writeStringProperty("wouldHaveToSay", doubt.should());
            json.writeNumberProperty("share", rounded(doubt.share()));
        });
        list("retest", report.retest(), one -> {
            json.writeStringProperty("object", one.object());
            json.writeStringProperty("prove", one.what());
        });
    }

    private void scene(Scene scene) {
        json.writeObjectPropertyStart("scene");
        words("silent", scene.silent());
        words("alive", scene.alive());
        json.writeStringProperty(
                "others",
                switch (scene.others()) {
                    case UNKNOWN -> "unknown";
                    case ASSUMED -> "taken to respond";
                    case RESPOND -> "respond";
                });
        words("lit", scene.lit());
        words("dark", scene.dark());
        words("touched", scene.touched());
        json.writeBooleanProperty("crash", scene.crash());
        json.writeBooleanProperty("update", scene.update());
        json.writeEndObject();
    }

    private void reading(TestReading reading) {
        json.writeStringProperty("test", reading.test());
        json.writeStringProperty("outcome", reading.outcome());
        json.writeStringProperty("value", reading.value());
    }

    private void fault(Ranked one) {
        json.writeStringProperty("fault", one.candidate().title());
        json.writeStringProperty("kind", one.candidate().kind().words());
        json.writeNumberProperty("share", rounded(one.share()));
        words("rows", one.candidate().rows());
        json.writeStringProperty("repair", one.candidate().repair().action());
        words("lids", one.candidate().opening().covers());
        words(
                "because",
                one.candidate().because().stream().map(Circumstance::words).toList());
        words("alsoSilent", one.alsoSilent());
        words("alsoUnsteady", one.alsoUnsteady());
        list("doesNotExplain", one.misfits(), this::reading);
    }

    private void job(NextStep.Job job) {
        json.writeStringProperty("action", job.action());
        json.writeNumberProperty("minutes", job.minutes());
        words("lids", job.lids());
        json.writeNumberProperty("share", rounded(job.share()));
    }

    private void next(NextStep next) {
        if (next instanceof NextStep.Test test) {
            json.writeStringProperty("do", test.again() ? "read again" : "test");
            test(test);
        } else if (next instanceof NextStep.Do repair) {
            json.writeStringProperty("do", "repair");
            job(repair.job());
            json.writeNumberProperty("allMinutes", repair.minutes());
            repair.repeatFirst().ifPresent(card -> json.writeStringProperty("readAgainFirst", card.id()));
        } else if (next instanceof NextStep.GoIn in) {
            json.writeStringProperty("do", "go in");
            words("open", in.lids());
            json.writeNumberProperty("allMinutes", in.minutes());
            list("bring", in.bring(), this::job);
            words("lookFirst", in.lookFirst().stream().map(TestCard::id).toList());
        } else if (next instanceof NextStep.InTurn turn) {
            json.writeStringProperty("do", "repairs in turn");
            list("inTurn", turn.inTurn(), this::job);
        } else if (next instanceof NextStep.NothingFits none) {
            json.writeStringProperty("do", "nothing fits");
            list("nearest", none.nearest(), this::fault);
        }
    }

    private void test(NextStep.Test test) {
        TestCard card = test.card();
        json.writeStringProperty("test", card.id());
        json.writeStringProperty("title", card.title());
        json.writeNumberProperty("allMinutes", rounded(test.minutes()));
        words("open", card.opening().covers());
        json.writeNumberProperty("bits", rounded(test.bits()));
        test.toTheEnd().ifPresent(minutes -> json.writeNumberProperty("minutesToTheEnd", rounded(minutes)));
        json.writeStringProperty("withNothingWrong", test.sound());
        words("outcomes", card.outcomes());
        list("meaning", test.branches(), branch -> {
            json.writeStringProperty("outcome", branch.outcome());
            json.writeNumberProperty("chance", rounded(branch.chance()));
            list("shownBy", branch.with(), shown -> {
                json.writeStringProperty("fault", shown.fault());
                json.writeStringProperty("value", shown.value());
            });
            json.writeStringProperty("thenLeads", branch.leading().action());
            json.writeNumberProperty("thenShare", rounded(branch.share()));
        });
        words("disturbs", card.disturbs());
        json.writeStringProperty("trap", card.trap());
        words("cautions", card.safety());
    }

    private void pairs(FaultReport report) {
        list("atLeastOneOf", report.pairs().atLeastOneOf(), one -> {
            json.writeStringProperty("fault", one.candidate().title());
            json.writeNumberProperty("share", rounded(one.share()));
        });
        list("pairs", report.pairs().pairs(), two -> {
            json.writeStringProperty("one", two.one().title());
            json.writeStringProperty("other", two.other().title());
            json.writeNumberProperty("share", rounded(two.share()));
        });
    }

    private <T> void list(String name, List<T> items, Consumer<T> item) {
        json.writeArrayPropertyStart(name);
        for (T one : items) {
            json.writeStartObject();
            item.accept(one);
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private void words(String name, Collection<String> words) {
        json.writeArrayPropertyStart(name);
        words.forEach(json::writeString);
        json.writeEndArray();
    }

    /** To a tenth of a per mille: the figures rest on judgement, more digits would pretend. */
    private static double rounded(double value) {
        return Math.round(value * 10_000) / 10_000.0;
    }
}
