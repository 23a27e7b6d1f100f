package ringout.check.power;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiFunction;
import ringout.check.form.Gaps;
import ringout.check.form.Situation;
import ringout.graph.Directory;
import ringout.graph.Gap;
import ringout.graph.power.Consumer;
import ringout.graph.power.PowerGraph;
import ringout.solve.power.PowerFlow;

/** What checks of overloaded leads and contacts have in common. */
final class Overload {
    /** Less than an eighth of what the thinnest wire of the table carries in the fullest bundle, in A: no lead and no contact minds. */
    static final double NEGLIGIBLE_A = 0.05;

    /** What a solved current may differ by from the sum of its loads. */
    private static final double ROUNDING = 1e-6;

    private Overload() {}

    /** Whether a current is above a limit, both in A. */
    static boolean over(double amps, double limit) {
        return amps > limit * (1 + ROUNDING);
    }

    /** Notes averages and efficiencies that are missing behind the leads. */
    static void averages(Situation at, PowerFlow flow, Gaps gaps) {
        loads(at, gaps, PowerData.AVERAGE, LoadGaps::averages);
        flow.assumed().stream()
                .map(assumption -> assumption.gap())
                .filter(gap -> gap.datum().equals(PowerData.EFFICIENCY))
                .forEach(gap -> gaps.add(List.of(gap)));
    }

    /** Notes peaks that are missing behind the leads. */
    static void peaks(Situation at, Gaps gaps) {
        loads(at, gaps, PowerData.PEAK, LoadGaps::peaks);
    }

    private static void loads(
            Situation at, Gaps gaps, String datum, BiFunction<Directory, Consumer, List<Gap>> missing) {
        PowerGraph power = PowerGraph.of(at.circuit());
        List<Gap> open = new ArrayList<>();
        for (Consumer consumer : power.consumers()) {
            if (at.circuit().aboard(consumer.unit()) && power.fed(consumer.plus())) {
                open.addAll(missing.apply(at.directory(), consumer));
            }
        }
        open.removeIf(gap -> !gap.datum().equals(datum));
        gaps.add(open);
    }
}
