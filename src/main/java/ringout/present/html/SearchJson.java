package ringout.present.html;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import ringout.present.words.SearchWords;
import ringout.sheet.Cautions;
import ringout.sheet.page.PageFault;
import ringout.sheet.page.PageSearch;
import ringout.sheet.page.PageTest;
import ringout.trace.candidate.Candidate;
import ringout.trace.predict.ReadingBand;
import ringout.trace.predict.TestCard;
import ringout.trace.session.DialogueTree;
import ringout.trace.session.NextStep;
import ringout.trace.session.Ranked;
import tools.jackson.core.JsonGenerator;

/** The searches for a fault as JSON: every text stands once and is named by its number, since the trees say the same things often. */
final class SearchJson {
    private static final int MOST_RANKED = 8;
    private static final double PERCENT = 100;

    /** Repairs below this share are counted, not told. */
    private static final double READY = 0.02;

    private final JsonGenerator json;
    private final Map<String, Integer> texts = new LinkedHashMap<>();
    private final Map<String, Integer> tests = new HashMap<>();

    SearchJson(JsonGenerator json) {
        this.json = json;
    }

    void write(PageSearch search) {
        json.writeObjectPropertyStart("search");
        json.writeStringProperty("state", search.state());
        json.writeArrayPropertyStart("tests");
        for (PageTest test : search.tests()) {
            tests.put(test.card().id(), tests.size());
            test(test);
        }
        json.writeEndArray();
        json.writeArrayPropertyStart("units");
        search.faults().forEach(this::fault);
        json.writeEndArray();
        texts("packs", Cautions.PACKS);
        // Last, when all of them are known.
        json.writeArrayPropertyStart("texts");
        texts.keySet().forEach(json::writeString);
        json.writeEndArray();
        json.writeEndObject();
    }

    private void test(PageTest test) {
        TestCard card = test.card();
        json.writeStartObject();
        json.writeStringProperty("id", card.id());
        text("title", card.title());
        text("place", test.place());
        text("access", SearchWords.access(card.opening()));
        text("trap", card.trap());
        texts("disturbs", card.disturbs());
        texts("safety", card.safety());
        texts("outcomes", card.outcomes());
        json.writeStringProperty("unit", test.unit());
        json.writeArrayPropertyStart("bands");
        for (ReadingBand band : test.bands()) {
            json.writeStartArray();
            // JSON has no infinity: the first band begins below all readings.
            json.writeNumber(Math.max(band.from(), -Double.MAX_VALUE));
            json.writeNumber(band.outcome().map(card.outcomes()::indexOf).orElse(-1));
            json.writeEndArray();
        }
        json.writeEndArray();
        json.writeNumberProperty(
                "over", test.over().map(card.outcomes()::indexOf).orElse(-1));
        json.writeEndObject();
    }

    private void fault(PageFault fault) {
        json.writeStartObject();
        json.writeStringProperty("unit", fault.unit());
        texts("behind", fault.behind());
        texts("ways", fault.ways());
        fault.tree().ifPresent(tree -> {
            json.writeName("tree");
            tree(tree);
        });
        json.writeEndObject();
    }

    private void tree(DialogueTree tree) {
        json.writeStartObject();
        json.writeArrayPropertyStart("ranked");
        tree.ranked().stream().limit(MOST_RANKED).forEach(this::ranked);
        json.writeEndArray();
        json.writeNumberProperty("others", Math.max(0, tree.ranked().size() - MOST_RANKED));
        share("unknown", tree.unknown());
        NextStep next = tree.next();
        if (next instanceof NextStep.Test test) {
            test(test, tree.limbs());
        } else if (next instanceof NextStep.Do repair) {
            repair(repair);
        } else if (next instanceof NextStep.GoIn in) {
            json.writeStringProperty("kind", "in");
            text("lids", String.join(", ", in.lids()));
            text("cost", SearchWords.minutes(in.minutes()));
            jobs(in.bring());
            numbers("look", in.lookFirst());
        } else if (next instanceof NextStep.InTurn turn) {
            json.writeStringProperty("kind", "turn");
            jobs(turn.inTurn());
        } else if (next instanceof NextStep.NothingFits none) {
            json.writeStringProperty("kind", "none");
            texts("near", none.nearest().stream().map(SearchJson::nearest).toList());
        }
        List<String> retest = new ArrayList<>();
        tree.retest().forEach(one -> {
            retest.add(one.object());
            retest.add(one.what());
        });
        texts("retest", retest);
        json.writeEndObject();
    }

