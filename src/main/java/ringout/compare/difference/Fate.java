package ringout.compare.difference;

/** What is usually decided about a difference between design and aircraft (common practice, no source). */
public enum Fate {
    /** Trace it on the aircraft before anything else. */
    TRACE("trace it on the aircraft before anything else"),
    /** Put the aircraft back to the list. */
    PUT_BACK("put the aircraft back"),
    /** Not for the bench to decide. */
    ENGINEERING("engineering decision; every joint and contact more counts in the drops"),
    /** Keep it and follow with the configuration. */
    CONFIGURE("keep if the function is the same, and update the configuration"),
    /** Keep it and write down why. */
    CHANGE_RECORD("keep with a change record"),
    /** Keep it and update the as-built list. */
    KEEP("keep while the checks stay clean, and update the as-built list"),
    /** No difference of the aircraft but another of its states. */
    STATE("a state and not a difference: declare it"),
    /** Nothing to decide. */
    RECORD("record only");

    private final String words;

    Fate(String words) {
        this.words = words;
    }

    /** What is done, in words. */
    public String words() {
        return words;
    }
}
