package ringout.check.topology;

import java.util.List;
import java.util.Locale;
import ringout.check.form.Outcomes;
import ringout.model.Lead;

/** Lengths in findings: mm in the list, metres with two decimals in words. */
final class Metres {
    private Metres() {}

    static String words(double mm) {
        return String.format(Locale.ROOT, "%.2f", mm / 1000);
    }

    static double of(double mm) {
        return mm / 1000;
    }

    /** Asks for the lengths of leads in one line. */
    static void ask(Outcomes out, List<Lead> bare) {
        List<String> ids = bare.stream().map(Lead::id).distinct().toList();
        out.cannotTell(
                "length of " + String.join(", ", ids),
                "measure plug to plug",
                2 * ids.size(),
                ids.toArray(new String[0]));
    }
}
