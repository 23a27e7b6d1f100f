package ringout.draw.scene;

/** Which shape a badge has; the shape and the number carry the message, the colour only supports it. */
public enum BadgeKind {
    /** Severity 1: octagon; a faulty element is cased in cross-hatching. */
    S1("S1"),
    /** Severity 2: triangle; casing in diagonal hatching. */
    S2("S2"),
    /** Severity 3: square; casing in dots. */
    S3("S3"),
    /** Severity 4: circle; no casing. */
    S4("S4"),
    /** Cannot tell: diamond with a question mark; no casing. */
    CANNOT_TELL("Q");

    private final String word;

    BadgeKind(String word) {
        this.word = word;
    }

    /** {@return the word of the finding list: S1 to S4, or Q} */
    public String word() {
        return word;
    }

    /** {@return whether an element with this badge is drawn with a thick casing} */
    public boolean hasCasing() {
        return this == S1 || this == S2 || this == S3;
    }
}
