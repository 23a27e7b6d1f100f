package ringout.check.power;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ringout.check.form.CheckInfo;
import ringout.check.form.Gaps;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.check.form.Thresholds;
import ringout.check.form.Weighing;
import ringout.finding.Draft;
import ringout.finding.Severity;
import ringout.graph.Gap;
import ringout.graph.Wire;
import ringout.graph.returns.ReturnGraph;
import ringout.graph.returns.ReturnTree;
import ringout.solve.Resistivity;
import ringout.solve.network.NodeVoltage;
import ringout.solve.power.LoadCase;
import ringout.solve.power.PowerFlow;

/**
 * Two units that talk to each other while currents lift the 0V of one.
 *
 * <p>Why it matters: a signal is measured against 0V; when a pump in the same return lifts it, bits tip, a sensor reads too much,
 * and it happens only while the pump runs.
 *
 * <p>Formula: difference of the 0V of both units, solved over the whole network, with all loads at their average, in each declared event
 * and with each unit behind the same returns at its peak while all others draw their average. Single-ended signals: above
 * 0.4 V a finding, above 0.2 V a remark. Members of a CAN bus: 2 V apart, which leaves the bus inside -2 to 7 V at every member.
 *
 * <p>Does not see: 0V lifted by inductance or by currents of milliseconds; other differential pairs; links isolated inside a
 * unit; members of a bus are held against the first of them.
 *
 * <p>Reference: CAN by ISO 11898-2, from memory; 0.8 V highest low in less 0.4 V highest low out of 3.3 V logic, from memory; 0.2 V is
 * common practice, no source.
 */
@CheckInfo(
        code = "P13",
        name = "zero-shift",
        severity = Severity.S3,
        since = "0.2",
        solves = true,
        needs = {
            "length and wire size of 0V conductors",
            "contact resistance of the returns",
            "average and peak current of each load"
        })
public final class ZeroShift implements Weighing {
    @Override
    public void look(Situation at, Outcomes out) {
        if (!(at.operatingPoint(LoadCase.AVERAGE) instanceof PowerFlow average)) {
            return;
        }
        Gaps gaps = new Gaps();
        List<ZeroLink> links = ZeroLink.all(at, gaps);
        Overload.averages(at, average, gaps);
        Overload.peaks(at, gaps);
        List<ZeroLink> doubtful = doubtful(at, out, average, links);
        judge(at, out, gaps, average, doubtful);
        if (!links.isEmpty()) {
            gaps.tell(out, PowerData::way);
        }
    }

    /** Links that all peaks together might shift too far: those held against the lowest 0V of all links of their island. */
    private static List<ZeroLink> doubtful(Situation at, Outcomes out, PowerFlow average, List<ZeroLink> links) {
        Optional<PowerFlow> screen =
                at.operatingPoint(LoadCase.PEAK) instanceof PowerFlow flow ? Optional.of(flow) : Optional.empty();
        ReturnGraph returns = ReturnGraph.of(at.circuit());
        Map<Integer, Double> lowest = new HashMap<>();
        if (screen.isPresent()) {
            for (ZeroLink link : links) {
                lowest.merge(returns.island(link.zeroA()), lift(screen.get(), link), Math::min);
                lowest.merge(returns.island(link.zeroB()), lift(screen.get(), link.turned()), Math::min);
            }
        }
        List<ZeroLink> doubtful = new ArrayList<>();
        for (ZeroLink link : links) {
            if (average.volts(link.zeroA(), link.zeroB()).isEmpty()) {
                continue;
            }
            boolean clear = screen.isPresent()
                    && lift(screen.get(), link) - lowest.getOrDefault(returns.island(link.zeroA()), 0.0)
                            <= warn(at, link)
                    && lift(screen.get(), link.turned()) - lowest.getOrDefault(returns.island(link.zeroB()), 0.0)
                            <= warn(at, link)
                    && shift(average, link) <= warn(at, link)
                    && average.assumed().isEmpty();
            if (clear) {
                out.looked();
            } else {
                doubtful.add(link);
            }
        }
        return doubtful;
    }

    /** Volts of the first 0V above the minus of the pack. */
    private static double lift(PowerFlow flow, ZeroLink link) {
        return flow.voltage(link.zeroA()) instanceof NodeVoltage.Volts v ? v.value() : 0;
    }

