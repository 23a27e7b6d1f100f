package ringout.check.installation;

import java.util.ArrayList;
import java.util.List;
import ringout.check.form.Gaps;
import ringout.check.form.Situation;
import ringout.model.CurrentLoop;
import ringout.model.Unit;

/**
 * What changing currents do to one compass, as check M13 adds it up.
 *
 * @param compass unit that holds it
 * @param pairs the arithmetic of each pair that could be computed
 * @param uncounted pairs of which a datum is missing
 * @param levelUt the most the level part of the field changes, microtesla, of the pairs that could be computed
 */
public record CompassField(String compass, List<String> pairs, List<String> uncounted, double levelUt) {
    /** Keeps its own copies. */
    public CompassField {
        pairs = List.copyOf(pairs);
        uncounted = List.copyOf(uncounted);
    }

    /** {@return one for each compass aboard} */
    public static List<CompassField> of(Situation at) {
        List<Integer> compasses = CompassNearCurrent.compasses(at);
        List<CompassField> fields = new ArrayList<>();
        for (int unit : compasses) {
            Unit compass = at.directory().unit(unit);
            List<ChangingPair> known = new ArrayList<>();
            List<String> open = new ArrayList<>();
            for (CurrentLoop loop : CompassNearCurrent.loops(at, unit, compasses.size() == 1)) {
                ChangingPair.of(at, loop, compass, new Gaps()).ifPresentOrElse(known::add, () -> open.add(loop.name()));
            }
            fields.add(new CompassField(
                    compass.ref(),
                    known.stream().map(ChangingPair::words).toList(),
                    open,
                    new CompassDraft(at, compass, known).level()));
        }
        return fields;
    }
}
