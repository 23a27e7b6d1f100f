package ringout.check.power;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import ringout.check.form.Situation;
import ringout.graph.Circuit;
import ringout.graph.Directory;
import ringout.graph.Gap;
import ringout.graph.Part;
import ringout.graph.power.Consumer;
import ringout.graph.power.Load;
import ringout.graph.power.PlacedLoad;
import ringout.graph.power.PowerGraph;
import ringout.graph.power.PowerSource;
import ringout.graph.power.SourceReach;
import ringout.model.Datum;
import ringout.model.PartKind;

/** Data of the loads behind every source that are missing for its current. */
final class LoadGaps {
    private final Map<Integer, Set<Gap>> average = new HashMap<>();
    private final Map<Integer, Set<Gap>> peak = new HashMap<>();
    private final Map<Integer, Set<Gap>> efficiency = new HashMap<>();

    private LoadGaps(Circuit circuit) {
        SourceReach reach = SourceReach.of(circuit);
        PowerGraph power = PowerGraph.of(circuit);
        Directory names = circuit.wiring().directory();
        for (PowerSource source : power.sources()) {
            for (Consumer consumer : reach.consumers(source)) {
                add(average, source, averages(names, consumer));
                add(peak, source, peaks(names, consumer));
            }
            if (power.works(source) && lacksEfficiency(circuit, source)) {
                Gap gap = new Gap(PowerData.EFFICIENCY, names.name(source.unit()));
                source.inputs().stream()
                        .flatMap(input -> reach.above(input).stream())
                        .forEach(above -> add(efficiency, above, List.of(gap)));
            }
        }
    }

    /** The gaps of a situation, found once. */
    static LoadGaps of(Situation at) {
        return at.circuit().know(LoadGaps.class, LoadGaps::new);
    }

    private static void add(Map<Integer, Set<Gap>> to, PowerSource source, List<Gap> gaps) {
        if (!gaps.isEmpty()) {
            to.computeIfAbsent(source.index(), key -> new LinkedHashSet<>()).addAll(gaps);
        }
    }

    /** What is missing for the average current of a consumer. */
    static List<Gap> averages(Directory names, Consumer consumer) {
        boolean none = consumer.loads().isEmpty() && consumer.draws();
        return gaps(
                names,
                consumer,
                PowerData.AVERAGE,
                none || consumer.loads().stream().anyMatch(LoadGaps::lacksAverage));
    }

    /** What is missing for the peak current of a consumer. */
    static List<Gap> peaks(Directory names, Consumer consumer) {
        boolean none = consumer.loads().isEmpty() && consumer.draws();
        return gaps(
                names,
                consumer,
                PowerData.PEAK,
                none || consumer.loads().stream().anyMatch(load -> load.peakA().isMissing()));
    }

    private static List<Gap> gaps(Directory names, Consumer consumer, String datum, boolean missing) {
        List<Gap> found = new ArrayList<>();
        String name = names.name(consumer.unit());
        if (missing) {
            found.add(new Gap(datum, name));
        }
        if (consumer.zero() < 0) {
            found.add(new Gap(consumer.frameReturn() ? PowerData.FRAME_WAY : PowerData.ZERO_PIN, name));
        }
        return found;
    }

    private static boolean lacksAverage(Load load) {
        boolean known = load.averageA().isKnown() || load.averageW().isKnown();
        return !known && load.averageA().isMissing() && !load.averageW().isNotApplicable();
    }

    private static boolean lacksEfficiency(Circuit circuit, PowerSource source) {
        return source.part() >= 0
                && source.kind() != PowerSource.Kind.PACK
                && circuit.wiring().parts().get(source.part()).origin() instanceof Part.Inner inner
                && !inner.part().kind().is(PartKind.LINEAR_REGULATOR)
                && !inner.part().rating().efficiency().isKnown();
    }

    /** What is missing for the average current of a source. */
    List<Gap> average(PowerSource source) {
        return joined(average, source);
    }

    /** What is missing for its current when all behind it peaks. */
    List<Gap> peak(PowerSource source) {
        return joined(peak, source);
    }

    private List<Gap> joined(Map<Integer, Set<Gap>> of, PowerSource source) {
        List<Gap> all = new ArrayList<>(of.getOrDefault(source.index(), Set.of()));
        all.addAll(efficiency.getOrDefault(source.index(), Set.of()));
        return all;
    }

    /** Whether an efficiency had to be guessed behind a source: its current may also be less than computed. */
    boolean guessed(PowerSource source) {
        return efficiency.containsKey(source.index());
    }

    /** The figures of a load that its average rests on. */
    static List<Datum<?>> averageFigures(PlacedLoad load) {
        return List.of(load.load().averageA(), load.load().averageW());
    }

    /** The figures of a load that its peak rests on. */
    static List<Datum<?>> peakFigures(PlacedLoad load) {
        return load.load().peakA().isKnown() ? List.of(load.load().peakA()) : averageFigures(load);
    }
}
