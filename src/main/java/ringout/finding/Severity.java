package ringout.finding;

/** What the world does at the first wrong moment. */
public enum Severity {
    /** Do not power: damage, fire or injury the moment power is applied. */
    S1("do not power"),
    /** Do not fly: loss of control or of a function flight depends on, also silent loss of a protection. */
    S2("do not fly"),
    /** Fix before hand-over: margin gone, mission loss, latent redundancy loss. */
    S3("fix before hand-over"),
    /** Tidy: maintainability, labelling, documentation. */
    S4("tidy"),
    /** Note: worth knowing. */
    S5("note");

    private final String words;

    Severity(String words) {
        this.words = words;
    }

    /** The name in words. */
    public String words() {
        return words;
    }

    /** Whether this is as severe as another or more. */
    public boolean atLeast(Severity other) {
        return compareTo(other) <= 0;
    }
}
