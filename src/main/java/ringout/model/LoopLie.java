package ringout.model;

import java.util.List;

/** How a pair of conductors lies. */
public enum LoopLie implements Word {
    /** flat. */
    FLAT("flat"),
    /** on edge. */
    EDGE("on edge");

    @SuppressWarnings("ImmutableEnumChecker") // List.of is immutable
    private final List<String> words;

    LoopLie(String... words) {
        this.words = List.of(words);
    }

    @Override
    public List<String> words() {
        return words;
    }
}
