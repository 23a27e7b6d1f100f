package ringout.trace.session;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import ringout.graph.Circuit;
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
import ringout.trace.diagnosis.Problem;
import ringout.trace.diagnosis.Reading;
import ringout.trace.diagnosis.RepairShare;
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
    /** Two faults that explain a thing together are about this likely beforehand on an aircraft: judgement, no source. */
    private static final double FAR_FETCHED = 1e-4;

    /** So much looking ahead that a step takes no longer than a technician's glance. */
    private static final Effort EFFORT = new Effort(1, 6, 12, 0.97, 40, 8, 0.02);

    private final CaseFile file;
    private final List<TestCard> cards;
    private final Progress progress;
    private final Problem problem;
    private final Observed observed;

    private Diagnosis(CaseFile file, List<TestCard> cards, Progress progress, Problem problem) {
        this.file = file;
        this.cards = cards;
        this.progress = progress;
        this.problem = problem;
        Observed all = Observed.NOTHING.open(List.copyOf(progress.opened()));
        for (TestReading reading : progress.readings()) {
            all = all.with(problem, numbered(reading));
        }
        this.observed = new Observed(all.readings(), all.opened(), List.copyOf(progress.vain()));
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
        return file.suspects().isEmpty() ? Optional.empty() : Optional.of(of(file, Progress.NONE));
    }

    private static Diagnosis of(CaseFile file, Progress progress) {
        Set<String> read = new TreeSet<>();
        progress.readings().forEach(reading -> read.add(reading.test()));
        List<TestCard> cards = file.cards(read).stream()
                .filter(card -> !progress.skipped().contains(card.id()) || read.contains(card.id()))
                .toList();
        return new Diagnosis(file, cards, progress, SearchProblem.of(file, cards));
    }

    /** Name of the repair action that cures a candidate: what is worked on, and what must come off for it. */
    public static String repairOf(Candidate candidate) {
        return SearchProblem.repairOf(candidate);
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

    /**
     * Whether the single faults that explain all that is seen are so unlikely beforehand that two faults at once are as likely.
     */
    public boolean farFetched() {
        return file.single() && file.rare() < FAR_FETCHED;
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
        Progress more = progress.read(reading);
        return number(reading.test()).isPresent() ? new Diagnosis(file, cards, more, problem) : of(file, more);
    }

    /** With lids off. */
    public Diagnosis open(Collection<String> lids) {
        return new Diagnosis(file, cards, progress.open(lids), problem);
    }

    /** Without the last reading. */
    public Diagnosis back() {
        return of(file, progress.back());
    }

    /** Without a test that cannot be made here and now. */
    public Diagnosis skipping(String test) {
        return of(file, progress.skip(test));
    }

    /** With a repair action done that cured nothing. */
    public Diagnosis inVain(String repair) {
        return of(file, progress.inVain(repair));
    }

    /** The same work with what is seen told anew. */
    public Diagnosis seeing(Scene scene) {
        return of(CaseFile.of(file.circuit(), scene, file.priors()), progress);
    }

    /** Another search taken up where one of this aircraft stood. */
    public Diagnosis resumed(Progress done) {
        return of(file, done);
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
        return progress.readings();
    }

    /** What was done so far. */
    public Progress progress() {
        return progress;
    }

    /** What is seen. */
    public Scene scene() {
        return file.scene();
    }

    /** Units known to respond, those not named included where all others do. */
    public Set<String> alive() {
        return file.fit().alive();
    }

    /** How what is seen speaks for a fault. */
    SceneFit fit() {
        return file.fit();
    }

    /** The card of a test of the aircraft. */
    public TestCard card(String test) {
        return TestDeck.of(file.circuit()).stream()
                .filter(card -> card.id().equals(test))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no test '" + test + "'"));
    }

    /** Two faults at once; none offered while a single one explains everything. */
    public PairOffer pairs() {
        return PairOffer.of(this);
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
