package ringout.draw.lead;

import java.util.List;
import java.util.OptionalDouble;

/**
 * The scale of a lead: full size below 380 mm, else one of the reductions of ISO 5455 (from memory) that makes it short.
 *
 * @param words such as {@code 1:1}
 * @param drawnMm length on paper, mm
 * @param toScale whether lengths on paper mean anything
 */
record LeadScale(String words, double drawnMm, boolean toScale) {
    /** Longest lead at full size, mm: what the frame of A3 is wide. */
    static final double FULL_SIZE = 380;

    /** Shortest line that holds both plugs and both labels, mm. */
    static final double SHORTEST = 48;

    private static final double REDUCED = 120;

    static LeadScale of(OptionalDouble length) {
        if (length.isEmpty() || length.getAsDouble() <= 0) {
            return new LeadScale("not to scale: length not told", 90, false);
        }
        double mm = length.getAsDouble();
        if (mm < SHORTEST) {
            return new LeadScale("not to scale: too short", SHORTEST, false);
        }
        if (mm < FULL_SIZE) {
            return new LeadScale("1:1", mm, true);
        }
        for (int part : List.of(2, 5, 10, 20, 50, 100, 200)) {
            if (mm / part <= REDUCED) {
                return new LeadScale("1:" + part, mm / part, true);
            }
        }
        return new LeadScale("not to scale: too long", REDUCED, false);
    }
}
