package ringout.model;

import java.util.List;

/** What a lead meets at a point of its way. */
public enum PointFlag implements Word {
    /** edge. */
    EDGE("edge"),
    /** hinge. */
    HINGE("hinge"),
    /** flex. */
    FLEX("flex", "fold"),
    /** hole. */
    HOLE("hole"),
    /** clamp. */
    CLAMP("clamp"),
    /** sweep. */
    SWEEP("sweep"),
    /** bend. */
    BEND("bend"),
    /** carbon. */
    CARBON("carbon"),
    /** break-out. */
    BREAKOUT("break-out", "breakout");

    @SuppressWarnings("ImmutableEnumChecker") // List.of is immutable
    private final List<String> words;

    PointFlag(String... words) {
        this.words = List.of(words);
    }

    @Override
    public List<String> words() {
        return words;
    }
}
