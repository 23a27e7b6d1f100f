package ringout.check.power;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import ringout.check.form.Figures;
import ringout.check.form.Gaps;
import ringout.check.form.Situation;
import ringout.graph.power.PlacedLoad;
import ringout.graph.power.PowerGraph;
import ringout.graph.power.PowerSource;
import ringout.graph.power.SourceReach;
import ringout.model.Datum;
import ringout.model.Origin;
import ringout.solve.power.LoadCase;
import ringout.solve.power.LoadFigure;
import ringout.solve.power.OperatingPoint;
import ringout.solve.power.PackFigure;
import ringout.solve.power.PowerFlow;
import ringout.solve.power.RegulatorFigure;

/** The operating point of one case of loads, by source and by load. */
final class Flowing {
    /** Of how many loads a sum is written out. */
    private static final int WRITTEN = 8;

    private static final double SMALL_A = 0.0005;

    /** The cases of a circuit that were asked for so far. */
    private static final class Known {
        final Map<LoadCase, Flowing> byCase = new HashMap<>();
    }

    private final Situation at;
    private final PowerFlow flow;
    private final boolean unsized;
    private final double[] amps;
    private final @Nullable RegulatorFigure[] regulators;
    private final @Nullable LoadFigure[] loads;

    private Flowing(Situation at, PowerFlow flow) {
        this.at = at;
        this.flow = flow;
        PowerGraph power = PowerGraph.of(flow.circuit());
        amps = new double[power.sources().size()];
        regulators = new RegulatorFigure[amps.length];
        loads = new LoadFigure[power.loads().size()];
        for (PackFigure pack : flow.packs()) {
            amps[pack.source().index()] = pack.amps();
        }
        for (RegulatorFigure regulator : flow.regulators()) {
            amps[regulator.source().index()] = regulator.outAmps();
            regulators[regulator.source().index()] = regulator;
        }
        unsized = flow.assumed().stream()
                .map(assumption -> assumption.gap().datum())
                .anyMatch(datum -> datum.equals("length") || datum.equals("wire size"));
        flow.loads().forEach(load -> loads[load.load().index()] = load);
    }

    /** The operating point of a case; where there is none, why is noted. */
    static Optional<Flowing> of(Situation at, LoadCase of, Gaps gaps) {
        OperatingPoint point = at.operatingPoint(of);
        if (point instanceof PowerFlow flow) {
            return Optional.of(at.circuit()
                    .know(Known.class, circuit -> new Known())
                    .byCase
                    .computeIfAbsent(of, key -> new Flowing(at, flow)));
        }
        if (point instanceof OperatingPoint.Collapse collapse) {
            gaps.add(PowerData.COLLAPSE, collapse.limiting());
        } else {
            gaps.add(PowerData.UNSETTLED, at.state());
        }
        return Optional.empty();
    }

    PowerFlow flow() {
        return flow;
    }

    /** Current out of a source in A; 0 when it gives none. */
    double amps(PowerSource source) {
        return amps[source.index()];
    }

    /** What a regulator does, if it is in the operating point. */
    Optional<RegulatorFigure> regulator(PowerSource source) {
        return Optional.ofNullable(regulators[source.index()]);
    }

    /** What a load gets, if it is in the operating point. */
    Optional<LoadFigure> load(PlacedLoad load) {
        return Optional.ofNullable(loads[load.index()]);
    }

    /** The part of the power of some loads that rests on assumed figures, 0 to 1. */
    double assumedPart(List<PlacedLoad> behind, Function<PlacedLoad, List<Datum<?>>> figures) {
        double all = 0;
        double assumed = 0;
        for (PlacedLoad load : behind) {
            double watts = load(load).map(LoadFigure::watts).orElse(0.0);
            all += watts;
            boolean rests = figures.apply(load).stream().anyMatch(d -> d.isKnown() && d.source() == Origin.ASSUMED);
            assumed += rests ? watts : 0;
        }
        return all > 0 ? assumed / all : 0;
    }

    /** What a source gives to whom, the largest first: {@code GMC 6.5 + CAM 1.6 + VTX 1.5 + COR 0.9 A}. */
    String shares(PowerSource source) {
        SourceReach reach = SourceReach.of(at.circuit());
        Map<String, Double> byUnit = new HashMap<>();
        boolean shared = false;
        for (PlacedLoad load : reach.loads(source)) {
            List<PowerSource> feeding = reach.feeding(load.plus());
            if (feeding.contains(source)) {
                shared |= feeding.size() > 1;
                byUnit.merge(
                        at.directory().name(load.unit()),
                        load(load).map(LoadFigure::amps).orElse(0.0),
                        Double::sum);
            }
        }
        for (RegulatorFigure regulator : flow.regulators()) {
            for (int input : regulator.source().inputs()) {
                if (reach.feeding(input).contains(source)) {
                    shared |= reach.feeding(input).size() > 1;
                    byUnit.merge(at.directory().name(regulator.source().unit()), regulator.inAmps(), Double::sum);
                }
            }
        }
        return written(byUnit) + (shared ? ", shared with other sources" : "");
    }

    private static String written(Map<String, Double> byUnit) {
        List<Map.Entry<String, Double>> sorted = byUnit.entrySet().stream()
                .filter(entry -> entry.getValue() > SMALL_A)
                .sorted(Map.Entry.<String, Double>comparingByValue()
                        .reversed()
                        .thenComparing(Map.Entry.comparingByKey()))
                .toList();
        List<String> words = new ArrayList<>();
        sorted.stream().limit(WRITTEN).forEach(entry -> words.add(entry.getKey() + " " + Figures.of(entry.getValue())));
        if (sorted.size() > WRITTEN) {
            double rest = sorted.stream()
                    .skip(WRITTEN)
                    .mapToDouble(Map.Entry::getValue)
                    .sum();
            words.add((sorted.size() - WRITTEN) + " more " + Figures.of(rest));
        }
        return words.isEmpty() ? "nothing" : String.join(" + ", words) + " A";
    }

    /** Whether size or length of a conductor somewhere had to be left out. */
    boolean unsized() {
        return unsized;
    }
}
