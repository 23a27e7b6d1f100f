package ringout.check.record;

import java.util.Optional;
import ringout.check.form.Situation;
import ringout.graph.Site;
import ringout.model.Unit;

/** The straight way between the units at the ends of a lead. */
final class Distances {
    private Distances() {}

    /** Distance in mm, where both units tell their place. */
    static Optional<Double> straight(Situation at, int row) {
        Optional<Unit> a = unit(at, at.wiring().from(row));
        Optional<Unit> b = unit(at, at.wiring().to(row));
        if (a.isEmpty() || b.isEmpty() || !placed(a.get()) || !placed(b.get())) {
            return Optional.empty();
        }
        double x = a.get().xMm().or(0.0) - b.get().xMm().or(0.0);
        double y = a.get().yMm().or(0.0) - b.get().yMm().or(0.0);
        double z = a.get().zMm().or(0.0) - b.get().zMm().or(0.0);
        return Optional.of(Math.sqrt(x * x + y * y + z * z));
    }

    private static boolean placed(Unit unit) {
        return unit.xMm().isKnown() && unit.yMm().isKnown() && unit.zMm().isKnown();
    }

    private static Optional<Unit> unit(Situation at, Site site) {
        int unit = site instanceof Site.OnPlug on ? on.unit() : site instanceof Site.OnPin on ? on.unit() : -1;
        return unit < 0 || at.directory().isJoint(unit)
                ? Optional.empty()
                : Optional.of(at.directory().unit(unit));
    }
}
