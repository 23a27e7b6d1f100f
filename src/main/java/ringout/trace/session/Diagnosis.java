package ringout.trace.session;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import ringout.graph.Circuit;
import ringout.graph.order.Covers;
import ringout.trace.candidate.Candidate;
import ringout.trace.candidate.PriorTable;
import ringout.trace.choice.Advice;
import ringout.trace.choice.Adviser;
import ringout.trace.choice.Effort;
import ringout.trace.choice.Option;
import ringout.trace.choice.Rules;
import ringout.trace.choice.TestTree;
import ringout.trace.diagnosis.Belief;
import ringout.trace.diagnosis.Explanation;
import ringout.trace.diagnosis.Observed;
import ringout.trace.diagnosis.Opening;
import ringout.trace.diagnosis.Problem;
import ringout.trace.diagnosis.Question;
import ringout.trace.diagnosis.Reading;
import ringout.trace.diagnosis.RepairShare;
import ringout.trace.diagnosis.Suspect;
import ringout.trace.predict.Prediction;
import ringout.trace.predict.TestCard;
import ringout.trace.predict.TestDeck;

/**
 * The search for one fault: what is seen, what was read so far, what may be wrong, and what to do next. Fixed once made; a reading gives a new
 * one.
 *
 * <pre>{@code
 * Diagnosis search = Diagnosis.of(circuit, Scene.silent(List.of("GMC")).withOthersAlive().withLit(List.of("GMC")));
 * Advice next = search.next();
 * search = search.with("ohms H-L GMC-C1 mated", "about 120");
 * }</pre>
 */
public final class Diagnosis {
    /** Minutes for a lid whose minutes the list does not tell. Judgement, no source. */
    public static final double USUAL_LID = 10;

    /** So much looking ahead that a step takes no longer than a technician's glance. */
    private static final Effort EFFORT = new Effort(1, 6, 12, 0.97, 40, 8, 0.02);

    private final CaseFile file;
    private final List<TestCard> cards;
    private final List<TestReading> readings;
    private final Problem problem;
    private final Observed observed;

    private Diagnosis(
            CaseFile file, List<TestCard> cards, List<TestReading> readings, Problem problem, Set<String> opened) {
        this.file = file;
        this.cards = cards;
        this.readings = readings;
        this.problem = problem;
        Observed all = Observed.NOTHING.open(List.copyOf(opened));
        for (TestReading reading : readings) {
            all = all.with(problem, numbered(reading));
        }
        this.observed = all;
    }

    /** A search with the standard weights. */
    public static Diagnosis of(Circuit circuit, Scene scene) {
        return of(circuit, scene, PriorTable.standard());
    }

    /**
     * A search.
     *
     * @param circuit the aircraft in the state it is searched in
     * @param scene what is seen before a tool is touched
     * @param priors weights of the faults before anything is known
     */
    public static Diagnosis of(Circuit circuit, Scene scene, PriorTable priors) {
        return find(circuit, scene, priors)
                .orElseThrow(() -> new IllegalArgumentException("no fault of the model explains any of what is seen"));
    }

    /** A search, or nothing when no fault of the model explains any of what is seen. */
    public static Optional<Diagnosis> find(Circuit circuit, Scene scene, PriorTable priors) {
        CaseFile file = CaseFile.of(circuit, scene, priors);
        return file.suspects().isEmpty() ? Optional.empty() : Optional.of(of(file, List.of(), Set.of()));
    }

    private static Diagnosis of(CaseFile file, List<TestReading> readings, Set<String> opened) {
        Set<String> read = new TreeSet<>();
        readings.forEach(reading -> read.add(reading.test()));
        List<TestCard> cards = file.cards(read);
        return new Diagnosis(file, cards, readings, problem(file, cards), opened);
    }

    private static Problem problem(CaseFile file, List<TestCard> cards) {
        Chances chances = Chances.of(file.circuit());
        List<Suspect> suspects = new ArrayList<>();
        for (int s = 0; s < file.suspects().size(); s++) {
            Candidate one = file.suspects().get(s);
            suspects.add(new Suspect(
                    one.title(),
                    file.weights().get(s),
                    repairOf(one),
                    one.repair().minutes(),
                    one.opening().covers()));
        }
        return new Problem(
                suspects,
                cards.stream().map(Diagnosis::question).toList(),
                openings(file.circuit()),
                file.priors().outside(),
                q -> rows(file, cards.get(q), chances));
    }

    /** Name of the repair action that cures a candidate: what is worked on, and what must come off for it. */
    public static String repairOf(Candidate candidate) {
        List<String> lids = candidate.opening().covers();
        return candidate.repair().id() + (lids.isEmpty() ? "" : " behind " + String.join(", ", lids));
    }

    private static double[][] rows(CaseFile file, TestCard card, Chances chances) {
        int n = file.suspects().size();
        boolean outside = file.priors().outside() > 0;
        double[][] rows = new double[n + (outside ? 1 : 0)][];
        for (int s = 0; s < n; s++) {
            rows[s] = chances.row(card, file.suspects().get(s));
        }
        if (outside) {
            rows[n] = chances.unknown(card);
        }
        return rows;
    }

