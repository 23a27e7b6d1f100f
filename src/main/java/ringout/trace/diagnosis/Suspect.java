package ringout.trace.diagnosis;

import java.util.List;

/**
 * One fault that may be present.
 *
 * @param name what is wrong and where
 * @param weight how likely before any test, against the other suspects; only ratios count
 * @param repair the repair action that cures it; suspects with the same action need not be told apart
 * @param repairMinutes hands-on minutes of that action, without what must be opened for it
 * @param openings what must be open to do it, by name of {@link Opening}
 */
public record Suspect(String name, double weight, String repair, double repairMinutes, List<String> openings) {
    /** Refuses a weight or a time that is negative or no number. */
    public Suspect {
        if (!(weight >= 0) || Double.isInfinite(weight)) {
            throw new IllegalArgumentException("weight of " + name + " is " + weight + ", must be 0 or more");
        }
        if (!(repairMinutes >= 0)) {
            throw new IllegalArgumentException("repair minutes of " + name + " are " + repairMinutes);
        }
        openings = List.copyOf(openings);
    }
}
