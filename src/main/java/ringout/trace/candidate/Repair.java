package ringout.trace.candidate;

/**
 * What one does about a fault. Candidates with an equal repair need not be told apart.
 *
 * @param sort what is worked on
 * @param object the lead, unit, plug or port, as the list names it
 * @param action what is done, as an order: "remake or replace lead W68"
 * @param minutes hands-on time without opening covers; judgement, no source
 */
public record Repair(Sort sort, String object, String action, double minutes) {
    /** What is worked on. */
    public enum Sort {
        /** A lead is remade or exchanged. */
        LEAD,
        /** A plug is seated, moved or cleaned. */
        PLUG,
        /** A unit is exchanged. */
        UNIT,
        /** A setting or a terminator is put right. */
        SETTING,
        /** A fuse, switch or link is put right. */
        PART,
        /** A lead is laid elsewhere. */
        ROUTE
    }

    /** Equal for all candidates that this repair clears. */
    public String id() {
        return sort.name().toLowerCase(java.util.Locale.ROOT) + " " + object;
    }
}
