package ringout.trace.consistency;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import ringout.trace.diagnosis.Problem;
import ringout.trace.diagnosis.Question;
import ringout.trace.diagnosis.Suspect;

/**
 * Sets of faulty parts as suspects of a problem. A set agrees with every outcome of a point it predicts nothing of (likelihood 1, pure
 * consistency; de Kleer and Williams 1987 use one over the number of outcomes instead, which lowers double faults further).
 *
 * @param parts names of the parts
 * @param chance of each part to be faulty beforehand, independent of the others
 * @param sets the sets that agree with what was seen, smallest first
 */
public record FaultSets(List<String> parts, List<Double> chance, List<BitSet> sets) {
    private static final int MOST_PARTS = 20;

    /** Keeps its own copies. */
    public FaultSets {
        parts = List.copyOf(parts);
        chance = List.copyOf(chance);
        sets = List.copyOf(sets);
    }

    /** All sets that agree, of at most 20 parts. */
    public static FaultSets of(List<String> parts, List<Double> chance, SoundParts circuit) {
        if (parts.size() > MOST_PARTS || parts.size() != chance.size()) {
            throw new IllegalArgumentException(
                    parts.size() + " parts with " + chance.size() + " chances, at most " + MOST_PARTS);
        }
        List<BitSet> sets = new ArrayList<>();
        for (long bits = 0; bits < 1L << parts.size(); bits++) {
            BitSet faulty = BitSet.valueOf(new long[] {bits});
            if (circuit.isConsistent(faulty)) {
                sets.add(faulty);
            }
        }
        sets.sort((a, b) -> Integer.compare(a.cardinality(), b.cardinality()));
        return new FaultSets(parts, chance, sets);
    }

    /** Name of a set: its parts with a plus between. */
    public String name(BitSet faulty) {
        return faulty.isEmpty()
                ? "nothing"
                : faulty.stream().mapToObj(parts::get).collect(Collectors.joining("+"));
    }

    /** The sets as suspects, with points to probe, one minute each; the outcomes of a point are the values that some set predicts. */
    public Problem problem(List<String> points, SoundParts circuit) {
        List<List<String>> values = points.stream()
                .map(point -> sets.stream()
                        .flatMap(set -> circuit.predicts(set, point).stream())
                        .distinct()
                        .sorted()
                        .toList())
                .toList();
        List<Question> questions = IntStream.range(0, points.size())
                .mapToObj(k -> Question.outside(points.get(k), 1, withOther(values.get(k))))
                .toList();
        List<Suspect> suspects = sets.stream()
                .map(set -> new Suspect(name(set), weight(set), name(set), 0, List.of()))
                .toList();
        return new Problem(
                suspects, questions, List.of(), 0, k -> rows(points.get(k), withOther(values.get(k)), circuit));
    }

    /** A point where all sets agree still can show something else. */
    private static List<String> withOther(List<String> values) {
        List<String> all = new ArrayList<>(values);
        all.add("another value");
        return all;
    }

    private double[][] rows(String point, List<String> values, SoundParts circuit) {
        double[][] rows = new double[sets.size()][values.size()];
        for (int s = 0; s < rows.length; s++) {
            int row = s;
            circuit.predicts(sets.get(s), point)
                    .ifPresentOrElse(value -> rows[row][values.indexOf(value)] = 1, () -> Arrays.fill(rows[row], 1));
        }
        return rows;
    }

    private double weight(BitSet faulty) {
        double weight = 1;
        for (int part = 0; part < parts.size(); part++) {
            weight *= faulty.get(part) ? chance.get(part) : 1 - chance.get(part);
        }
        return weight;
    }
}