    private static Question question(TestCard card) {
        boolean disturbs = !card.disturbs().isEmpty();
        return new Question(
                card.title(),
                card.minutes(),
                disturbs ? 1 : 0,
                0,
                card.opening().covers(),
                card.outcomes(),
                Question.USUAL_ERROR);
    }

    private static List<Opening> openings(Circuit circuit) {
        Covers covers = Covers.of(circuit);
        List<Opening> openings = new ArrayList<>();
        for (int cover = 0; cover < covers.all().size(); cover++) {
            openings.add(new Opening(
                    covers.name(cover), covers.all().get(cover).minutes().or(USUAL_LID)));
        }
        return openings;
    }

    private Reading numbered(TestReading reading) {
        int question = number(reading.test()).orElseThrow();
        int outcome = cards.get(question).outcomes().indexOf(reading.outcome());
        if (outcome < 0) {
            throw new IllegalArgumentException("'" + reading.outcome() + "' is none of "
                    + cards.get(question).outcomes());
        }
        return new Reading(question, outcome);
    }

    private Optional<Integer> number(String test) {
        for (int q = 0; q < cards.size(); q++) {
            if (cards.get(q).id().equals(test)) {
                return Optional.of(q);
            }
        }
        return Optional.empty();
    }

    /** Whether one fault of the model explains all that is seen. */
    public boolean single() {
        return file.single();
    }

    /** With an outcome of a test by its identity. */
    public Diagnosis with(String test, String outcome) {
        return with(new TestReading(test, outcome, outcome));
    }

    /**
     * With a reading.
     *
     * @throws IllegalArgumentException when no test of the aircraft is called so, or has no such outcome
     */
    public Diagnosis with(TestReading reading) {
        boolean known =
                TestDeck.of(file.circuit()).stream().anyMatch(card -> card.id().equals(reading.test()));
        if (!known) {
            throw new IllegalArgumentException("no test '" + reading.test() + "'");
        }
        List<TestReading> more = new ArrayList<>(readings);
        more.add(reading);
        return number(reading.test()).isPresent()
                ? new Diagnosis(file, cards, List.copyOf(more), problem, observed.opened())
                : of(file, List.copyOf(more), observed.opened());
    }

    /** With lids off. */
    public Diagnosis open(Collection<String> lids) {
        Set<String> open = new LinkedHashSet<>(observed.opened());
        open.addAll(lids);
        return new Diagnosis(file, cards, readings, problem, open);
    }

    /** Without the last reading. */
    public Diagnosis back() {
        return readings.isEmpty() ? this : of(file, readings.subList(0, readings.size() - 1), Set.of());
    }

    /** The same readings with what is seen told anew. */
    public Diagnosis seeing(Scene scene) {
        return of(CaseFile.of(file.circuit(), scene, file.priors()), readings, observed.opened());
    }

    /** What to do next. */
    public Advice next() {
        return adviser().next(observed);
    }

    /** The tests that tell most a minute, best first. */
    public List<Option> ranking() {
        return adviser().ranking(observed);
    }

    /** The advice for every outcome, so many tests deep. */
    public TestTree tree(int tests) {
        return TestTree.grow(adviser(), observed, tests);
    }

    private Adviser adviser() {
        return new Adviser(problem, Rules.USUAL, EFFORT);
    }

    /** What is held likely after all readings. */
    public Belief belief() {
        return Belief.of(problem, observed);
    }

    /** The repair actions, likeliest first. */
    public List<RepairShare> repairs() {
        return belief().repairs();
    }

    /** The readings a suspect fails to explain. */
    public Explanation explanation(int suspect) {
        return Explanation.of(problem, observed.readings(), suspect);
    }

    /** The suspects, numbered as in the problem. */
    public List<Candidate> suspects() {
        return file.suspects();
    }

    /** The tests, numbered as the questions of the problem. */
    public List<TestCard> tests() {
        return List.copyOf(cards);
    }

    /** What a test shows with a suspect. */
    public Prediction shows(int test, int suspect) {
        return Chances.of(file.circuit()).shows(cards.get(test), file.suspects().get(suspect));
    }

    /** What a test shows on the sound aircraft. */
    public Prediction sound(int test) {
        return Chances.of(file.circuit()).sound(cards.get(test));
    }

    /** The table of suspects, tests and chances. */
    public Problem problem() {
        return problem;
    }

    /** The readings by their numbers, and the lids that are off. */
    public Observed observed() {
        return observed;
    }

    /** The readings in order. */
    public List<TestReading> readings() {
        return readings;
    }

    /** The card of a test of the aircraft. */
    public TestCard card(String test) {
        return TestDeck.of(file.circuit()).stream()
                .filter(card -> card.id().equals(test))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no test '" + test + "'"));
    }

    /** What is seen. */
    public Scene scene() {
        return file.scene();
    }

    /** Units known to respond, those not named included where all others do. */
    public Set<String> alive() {
        return file.fit().alive();
    }

    /** Units commanded through a silent one: nothing can be heard of them meanwhile. */
    public Set<String> behind() {
        return file.behind();
    }

    /** The aircraft in the state it is searched in. */
    public Circuit circuit() {
        return file.circuit();
    }
}
