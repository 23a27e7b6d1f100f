package ringout.check.installation;

import java.util.List;
import java.util.function.Function;
import ringout.check.form.Situation;
import ringout.model.Datum;
import ringout.model.Lead;

/** Whether a kind of record is begun: somebody has filled a field in, or marked it. One that nobody began is not asked for. */
final class Asked {
    private Asked() {}

    /** Whether a datum is more than an empty field. */
    static boolean is(Datum<?> datum) {
        return !(datum instanceof Datum.NotAsked);
    }

    /** Whether one of the fields is filled in or marked at any lead. */
    static boolean ofLeads(Situation at, List<Function<Lead, Datum<?>>> fields) {
        for (Lead lead : at.aircraft().leads()) {
            for (Function<Lead, Datum<?>> field : fields) {
                if (is(field.apply(lead))) {
                    return true;
                }
            }
        }
        return false;
    }
}
