package ringout.model;

import java.util.List;

/** Frames a bus node sends and understands. */
public enum FrameForm implements Word {
    /** classic. */
    CLASSIC("classic"),
    /** flexible. */
    FLEXIBLE("flexible", "fd");

    @SuppressWarnings("ImmutableEnumChecker") // List.of is immutable
    private final List<String> words;

    FrameForm(String... words) {
        this.words = List.of(words);
    }

    @Override
    public List<String> words() {
        return words;
    }
}