    private static double shift(PowerFlow flow, ZeroLink link) {
        return Math.abs(flow.volts(link.zeroA(), link.zeroB()).orElse(0));
    }

    private static double warn(Situation at, ZeroLink link) {
        return at.limit(link.differential() ? Thresholds.ZERO_SHIFT_CAN : Thresholds.ZERO_SHIFT_WARN)
                .value();
    }

    private static void judge(Situation at, Outcomes out, Gaps gaps, PowerFlow average, List<ZeroLink> links) {
        ReturnTree tree = ReturnTree.of(at.circuit());
        BitSet leads = new BitSet();
        for (ZeroLink link : links) {
            tree.wires(link.zeroA(), link.zeroB()).forEach(wire -> leads.set(wire.leadIndex()));
        }
        OwnPeaks peaks = new OwnPeaks(at, leads);
        List<OwnPeaks.Peak> always = new ArrayList<>(OwnPeaks.events(at));
        always.add(0, new OwnPeaks.Peak(new PeakCase(LoadCase.AVERAGE, Map.of(), "all at their average"), average));
        Map<Pair, Worst> worst = new LinkedHashMap<>();
        for (ZeroLink link : links) {
            List<Wire> way = tree.wires(link.zeroA(), link.zeroB());
            Map<Integer, Double> ohms = new LinkedHashMap<>();
            way.forEach(wire -> ohms.merge(wire.leadIndex(), ohm(at, wire), Double::sum));
            List<OwnPeaks.Peak> cases = new ArrayList<>(always);
            peaks.most(ohms, warn(at, link) - shift(average, link)).ifPresent(cases::add);
            judge(at, out, gaps, cases, link, way)
                    .ifPresent(found -> worst.merge(Pair.of(at, link), found, (a, b) -> b.part() > a.part() ? b : a));
        }
        worst.values().forEach(found -> out.finding(found.draft()));
    }

    /** Two units, the lower number first: however many links they have, they are told of once. */
    private record Pair(int low, int high) {
        static Pair of(Situation at, ZeroLink link) {
            int a = at.wiring().unitOf(link.a());
            int b = at.wiring().unitOf(link.b());
            return new Pair(Math.min(a, b), Math.max(a, b));
        }
    }

    /** A finding, and its shift as a part of what is worth a look. */
    private record Worst(double part, Draft draft) {}

    private static Optional<Worst> judge(
            Situation at, Outcomes out, Gaps gaps, List<OwnPeaks.Peak> cases, ZeroLink link, List<Wire> way) {
        OwnPeaks.Peak worst = cases.get(0);
        for (OwnPeaks.Peak one : cases) {
            worst = shift(one.flow(), link) > shift(worst.flow(), link) ? one : worst;
        }
        double shift = shift(worst.flow(), link);
        double guessed = 0;
        List<Gap> contacts = new ArrayList<>();
        List<Gap> sizes = new ArrayList<>();
        for (Wire wire : way) {
            double amps = Math.abs(worst.flow().amps(wire));
            for (Gap gap : amps > Overload.NEGLIGIBLE_A ? ParallelReturn.open(at, wire) : List.<Gap>of()) {
                (gap.datum().equals(PowerData.CONTACT) ? contacts : sizes).add(gap);
            }
            guessed += amps * guessedOhm(at, wire);
        }
        boolean over = Overload.over(shift, warn(at, link));
        if (over && !Overload.over(shift - guessed, warn(at, link))) {
            gaps.add(contacts);
        } else if (over) {
            return Optional.of(new Worst(shift / warn(at, link), ZeroShiftDraft.of(at, link, worst, shift)));
        } else if (sizes.isEmpty()) {
            out.looked();
        } else {
            gaps.add(sizes);
        }
        return Optional.empty();
    }

    private static double ohm(Situation at, Wire wire) {
        return Resistivity.ohm(wire)
                + Resistivity.contactOhm(at.wiring(), wire.fromPin())
                + Resistivity.contactOhm(at.wiring(), wire.toPin());
    }

    /** What was taken for the contacts of a conductor that nobody measured in ohm. */
    private static double guessedOhm(Situation at, Wire wire) {
        double ohm = 0;
        for (int pin : new int[] {wire.fromPin(), wire.toPin()}) {
            ohm += Resistivity.contactKnown(at.wiring(), pin) ? 0 : Resistivity.contactOhm(at.wiring(), pin);
        }
        return ohm;
    }
}
