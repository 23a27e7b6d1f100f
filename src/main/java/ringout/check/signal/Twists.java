package ringout.check.signal;

import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/**
 * Which contacts have their conductors twisted together, as a lead lists them: {@code 1-2 3-6 4-5 7-8}.
 *
 * @param pairs each pair in both orders
 */
record Twists(Set<List<String>> pairs) {
    private static final int TWO = 2;

    /** Reads a list of pairs; what is no pair is left out. */
    static Twists of(String text) {
        Set<List<String>> pairs = new HashSet<>();
        for (String word : text.toUpperCase(Locale.ROOT).strip().split("[\\s,;]+", -1)) {
            String[] pins = word.split("-", -1);
            if (pins.length == TWO) {
                pairs.add(List.of(pins[0], pins[1]));
                pairs.add(List.of(pins[1], pins[0]));
            }
        }
        return new Twists(pairs);
    }

    /** Whether the conductors at two contacts are twisted together. */
    boolean together(String a, String b) {
        return pairs.contains(List.of(a.toUpperCase(Locale.ROOT), b.toUpperCase(Locale.ROOT)));
    }
}
