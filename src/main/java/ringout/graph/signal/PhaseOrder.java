package ringout.graph.signal;

import java.util.List;
import java.util.Optional;

/**
 * How the three phases of a controller meet the three of a motor.
 *
 * @param pairs controller phase and motor phase, in the order of the controller's phases
 */
public record PhaseOrder(List<Pair> pairs) {
    /** Letter of a phase whose name is marked "?". */
    static final String UNKNOWN = "?";

    private static final int PHASES = 3;

    /**
     * Two phases that meet.
     *
     * @param controller phase letter of the controller: A, B, C
     * @param motor phase letter of the motor: U, V, W
     */
    public record Pair(String controller, String motor) {}

    /** Whether the letters of all phases that meet are known. */
    public boolean lettered() {
        return pairs.stream()
                .noneMatch(pair ->
                        pair.controller().equals(UNKNOWN) || pair.motor().equals(UNKNOWN));
    }

    /** Whether all three phases are joined, each to another. */
    public boolean complete() {
        return pairs.size() == PHASES
                && lettered()
                && pairs.stream().map(Pair::motor).distinct().count() == PHASES
                && pairs.stream().map(Pair::controller).distinct().count() == PHASES;
    }

    /**
     * Number of inversions of the permutation, phases in the order of their letters: an odd number turns the motor the
     * other way. Nothing when the phases are not complete.
     */
    public Optional<Integer> inversions() {
        if (!complete()) {
            return Optional.empty();
        }
        List<String> motor = pairs.stream()
                .sorted((a, b) -> a.controller().compareTo(b.controller()))
                .map(Pair::motor)
                .toList();
        int count = 0;
        for (int i = 0; i < motor.size(); i++) {
            for (int j = i + 1; j < motor.size(); j++) {
                count += motor.get(i).compareTo(motor.get(j)) > 0 ? 1 : 0;
            }
        }
        return Optional.of(count);
    }

    /** The order in words: {@code A-V, B-U, C-W}. */
    public String words() {
        return String.join(
                ", ", pairs.stream().map(p -> p.controller() + "-" + p.motor()).toList());
    }
}
