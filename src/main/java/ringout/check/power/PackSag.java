package ringout.check.power;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ringout.check.form.Figures;
import ringout.check.form.Situation;
import ringout.graph.Gap;
import ringout.graph.Part;
import ringout.graph.power.Consumer;
import ringout.graph.power.PowerGraph;
import ringout.graph.power.PowerSource;
import ringout.model.PartKind;

/**
 * How far packs sag inside when all loads behind them peak at once: the sum of peaks times the resistance of the cells in
 * series, shared by packs in parallel.
 */
final class PackSag {
    /**
     * What a supply loses.
     *
     * @param volts in V, as far as it is known
     * @param words the arithmetic: {@code 172 A x 18 mOhm}; empty when there is none
     * @param gaps data that are missing for it
     */
    record Sag(double volts, String words, List<Gap> gaps) {}

    private static final Sag NONE = new Sag(0, "", List.of());
    private static final double MILLI = 1000;

    private final Situation at;
    private final PowerGraph power;
    private final Map<Integer, Sag> byTie = new HashMap<>();

    PackSag(Situation at) {
        this.at = at;
        this.power = PowerGraph.of(at.circuit());
    }

    /** The sag of what feeds a consumer; none behind a regulator. */
    Sag of(Consumer consumer) {
        int tie = power.ties().of(consumer.plus());
        return byTie.computeIfAbsent(tie, key -> find(consumer.plus()));
    }

    private Sag find(int vertex) {
        List<PowerSource> packs = power.feeding(vertex).stream()
                .filter(source -> source.kind() == PowerSource.Kind.PACK)
                .toList();
        if (packs.isEmpty() || packs.size() < power.feeding(vertex).size()) {
            return NONE;
        }
        List<Gap> gaps = new ArrayList<>();
        double peak = 0;
        for (PowerSource pack : packs) {
            int top = power.bottom(pack).plus();
            peak += power.demand().peakA(top);
            if (!power.demand().peakKnown(top)) {
                List<Gap> peaks = peaksMissing(top);
                gaps.addAll(
                        peaks.isEmpty()
                                ? List.of(new Gap(
                                        "nominal voltage", at.directory().name(pack.unit())))
                                : peaks);
            }
        }
        Optional<Double> milliohm = stack(packs.get(0), gaps).map(r -> r / packs.size());
        if (milliohm.isEmpty()) {
            return new Sag(0, "", gaps);
        }
        String words = Figures.of(peak) + " A x " + Figures.of(milliohm.get()) + " mOhm";
        return new Sag(peak * milliohm.get() / MILLI, words, gaps);
    }

    /** Resistance in mOhm of a pack and of those it stands on. */
    private Optional<Double> stack(PowerSource top, List<Gap> gaps) {
        double sum = 0;
        PowerSource pack = top;
        for (int guard = power.sources().size(); guard > 0; guard--) {
            if (!pack.milliohm().isKnown()) {
                gaps.add(new Gap(PowerData.PACK_OHM, at.directory().name(pack.unit())));
                return Optional.empty();
            }
            sum += pack.milliohm().or(0.0);
            List<PowerSource> below = power.lifting(power.ties().of(pack.minus()));
            if (below.isEmpty()) {
                break;
            }
            pack = below.get(0);
        }
        return Optional.of(sum);
    }

    private List<Gap> peaksMissing(int top) {
        List<Gap> gaps = new ArrayList<>();
        for (Consumer consumer : power.consumers()) {
            boolean own = consumer.loads().isEmpty()
                    ? consumer.draws()
                    : consumer.loads().stream().anyMatch(load -> load.peakA().isMissing());
            if (own && power.tree().reaches(consumer.plus()) && power.tree().rootOf(consumer.plus()) == top) {
                gaps.add(new Gap(PowerData.PEAK, at.directory().name(consumer.unit())));
            }
        }
        for (PowerSource source : power.sources()) {
            if (power.works(source) && converts(source) && power.demand().peakA(source.plus()) > 0) {
                gaps.add(new Gap(PowerData.EFFICIENCY, at.directory().name(source.unit())));
            }
        }
        return gaps;
    }

    /** Whether a source is a regulator whose efficiency is not known. */
    private boolean converts(PowerSource source) {
        return source.part() >= 0
                && at.wiring().parts().get(source.part()).origin() instanceof Part.Inner inner
                && !inner.part().kind().is(PartKind.LINEAR_REGULATOR)
                && source.kind() != PowerSource.Kind.PACK
                && !inner.part().rating().efficiency().isKnown();
    }
}
