package ringout.trace.session;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedSet;
import java.util.TreeSet;
import ringout.graph.Circuit;
import ringout.solve.meter.Change;
import ringout.trace.candidate.Candidate;
import ringout.trace.candidate.Candidates;
import ringout.trace.diagnosis.Explanation;
import ringout.trace.diagnosis.PairTable;
import ringout.trace.diagnosis.Pairs;
import ringout.trace.diagnosis.Problem;
import ringout.trace.diagnosis.Question;
import ringout.trace.diagnosis.Reading;
import ringout.trace.diagnosis.Suspect;
import ringout.trace.predict.FieldTest;
import ringout.trace.predict.Predictions;
import ringout.trace.predict.Signature;
import ringout.trace.predict.TestCard;

/**
 * Two faults at once, when no single one explains all that is seen and read. Offered as <em>at least one of</em>, never as certain: repair the
 * likeliest, then observe again.
 *
 * @param pairs likeliest first
 * @param atLeastOneOf faults by falling chance of being one of the two
 */
public record PairOffer(List<Two> pairs, List<One> atLeastOneOf) {
    private static final PairOffer NONE = new PairOffer(List.of(), List.of());
    private static final int TOLD = 8;

    /**
     * Two faults.
     *
     * @param one a fault
     * @param other another
     * @param share among the pairs that explain everything
     */
    public record Two(Candidate one, Candidate other, double share) {}

    /**
     * A fault that may be one of two.
     *
     * @param candidate the fault
     * @param share of the pairs that have it
     */
    public record One(Candidate candidate, double share) {}

    /** Keeps its own copies. */
    public PairOffer {
        pairs = List.copyOf(pairs);
        atLeastOneOf = List.copyOf(atLeastOneOf);
    }

    /** The pairs of a search; none while one fault explains all. */
    static PairOffer of(Diagnosis search) {
        return needed(search) ? new Search(search).offer() : NONE;
    }

    private static boolean needed(Diagnosis search) {
        return !search.single()
                || search.farFetched()
                || !Explanation.isSingle(search.problem(), search.observed().readings());
    }

    /** Whether any pair was found. */
    public boolean any() {
        return !pairs.isEmpty();
    }

    /** What is seen as one question, the tests that were made as the others. */
    private static final class Search implements PairTable {
        private static final List<String> SEEN = List.of("as seen", "otherwise");

        private final Diagnosis search;
        private final Circuit circuit;
        private final Chances chances;
        private final List<Candidate> pool = new ArrayList<>();
        private final List<TestCard> cards = new ArrayList<>();
        private final Map<String, Signature> both = new HashMap<>();

        Search(Diagnosis search) {
            this.search = search;
            this.circuit = search.circuit();
            this.chances = Chances.of(circuit);
            SceneFit fit = search.fit();
            for (Candidate candidate : Candidates.of(circuit).all()) {
                if (candidate.weight() > 0 && !fit.against(signature(candidate))) {
                    pool.add(candidate);
                }
            }
            for (TestReading reading : search.readings()) {
                TestCard card = search.card(reading.test());
                if (!cards.contains(card)) {
                    cards.add(card);
                }
            }
        }

        private Signature signature(Candidate candidate) {
            return Predictions.of(circuit).signature(candidate);
        }

        PairOffer offer() {
            if (pool.size() < 2) {
                return NONE;
            }
            List<Question> questions = new ArrayList<>();
            questions.add(Question.outside("what is seen", 0, SEEN));
            cards.forEach(card -> questions.add(Question.outside(card.title(), card.minutes(), card.outcomes())));
            List<Suspect> suspects = pool.stream()
                    .map(one ->
                            new Suspect(one.title(), one.weight(), one.repair().id(), 0, List.of()))
                    .toList();
            Problem problem = new Problem(suspects, questions, List.of(), Problem.USUAL_UNKNOWN, this::rows);
            Pairs found = Pairs.of(problem, readings(), this);
            return new PairOffer(
                    found.pairs().stream()
                            .limit(TOLD)
                            .map(pair -> new Two(pool.get(pair.one()), pool.get(pair.other()), pair.share()))
                            .toList(),
                    found.atLeastOneOf().stream()
                            .limit(TOLD)
                            .map(one -> new One(pool.get(one.suspect()), one.share()))
                            .toList());
        }

        private List<Reading> readings() {
            List<Reading> all = new ArrayList<>(List.of(new Reading(0, 0)));
            for (TestReading reading : search.readings()) {
                int card = cards.indexOf(search.card(reading.test()));
                all.add(new Reading(card + 1, cards.get(card).outcomes().indexOf(reading.outcome())));
            }
            return all;
        }

        private double[][] rows(int question) {
            double[][] rows = new double[pool.size()][];
            for (int s = 0; s < rows.length; s++) {
                rows[s] = question == 0
                        ? seen(signature(pool.get(s)))
                        : chances.row(cards.get(question - 1), pool.get(s));
            }
            return rows;
        }

        private double[] seen(Signature signature) {
            double likelihood = search.fit().of(signature);
            return new double[] {likelihood, 1 - likelihood};
        }

        @Override
        public double[] row(int question, int one, int other) {
            Candidate a = pool.get(one);
            Candidate b = pool.get(other);
            if (question == 0) {
                return seen(both.computeIfAbsent(one + " " + other, key -> union(signature(a), signature(b))));
            }
            TestCard card = cards.get(question - 1);
            boolean meter = card.test() instanceof FieldTest.BusOhms || card.test() instanceof FieldTest.LegToZero;
            return meter ? chances.row(card, together(a, b)) : stronger(card, a, b);
        }

        /** Both edits of the graph at once: what an ohmmeter shows depends on them alone. */
        private static Candidate together(Candidate a, Candidate b) {
            List<Change> changes = new ArrayList<>(a.changes());
            b.changes().stream().filter(change -> !changes.contains(change)).forEach(changes::add);
            return new Candidate(
                    a.id() + " + " + b.id(),
                    a.kind(),
                    a.defect(),
                    a.title() + " and " + b.title(),
                    a.rows(),
                    a.repair(),
                    a.opening(),
                    0,
                    a.because(),
                    changes);
        }

        /** The one that alters what is shown; where both do, either may win. */
        private double[] stronger(TestCard card, Candidate a, Candidate b) {
            String sound = chances.sound(card).likeliest();
            double[] one = chances.row(card, a);
            double[] other = chances.row(card, b);
            if (chances.shows(card, a).likeliest().equals(sound)) {
                return other;
            }
            if (chances.shows(card, b).likeliest().equals(sound)) {
                return one;
            }
            double[] mean = new double[one.length];
            for (int o = 0; o < mean.length; o++) {
                mean[o] = (one[o] + other[o]) / 2;
            }
            return mean;
        }

        private static Signature union(Signature a, Signature b) {
            SortedSet<String> silent = plus(a.silent(), b.silent());
            SortedSet<String> erratic = plus(a.erratic(), b.erratic());
            erratic.removeAll(silent);
            return new Signature(silent, erratic, plus(a.dark(), b.dark()), plus(a.opened(), b.opened()));
        }

        private static SortedSet<String> plus(SortedSet<String> a, SortedSet<String> b) {
            SortedSet<String> all = new TreeSet<>(a);
            all.addAll(b);
            return all;
        }
    }
}
