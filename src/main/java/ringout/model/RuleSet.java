package ringout.model;

import java.util.List;

/** Rule set for wires and fuses. */
public enum RuleSet implements Word {
    /** short-lead practice. */
    SHORT_LEAD("short-lead practice"),
    /** aircraft chart. */
    AIRCRAFT_CHART("aircraft chart");

    @SuppressWarnings("ImmutableEnumChecker") // List.of is immutable
    private final List<String> words;

    RuleSet(String... words) {
        this.words = List.of(words);
    }

    @Override
    public List<String> words() {
        return words;
    }
}
