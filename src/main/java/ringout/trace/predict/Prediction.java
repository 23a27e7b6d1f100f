package ringout.trace.predict;

import java.util.Map;

/**
 * What a test shows with a fault.
 *
 * @param shows in words: "118 ohm", "silent", "2.5 V on both"
 * @param outcomes probability of each outcome of the test; they add up to 1
 */
public record Prediction(String shows, Map<String, Double> outcomes) {
    /** The likeliest outcome. */
    public String likeliest() {
        return outcomes.entrySet().stream()
                .max(Map.Entry.comparingByValue())
                .map(Map.Entry::getKey)
                .orElse("");
    }
}
