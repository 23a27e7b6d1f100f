package ringout.check.installation;

import java.util.Locale;
import java.util.Set;
import ringout.model.Datum;
import ringout.model.Lead;

/** What lies between a lead and the frame. */
final class Insulated {
    private static final Set<String> BARE = Set.of("none", "no", "without", "bare", "-", "0");

    private Insulated() {}

    /** Whether a sleeve is told: any word but none. */
    static boolean sleeved(Lead lead) {
        return lead.sleeve().isKnown() && !bare(lead.sleeve());
    }

    /** Whether the list says that there is none. */
    static boolean bare(Datum<String> sleeve) {
        return sleeve.isKnown() && BARE.contains(sleeve.or("").strip().toLowerCase(Locale.ROOT));
    }
}
