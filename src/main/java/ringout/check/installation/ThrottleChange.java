package ringout.check.installation;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import ringout.check.form.Situation;
import ringout.graph.Wire;
import ringout.model.CurrentLoop;
import ringout.model.Datum;
import ringout.model.Lead;
import ringout.model.Origin;
import ringout.solve.power.LoadCase;
import ringout.solve.power.OperatingPoint;
import ringout.solve.power.PowerFlow;

/** How much the current of a pair changes between idle and full throttle. */
final class ThrottleChange {
    static final String DATUM = "change of current between idle and full throttle";

    private static final String LEFT_OUT = "left out";

    private ThrottleChange() {}

    /** As declared, or else as the loads make it flow; unknown when a load is not known. */
    static Datum<Double> of(Situation at, CurrentLoop loop, List<Lead> leads) {
        if (loop.changeA().isKnown() || leads.isEmpty()) {
            return loop.changeA();
        }
        OperatingPoint idle = at.operatingPoint(LoadCase.IDLE);
        OperatingPoint full = at.operatingPoint(LoadCase.PEAK);
        if (!(idle instanceof PowerFlow low) || !(full instanceof PowerFlow high) || lacking(idle) || lacking(full)) {
            return Datum.unknown();
        }
        Set<String> ids = leads.stream().map(Lead::id).collect(Collectors.toSet());
        double most = 0;
        for (Wire wire : at.wiring().wires()) {
            if (ids.contains(wire.lead().id())) {
                most = Math.max(most, Math.abs(high.amps(wire) - low.amps(wire)));
            }
        }
        return new Datum.Known<>(most, Origin.CALCULATED, "");
    }

    private static boolean lacking(OperatingPoint point) {
        return Stream.of(point)
                .flatMap(of -> of.assumed().stream())
                .anyMatch(assumption -> assumption.value().equals(LEFT_OUT)
                        || assumption.gap().datum().contains("current"));
    }
}
