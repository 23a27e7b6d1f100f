package ringout.trace.consistency;

import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Three multipliers, two adders: x = A C, y = B D, z = C E, F = x + y, G = y + z, with A 3, B 2, C 2, D 3, E 3 and F seen as 10 where 12 is
 * right (de Kleer and Williams, Artificial Intelligence 32, 1987; the paper itself not read, the circuit from lecture notes).
 */
final class Polybox implements SoundParts {
    static final List<String> PARTS = List.of("M1", "M2", "M3", "A1", "A2");

    /** Part, where its result stands, its operands. */
    private static final List<List<String>> LAWS = List.of(
            List.of("M1", "x", "A", "C"),
            List.of("M2", "y", "B", "D"),
            List.of("M3", "z", "C", "E"),
            List.of("A1", "F", "x", "y"),
            List.of("A2", "G", "y", "z"));

    private static final Map<String, Integer> SEEN = Map.of("A", 3, "B", 2, "C", 2, "D", 3, "E", 3, "F", 10, "G", 12);

    @Override
    public boolean isConsistent(BitSet faulty) {
        return solve(faulty).isPresent();
    }

    @Override
    public Optional<String> predicts(BitSet faulty, String point) {
        return solve(faulty).map(values -> values.get(point)).map(String::valueOf);
    }

    /** Values that follow, forwards through the parts and backwards through the adders; empty when two disagree. */
    private static Optional<Map<String, Integer>> solve(BitSet faulty) {
        Map<String, Integer> values = new HashMap<>(SEEN);
        int before;
        do {
            before = values.size();
            for (int part = 0; part < LAWS.size(); part++) {
                if (!faulty.get(part) && !apply(LAWS.get(part), values)) {
                    return Optional.empty();
                }
            }
        } while (values.size() > before);
        return Optional.of(values);
    }

    private static boolean apply(List<String> law, Map<String, Integer> values) {
        Integer result = values.get(law.get(1));
        Integer one = values.get(law.get(2));
        Integer other = values.get(law.get(3));
        boolean adds = law.get(0).startsWith("A");
        if (one != null && other != null) {
            int follows = adds ? one + other : one * other;
            values.putIfAbsent(law.get(1), follows);
            return result == null || result == follows;
        }
        if (adds && result != null && (one != null || other != null)) {
            values.put(law.get(one == null ? 2 : 3), result - (one == null ? other : one));
        }
        return true;
    }
}
