package ringout.check.build;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import ringout.finding.Severity;
import ringout.graph.Wiring;
import ringout.model.Datum;
import ringout.model.PinRole;
import ringout.model.Prerequisite;
import ringout.model.UnitKind;
import ringout.model.UnitType;

/** What must be true of a unit before it is powered. */
final class Needs {
    private static final String PROPELLERS = "propeller";

    private Needs() {}

    /**
     * One condition.
     *
     * @param what the condition in words
     * @param severity when it is broken
     */
    record Need(String what, Severity severity) {
        /** The words that show that it was seen to: the first two of it, or of one of its alternatives. */
        boolean isMetBy(String words) {
            for (String alternative : what.toLowerCase(Locale.ROOT).split(" or ", -1)) {
                String[] parts = alternative.strip().split("\\s+", -1);
                String key = parts.length > 1 ? parts[0] + " " + parts[1] : parts[0];
                if (words.contains(key)) {
                    return true;
                }
            }
            return false;
        }
    }

    /** What the type says, and what follows from what it is. Propellers are looked at by their own check. */
    static List<Need> of(UnitType type) {
        List<Need> needs = new ArrayList<>();
        for (Prerequisite told : type.prerequisites()) {
            if (!told.what().toLowerCase(Locale.ROOT).contains(PROPELLERS)) {
                needs.add(new Need(told.what(), severity(told.severity())));
            }
        }
        boolean ejector = type.ejector().is(true)
                || (type.ejector().isMissing() && type.kind().is(UnitKind.EJECTOR));
        add(type.antenna().is(true), needs, "antenna", new Need("antenna or dummy load fitted", Severity.S1));
        add(ejector, needs, "safe pin", new Need("safe pin in", Severity.S1));
        return needs;
    }

    private static void add(boolean applies, List<Need> needs, String key, Need need) {
        if (applies && needs.stream().noneMatch(other -> other.what().contains(key))) {
            needs.add(need);
        }
    }

    private static Severity severity(Datum<String> told) {
        for (Severity severity : Severity.values()) {
            if (told.or("").strip().equalsIgnoreCase(severity.name())) {
                return severity;
            }
        }
        return Severity.S3;
    }

    /** Whether nobody said if a sender needs an antenna before power. */
    static boolean antennaUntold(UnitType type) {
        return type.antenna() instanceof Datum.Unknown
                || (type.antenna().isMissing() && !type.emits().isEmpty());
    }

    /** Whether a lead is on an antenna contact of a unit. */
    static boolean antennaWired(Wiring wiring, int unit) {
        for (int pin = wiring.firstPin(unit); pin < wiring.endPin(unit); pin++) {
            if (wiring.is(pin, PinRole.RF) && wiring.wiresAt(pin).length > 0) {
                return true;
            }
        }
        return false;
    }
}
