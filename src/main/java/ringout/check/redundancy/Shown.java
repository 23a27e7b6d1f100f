package ringout.check.redundancy;

import java.util.List;
import java.util.Locale;
import ringout.check.form.Situation;
import ringout.model.AircraftFunction;
import ringout.model.Indication;
import ringout.model.Unit;

/** What shows that something is lost. */
final class Shown {
    private Shown() {}

    /** Whether anybody has begun to write down what shows the loss of a function. */
    static boolean begun(Situation at) {
        return at.aircraft().functions().stream()
                .anyMatch(function -> !function.indications().isEmpty()
                        || !function.preflight().isMissing());
    }

    /** Whether an indication that is on tells of a function. */
    static boolean indicated(Situation at, AircraftFunction function) {
        return function.indications().stream()
                        .anyMatch(shows -> !function.indicationsOff().contains(shows))
                || told(at, function.name());
    }

    /** Whether the type of a unit aboard lists an indication of a function, unit or plug. */
    static boolean told(Situation at, String of) {
        List<Unit> units = at.aircraft().units();
        for (int unit = 0; unit < units.size(); unit++) {
            if (at.circuit().aboard(unit)) {
                for (Indication indication : at.directory().type(unit).indications()) {
                    if (same(indication.of().or(""), of)) {
                        return true;
                    }
                }
            }
        }
        return false;
    }

    static boolean same(String a, String b) {
        return a.strip().toUpperCase(Locale.ROOT).equals(b.strip().toUpperCase(Locale.ROOT));
    }
}