    private static String nearest(Ranked one) {
        return one.candidate().title() + "; " + SearchWords.because(one);
    }

    /** Title, share in words, width of the bar in per cent, why, and the places by name. */
    private void ranked(Ranked one) {
        json.writeStartArray();
        json.writeNumber(number(one.candidate().title()));
        json.writeNumber(number(SearchWords.share(one.share())));
        json.writeNumber(Math.round(one.share() * PERCENT));
        json.writeNumber(number(SearchWords.because(one)));
        json.writeStartArray();
        places(one.candidate()).forEach(place -> json.writeNumber(number(place)));
        json.writeEndArray();
        json.writeEndArray();
    }

    private static Set<String> places(Candidate candidate) {
        Set<String> places = new LinkedHashSet<>();
        places.add(candidate.repair().object());
        places.addAll(candidate.rows());
        return places;
    }

    private void test(NextStep.Test test, List<DialogueTree.Limb> limbs) {
        json.writeStringProperty("kind", "test");
        json.writeNumberProperty("test", tests.getOrDefault(test.card().id(), -1));
        json.writeBooleanProperty("again", test.again());
        text("cost", SearchWords.minutes(test.minutes()));
        text("toTheEnd", test.toTheEnd().map(SearchWords::minutes).orElse(""));
        text("sound", test.sound());
        Map<String, DialogueTree> then = new HashMap<>();
        limbs.forEach(limb -> then.put(limb.outcome(), limb.then()));
        json.writeArrayPropertyStart("out");
        for (NextStep.Branch branch : test.branches()) {
            json.writeStartObject();
            json.writeNumberProperty("outcome", test.card().outcomes().indexOf(branch.outcome()));
            text("chance", SearchWords.share(branch.chance()));
            text("shown", SearchWords.shown(branch));
            text("leads", branch.leading().action() + ", " + SearchWords.share(branch.share()));
            if (then.containsKey(branch.outcome())) {
                json.writeName("then");
                tree(then.get(branch.outcome()));
            }
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private void repair(NextStep.Do repair) {
        json.writeStringProperty("kind", "do");
        jobs(List.of(repair.job()));
        text("cost", SearchWords.minutes(repair.minutes()));
        json.writeBooleanProperty("covers", repair.covers());
        numbers("again", repair.repeatFirst().stream().toList());
    }

    /** Share in words, width of the bar, and what is done. */
    private void jobs(List<NextStep.Job> jobs) {
        List<NextStep.Job> told =
                jobs.stream().filter(job -> job.share() >= READY).toList();
        json.writeNumberProperty("less", told.isEmpty() ? 0 : jobs.size() - told.size());
        json.writeArrayPropertyStart("jobs");
        for (NextStep.Job job : told.isEmpty() ? jobs : told) {
            json.writeStartArray();
            json.writeNumber(number(SearchWords.share(job.share())));
            json.writeNumber(Math.round(job.share() * PERCENT));
            json.writeNumber(number(SearchWords.job(job)));
            json.writeEndArray();
        }
        json.writeEndArray();
    }

    private void share(String name, double share) {
        json.writeArrayPropertyStart(name);
        json.writeNumber(number(SearchWords.share(share)));
        json.writeNumber(Math.round(share * PERCENT));
        json.writeEndArray();
    }

    private void numbers(String name, List<TestCard> cards) {
        json.writeArrayPropertyStart(name);
        cards.forEach(card -> json.writeNumber(tests.getOrDefault(card.id(), -1)));
        json.writeEndArray();
    }

    private void texts(String name, List<String> words) {
        json.writeArrayPropertyStart(name);
        words.forEach(word -> json.writeNumber(number(word)));
        json.writeEndArray();
    }

    private void text(String name, String words) {
        json.writeNumberProperty(name, number(words));
    }

    private int number(String words) {
        return texts.computeIfAbsent(words, key -> texts.size());
    }
}
