package ringout.check.power;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import ringout.check.form.Situation;
import ringout.graph.Wire;
import ringout.graph.power.PlacedLoad;
import ringout.graph.power.PowerGraph;
import ringout.graph.power.PowerSource;
import ringout.model.Event;
import ringout.solve.power.LoadCase;
import ringout.solve.power.PowerFlow;

/**
 * The peaks that some leads see: each declared event, and each unit behind them alone at its peak while all others draw
 * their average. A load behind a regulator also loads the leads to the input of that regulator.
 */
final class OwnPeaks {
    /**
     * A peak, solved.
     *
     * @param of what peaks
     * @param flow what flows
     */
    record Peak(PeakCase of, PowerFlow flow) {}

    /** What a peak may do to a lead beyond its own rise: sagging voltage, and the input of a regulator that steps up. */
    private static final double MARGIN = 2;

    private final Situation at;
    private final PowerGraph power;
    private final LoadRun.Finder runs;
    private final BitSet leads;
    private final List<Wire> wires = new ArrayList<>();
    private final Map<Integer, Set<Integer>> leadsOfUnit = new HashMap<>();
    private final Map<Integer, Set<Integer>> above = new HashMap<>();
    private final Map<Integer, List<PlacedLoad>> behind = new HashMap<>();

    /** Peaks that leads see; the set holds their numbers. */
    OwnPeaks(Situation at, BitSet leads) {
        this.at = at;
        this.leads = leads;
        power = PowerGraph.of(at.circuit());
        runs = new LoadRun.Finder(at);
        if (leads.isEmpty()) {
            return;
        }
        for (Wire wire : at.wiring().wires()) {
            if (leads.get(wire.leadIndex())) {
                wires.add(wire);
                touch(wire.fromPin(), wire.leadIndex());
                touch(wire.toPin(), wire.leadIndex());
            }
        }
        for (PlacedLoad load : power.loads()) {
            Set<Integer> own = new LinkedHashSet<>(leadsOfUnit.getOrDefault(load.unit(), Set.of()));
            own.addAll(passed(load));
            own.forEach(lead ->
                    behind.computeIfAbsent(lead, key -> new ArrayList<>()).add(load));
        }
    }

    private void touch(int pin, int lead) {
        leadsOfUnit
                .computeIfAbsent(at.wiring().unitOf(pin), key -> new LinkedHashSet<>())
                .add(lead);
    }

    /** The leads in question between a load and the packs. */
    private Set<Integer> passed(PlacedLoad load) {
        Set<Integer> passed = new LinkedHashSet<>();
        runs.of(load).ifPresent(run -> {
            run.wires(at).stream().map(Wire::leadIndex).filter(leads::get).forEach(passed::add);
            passed.addAll(above(load, run.source()));
        });
        return passed;
    }

    /** The leads in question on the input side of a regulator. */
    private Set<Integer> above(PlacedLoad load, PowerSource source) {
        Set<Integer> known = above.get(source.index());
        if (known != null) {
            return known;
        }
        Set<Integer> found = new LinkedHashSet<>();
        above.put(source.index(), found);
        for (int input : source.inputs()) {
            found.addAll(passed(new PlacedLoad(
                    load.index(),
                    source.unit(),
                    load.rail(),
                    load.limits(),
                    input,
                    source.minus(),
                    load.frameReturn(),
                    load.load())));
        }
        return found;
    }

    /** The conductors of the leads. */
    List<Wire> wires() {
        return wires;
    }

    /** The loads behind a lead, and those of the units at its ends. */
    List<PlacedLoad> behind(int lead) {
        return behind.getOrDefault(lead, List.of());
    }

    /**
     * The events, then the units behind whose peak alone can matter, one by one; a case without an operating point is left out.
     *
     * @param slack by lead, what its current may rise above the average in A before anything is to be judged
     */
    List<Peak> all(double[] slack) {
        List<Peak> all = new ArrayList<>(events(at));
        Map<String, PeakCase> alone = new TreeMap<>();
        for (int lead = leads.nextSetBit(0); lead >= 0; lead = leads.nextSetBit(lead + 1)) {
            for (PlacedLoad load : behind(lead)) {
                if (MARGIN * rise(load) > slack[lead]) {
                    String unit = at.directory().name(load.unit());
                    alone.computeIfAbsent(unit, OwnPeaks::alone);
                }
            }
        }
        alone.values().forEach(of -> solve(at, all, of));
        return all;
    }

    private static PeakCase alone(String unit) {
        return new PeakCase(LoadCase.AVERAGE.peaking(Set.of(unit)), Map.of(), unit + " at its peak");
    }

    /**
     * The peak of the one unit that lifts a way most by itself, if it may lift it too far.
     *
     * @param ohms resistance of the leads of the way in ohm
     * @param slackV what the way may be lifted above the average in V
     */
    Optional<Peak> most(Map<Integer, Double> ohms, double slackV) {
        Map<Integer, Double> lifts = new HashMap<>();
        Optional<PlacedLoad> most = Optional.empty();
        for (Map.Entry<Integer, Double> lead : ohms.entrySet()) {
            for (PlacedLoad load : behind(lead.getKey())) {
                double lift = lifts.merge(load.index(), MARGIN * rise(load) * lead.getValue(), Double::sum);
                most = most.isEmpty() || lift > lifts.getOrDefault(most.get().index(), 0.0) ? Optional.of(load) : most;
            }
        }
        if (most.isEmpty() || lifts.getOrDefault(most.get().index(), 0.0) <= slackV) {
            return Optional.empty();
        }
        List<Peak> solved = new ArrayList<>();
        solve(at, solved, alone(at.directory().name(most.get().unit())));
        return solved.stream().findFirst();
    }

    /** The events, solved. */
    static List<Peak> events(Situation at) {
        List<Peak> all = new ArrayList<>();
        for (Event event : at.aircraft().events()) {
            solve(
                    at,
                    all,
                    new PeakCase(LoadCase.AVERAGE.during(event), PeakCase.named(event), "during " + event.name()));
        }
        return all;
    }

    /** What a load draws more at its peak than on average in A, as far as both are known. */
    private static double rise(PlacedLoad load) {
        return load.load().peakA().or(0.0)
                - load.load().average(OptionalDouble.empty()).orElse(0);
    }

    private static void solve(Situation at, List<Peak> all, PeakCase of) {
        if (at.operatingPoint(of.loads()) instanceof PowerFlow flow) {
            all.add(new Peak(of, flow));
        }
    }

    /** Whether something behind a lead peaks: else its current changes only because the voltage does. */
    boolean concerns(int lead, PeakCase of) {
        return behind(lead).stream().anyMatch(load -> of.raises(at, load));
    }

    /** How long a peak lasts in a conductor in s: as its row says, else the longest of the loads behind; empty when nobody tells. */
    OptionalDouble seconds(Wire wire, PeakCase of) {
        return FuseBelowLoad.seconds(at, wire.lead().peakS(), behind(wire.leadIndex()), of);
    }
}
