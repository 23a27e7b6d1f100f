package ringout.trace.campaign;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import ringout.graph.Circuit;
import ringout.graph.SmallAircraft;
import ringout.trace.candidate.Candidate;
import ringout.trace.choice.ExactPlan;
import ringout.trace.choice.Rules;
import ringout.trace.diagnosis.Opening;
import ringout.trace.diagnosis.Problem;
import ringout.trace.diagnosis.Question;
import ringout.trace.diagnosis.Suspect;
import ringout.trace.predict.FaultDictionary;
import ringout.trace.predict.Predictions;
import ringout.trace.predict.TestCard;
import ringout.trace.predict.TestDeck;

/**
 * Searches of a sample that are small enough for an exact plan: some of the faults that look alike at the modules, some of the tests that tell
 * them apart, with their own minutes, lids, weights and repairs; each outcome taken for certain, as the exact plan needs it. The cost of the
 * plans by rule over that of the best plan there is.
 */
public final class SmallSearches {
    private static final int MOST_SUSPECTS = 14;
    private static final int MOST_TESTS = 12;
    private static final int LEVELS = 2;

    private final Circuit circuit;
    private final List<List<Candidate>> classes;
    private final List<double[]> ratios = new ArrayList<>();
    private final Set<Double> optima = new HashSet<>();

    private SmallSearches(String sample) {
        this.circuit = SmallAircraft.circuit(SmallAircraft.sample(sample));
        this.classes = FaultDictionary.of(circuit).classes().entrySet().stream()
                .filter(entry -> !entry.getKey().latent())
                .map(Map.Entry::getValue)
                .filter(alike -> repairs(alike) >= 3)
                .toList();
    }

    /** So many searches of a sample, by chance. */
    public static SmallSearches on(String sample, int count, long seed) {
        SmallSearches searches = new SmallSearches(sample);
        Random random = new Random(seed);
        while (searches.ratios.size() < count) {
            searches.one(random);
        }
        return searches;
    }

    private static long repairs(List<Candidate> some) {
        return some.stream().map(one -> one.repair().id()).distinct().count();
    }

    private void one(Random random) {
        List<Candidate> alike = new ArrayList<>(classes.get(random.nextInt(classes.size())));
        Collections.shuffle(alike, random);
        List<Candidate> some = alike.subList(0, Math.min(MOST_SUSPECTS, alike.size()));
        List<TestCard> telling = different(TestDeck.telling(circuit, some), some);
        Collections.shuffle(telling, random);
        List<TestCard> cards = telling.subList(0, Math.min(MOST_TESTS, telling.size()));
        if (repairs(some) < 3 || cards.size() < 3) {
            return;
        }
        ExactPlan plan = new ExactPlan(problem(some, cards), Rules.TO_THE_END);
        double optimum = plan.optimum();
        if (optimum > 0) {
            optima.add(optimum);
            double[] ratio = new double[LEVELS + 1];
            for (int level = 0; level <= LEVELS; level++) {
                ratio[level] = plan.byLevel(level) / optimum;
            }
            ratios.add(ratio);
        }
    }

    /** Of tests that tell the same apart the quickest. */
    private List<TestCard> different(List<TestCard> telling, List<Candidate> some) {
        Predictions predictions = Predictions.of(circuit);
        Map<List<String>, TestCard> quickest = new LinkedHashMap<>();
        for (TestCard card : telling) {
            List<String> shows = some.stream()
                    .map(one -> predictions.of(one, card.test()).likeliest())
                    .toList();
            quickest.merge(shows, card, (a, b) -> a.allMinutes() <= b.allMinutes() ? a : b);
        }
        return new ArrayList<>(quickest.values());
    }

    private Problem problem(List<Candidate> some, List<TestCard> cards) {
        Predictions predictions = Predictions.of(circuit);
        Set<String> lids = new LinkedHashSet<>();
        some.forEach(one -> lids.addAll(one.opening().covers()));
        cards.forEach(card -> lids.addAll(card.opening().covers()));
        return new Problem(
                some.stream().map(SmallSearches::suspect).toList(),
                cards.stream().map(SmallSearches::question).toList(),
                lids.stream().map(lid -> new Opening(lid, 6)).toList(),
                0,
                q -> some.stream()
                        .map(one -> certain(
                                cards.get(q),
                                predictions.of(one, cards.get(q).test()).likeliest()))
                        .toArray(double[][]::new));
    }

    private static Suspect suspect(Candidate one) {
        return new Suspect(
                one.id(),
                one.weight(),
                one.repair().id(),
                one.repair().minutes(),
                one.opening().covers());
    }

    private static Question question(TestCard card) {
        return new Question(card.title(), card.minutes(), 0, 0, card.opening().covers(), card.outcomes(), 0);
    }

    private static double[] certain(TestCard card, String outcome) {
        double[] row = new double[card.outcomes().size()];
        row[card.outcomes().indexOf(outcome)] = 1;
        return row;
    }

    /** Number of different costs found, which says that the searches are not one and the same. */
    int kinds() {
        return optima.size();
    }

    /** Puts other searches to these. */
    public void addAll(SmallSearches other) {
        ratios.addAll(other.ratios);
        optima.addAll(other.optima);
    }

    /** Mean cost over the optimum of a level: 0 by information a minute, 1 by rollout, 2 by rollout of rollouts. */
    public double mean(int level) {
        return ratios.stream().mapToDouble(one -> one[level]).average().orElse(Double.NaN);
    }

    /** The ratio that so much of the searches stay at or below. */
    public double quantile(int level, double share) {
        double[] sorted =
                ratios.stream().mapToDouble(one -> one[level]).sorted().toArray();
        return sorted[Math.max(0, (int) Math.ceil(share * sorted.length) - 1)];
    }

    @Override
    public String toString() {
        StringBuilder text = new StringBuilder();
        for (int level = 0; level <= LEVELS; level++) {
            text.append(String.format(
                    Locale.ROOT,
                    "%d small searches, level %d over the optimum: mean %.4f, p95 %.4f, most %.4f%n",
                    ratios.size(),
                    level,
                    mean(level),
                    quantile(level, 0.95),
                    quantile(level, 1)));
        }
        return text.toString();
    }
}
