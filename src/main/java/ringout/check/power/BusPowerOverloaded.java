package ringout.check.power;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import ringout.check.form.CheckInfo;
import ringout.check.form.Gaps;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.check.form.Threshold;
import ringout.check.form.Thresholds;
import ringout.check.form.Weighing;
import ringout.finding.Severity;
import ringout.graph.Gap;
import ringout.graph.power.PlacedLoad;
import ringout.graph.power.PowerGraph;
import ringout.solve.power.LoadFigure;

/**
 * A bus that feeds its members through its small plugs, and has to carry more than they are made for.
 *
 * <p>Why it matters: each unit passes on what the next ones take; the first plug of the chain carries it all, drops voltage and heats
 * up, and the last unit restarts while the bus itself looks healthy.
 *
 * <p>Formula: at the operating point of the loads that peak together, current through the supply contact of each 5 V bus plug, 1 A at
 * most; what one unit takes out of the bus for itself, 0.5 A at most; voltage at each unit fed that way, 4.0 V at least. Bus
 * plugs are those with one supply contact beside H and L.
 *
 * <p>Does not see: buses that feed their members at other voltages; plugs with several supply contacts, which are supply plugs
 * (P16); starts shorter than the listed peaks.
 *
 * <p>Reference: DroneCAN specification, section 8, power of the 5 V connectors.
 */
@CheckInfo(
        code = "P37",
        name = "bus-power-overloaded",
        severity = Severity.S3,
        since = "0.1",
        solves = true,
        needs = {
            "average and peak current of each unit fed by the bus",
            "size and length of the bus leads",
            "contact resistances, where they decide"
        })
public final class BusPowerOverloaded implements Weighing {
    @Override
    public void look(Situation at, Outcomes out) {
        BusPlugs plugs = BusPlugs.of(at);
        if (plugs.fed().isEmpty()) {
            return;
        }
        Gaps gaps = new Gaps();
        List<Flowing> cases = new ArrayList<>();
        List<PeakCase> wanted = PeakCase.lasting(at);
        wanted.forEach(of -> Flowing.of(at, of.loads(), gaps).ifPresent(cases::add));
        if (cases.size() == wanted.size()) {
            judge(at, out, gaps, plugs, cases);
        }
        gaps.tell(out, PowerData::way);
    }

    private static void judge(Situation at, Outcomes out, Gaps gaps, BusPlugs plugs, List<Flowing> cases) {
        Set<Gap> open = new LinkedHashSet<>();
        for (BusPlugs.Fed fed : plugs.fed()) {
            open.addAll(LoadGaps.averages(at.directory(), fed.consumer()));
            open.addAll(LoadGaps.peaks(at.directory(), fed.consumer()));
        }
        boolean found = connectors(at, out, open, plugs, cases);
        found |= devices(at, out, open, plugs, cases);
        found |= voltages(at, out, open, plugs, cases);
        gaps.add(open);
        if (!found && open.isEmpty()) {
            out.looked();
        }
    }

    /** The connector of each supply that carries most. */
    private static boolean connectors(Situation at, Outcomes out, Set<Gap> open, BusPlugs plugs, List<Flowing> cases) {
        Map<Integer, Integer> worst = new TreeMap<>();
        for (int pin : plugs.pins()) {
            int tie = PowerGraph.of(at.circuit()).ties().of(pin);
            worst.merge(tie, pin, (a, b) -> amps(b, cases) > amps(a, cases) ? b : a);
        }
        Threshold most = at.limit(Thresholds.BUS_CONNECTOR);
        boolean found = false;
        for (int pin : worst.values()) {
            List<PlacedLoad> behind = plugs.loads(plugs.behind(pin));
            Verdict verdict = new Verdict(amps(pin, cases), most.value(), rests(behind, cases), false);
            if (verdict.exceeds()) {
                out.finding(BusPowerDraft.connector(at, plugs, pin, verdict, most));
                found = true;
            } else if (verdict.turns()) {
                open.add(new Gap(PowerData.DECIDES, BusPowerDraft.plug(at, pin)));
            }
        }
        return found;
    }

    private static double amps(int pin, List<Flowing> cases) {
        double most = 0;
        for (Flowing flow : cases) {
            most = Math.max(most, Math.abs(flow.flow().intoPin(pin)));
        }
        return most;
    }

    private static double rests(List<PlacedLoad> behind, List<Flowing> cases) {
        return cases.stream()
                .mapToDouble(flow -> flow.assumedPart(behind, LoadGaps::peakFigures))
                .max()
                .orElse(0);
    }

    private static boolean devices(Situation at, Outcomes out, Set<Gap> open, BusPlugs plugs, List<Flowing> cases) {
        Map<Integer, List<Integer>> byUnit = new TreeMap<>();
        plugs.pins()
                .forEach(pin -> byUnit.computeIfAbsent(at.wiring().unitOf(pin), key -> new ArrayList<>())
                        .add(pin));
        Threshold most = at.limit(Thresholds.BUS_DEVICE);
        boolean found = false;
        for (Map.Entry<Integer, List<Integer>> unit : byUnit.entrySet()) {
            double takes = 0;
            for (Flowing flow : cases) {
                takes = Math.max(
                        takes,
                        unit.getValue().stream()
                                .mapToDouble(flow.flow()::intoPin)
                                .sum());
            }
            List<PlacedLoad> own = plugs.loads(unit.getKey());
            Verdict verdict = new Verdict(takes, most.value(), rests(own, cases), false);
            if (verdict.exceeds()) {
                out.finding(BusPowerDraft.device(at, plugs, unit.getValue(), verdict, most));
                found = true;
            } else if (verdict.turns()) {
                open.add(new Gap(PowerData.DECIDES, at.directory().name(unit.getKey())));
            }
        }
        return found;
    }

    private static boolean voltages(Situation at, Outcomes out, Set<Gap> open, BusPlugs plugs, List<Flowing> cases) {
        Threshold least = at.limit(Thresholds.BUS_VOLTAGE);
        boolean found = false;
        for (BusPlugs.Fed fed : plugs.fed()) {
            for (PlacedLoad load : plugs.loads(List.of(fed.consumer()))) {
                Flowing lowest = cases.get(0);
                for (Flowing flow : cases) {
                    lowest = volts(flow, load) < volts(lowest, load) ? flow : lowest;
                }
                double volts = volts(lowest, load);
                if (volts >= least.value() && !lowest.unsized()) {
                    continue;
                }
                SupplyWay way = SupplyWay.of(at, load.plus(), load.zero());
                if (volts >= least.value()) {
                    open.addAll(way.unsized());
                } else if (volts + way.guessedVolts(lowest.flow()) >= least.value()) {
                    open.addAll(way.guessedContacts());
                } else if (volts > 0) {
                    out.finding(BusPowerDraft.voltage(at, fed.pin(), volts, least));
                    found = true;
                }
            }
        }
        return found;
    }

    private static double volts(Flowing flow, PlacedLoad load) {
        return flow.load(load).filter(LoadFigure::fed).map(LoadFigure::volts).orElse(0.0);
    }
}
