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
    /** To set an address, a rate, a port or a terminator, as to read it over the service port. Judgement, no source. */
    static final double SET_MINUTES = 4;

    /** To exchange a unit for one set alike, or load its firmware anew. Judgement, no source. */
    static final double UNIT_MINUTES = 25;

    /** To make a lead again, or lay a known good one. Judgement, no source. */
    private static final double LEAD_MINUTES = 15;

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

    /** {@return the exchange of a unit} */
    static Repair unit(String unit) {
        return new Repair(Sort.UNIT, unit, "replace " + unit + ", set alike", UNIT_MINUTES);
    }

    /** {@return a lead made again or exchanged} */
    static Repair lead(String lead) {
        return new Repair(Sort.LEAD, lead, "remake or replace lead " + lead, LEAD_MINUTES);
    }

    /** Equal for all candidates that this repair clears. */
    public String id() {
        return sort.name().toLowerCase(java.util.Locale.ROOT) + " " + object;
    }
}
