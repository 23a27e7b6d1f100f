package ringout.check.redundancy;

import java.util.HashSet;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import ringout.check.form.Situation;
import ringout.graph.Circuit;
import ringout.model.AircraftFunction;
import ringout.model.Datum;
import ringout.model.Indication;

/** What shows that something is lost. */
final class Shown {
    private final Set<String> told = new HashSet<>();
    private final Set<String> unsaid = new TreeSet<>();

    private Shown(Circuit circuit) {
        int units = circuit.wiring().aircraft().units().size();
        for (int unit = 0; unit < units; unit++) {
            if (circuit.aboard(unit)) {
                for (Indication indication :
                        circuit.wiring().directory().type(unit).indications()) {
                    indication.of().known().ifPresent(of -> told.add(fold(of)));
                    if (indication.of() instanceof Datum.Unknown) {
                        unsaid.add(circuit.wiring().directory().name(unit));
                    }
                }
            }
        }
    }

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
        return at.circuit().know(Shown.class, Shown::new).told.contains(fold(of));
    }

    /** Units aboard with an indication of which nobody said what it tells. */
    static Set<String> unsaid(Situation at) {
        return at.circuit().know(Shown.class, Shown::new).unsaid;
    }

    static boolean same(String a, String b) {
        return fold(a).equals(fold(b));
    }

    private static String fold(String name) {
        return name.strip().toUpperCase(Locale.ROOT);
    }
}
