package ringout.trace.predict;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import ringout.graph.Circuit;
import ringout.trace.candidate.Candidate;
import ringout.trace.candidate.Candidates;

/**
 * Where a test point would separate most faults: measurements that can be made with everything mated, chosen one after the
 * other by how many classes of faults they leave apart, beginning with what the modules show by themselves. Greedy choice,
 * which for coverage of pairs is within (1 - 1/e) of the best.
 */
public final class TestPoints {
    /**
     * A test point chosen.
     *
     * @param card the measurement made there
     * @param classes number of classes of faults apart with it and all chosen before
     * @param ambiguity how many faults are left alike on average, over all faults
     */
    public record Point(TestCard card, int classes, double ambiguity) {}

    private final List<Candidate> candidates;
    private final int alone;
    private final double ambiguityAlone;
    private final List<Point> points = new ArrayList<>();
    private final List<List<Candidate>> neverApart;

    private TestPoints(Circuit circuit, int most) {
        this.candidates = Candidates.of(circuit).all();
        Predictions predictions = Predictions.of(circuit);
        int[] groups = group(predictions);
        this.alone = count(groups);
        this.ambiguityAlone = ambiguity(groups);
        Map<TestCard, int[]> shown = shown(circuit, predictions);
        while (points.size() < most) {
            int before = count(groups);
            int best = before;
            List<TestCard> next = new ArrayList<>();
            for (Map.Entry<TestCard, int[]> entry : shown.entrySet()) {
                int classes = count(split(groups, entry.getValue()));
                if (classes > best) {
                    best = classes;
                    next.clear();
                    next.add(entry.getKey());
                }
            }
            if (next.isEmpty()) {
                break;
            }
            groups = split(groups, shown.getOrDefault(next.get(0), groups));
            points.add(new Point(next.get(0), best, ambiguity(groups)));
        }
        for (int[] outcomes : shown.values()) {
            groups = split(groups, outcomes);
        }
        this.neverApart = alike(groups);
    }

    /**
     * The best places for test points.
     *
     * @param most how many at most
     */
    public static TestPoints of(Circuit circuit, int most) {
        return new TestPoints(circuit, most);
    }

    /** Number of classes apart by what the modules show, without any test point. */
    public int classesWithout() {
        return alone;
    }

    /** How many faults are alike on average without any test point. */
    public double ambiguityWithout() {
        return ambiguityAlone;
    }

    /** The points, best first. */
    public List<Point> points() {
        return List.copyOf(points);
    }

    /** Groups of two and more faults that no measurement with everything mated tells apart, the largest first. */
    public List<List<Candidate>> neverApart() {
        return neverApart;
    }

    private int[] group(Predictions predictions) {
        Map<Signature, Integer> numbers = new HashMap<>();
        int[] groups = new int[candidates.size()];
        for (int i = 0; i < groups.length; i++) {
            Signature seen = predictions.signature(candidates.get(i));
            Integer known = numbers.putIfAbsent(seen, numbers.size());
            groups[i] = known == null ? numbers.size() - 1 : known;
        }
        return groups;
    }

    private Map<TestCard, int[]> shown(Circuit circuit, Predictions predictions) {
        List<TestCard> cards = TestDeck.of(circuit).stream()
                .filter(card -> measured(card.test()))
                .toList();
        Map<TestCard, int[]> shown = new LinkedHashMap<>();
        cards.forEach(card -> shown.put(card, new int[candidates.size()]));
        for (int i = 0; i < candidates.size(); i++) {
            for (Map.Entry<TestCard, int[]> entry : shown.entrySet()) {
                TestCard card = entry.getKey();
                String outcome = predictions.of(candidates.get(i), card.test()).likeliest();
                entry.getValue()[i] = card.outcomes().indexOf(outcome);
            }
        }
        return shown;
    }

    private static boolean measured(FieldTest test) {
        return test instanceof FieldTest.Volts
                || test instanceof FieldTest.LegVolts
                || test instanceof FieldTest.LegToZero
                || (test instanceof FieldTest.BusOhms ohms && ohms.side() == FieldTest.BusOhms.Side.MATED);
    }

    private static int[] split(int[] groups, int[] outcomes) {
        Map<Long, Integer> numbers = new HashMap<>();
        int[] finer = new int[groups.length];
        for (int i = 0; i < groups.length; i++) {
            long key = ((long) groups[i] << 32) | (outcomes[i] & 0xffffffffL);
            Integer known = numbers.putIfAbsent(key, numbers.size());
            finer[i] = known == null ? numbers.size() - 1 : known;
        }
        return finer;
    }

    private static int count(int[] groups) {
        return Arrays.stream(groups).max().orElse(-1) + 1;
    }

    private static double ambiguity(int[] groups) {
        int[] sizes = new int[count(groups)];
        for (int group : groups) {
            sizes[group]++;
        }
        return groups.length == 0
                ? 0
                : Arrays.stream(groups).mapToDouble(g -> sizes[g]).sum() / groups.length;
    }

    private List<List<Candidate>> alike(int[] groups) {
        List<List<Candidate>> found = new ArrayList<>();
        for (int i = 0; i < count(groups); i++) {
            found.add(new ArrayList<>());
        }
        for (int i = 0; i < groups.length; i++) {
            found.get(groups[i]).add(candidates.get(i));
        }
        found.removeIf(group -> group.size() < 2);
        found.sort((a, b) -> Integer.compare(b.size(), a.size()));
        return found.stream().map(List::copyOf).toList();
    }
}
