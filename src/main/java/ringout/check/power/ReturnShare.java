package ringout.check.power;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import ringout.check.form.CheckInfo;
import ringout.check.form.Gaps;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.check.form.Thresholds;
import ringout.check.form.Weighing;
import ringout.finding.Severity;
import ringout.graph.Gap;
import ringout.graph.Wire;
import ringout.graph.Wiring;
import ringout.graph.returns.ReturnGraph;
import ringout.graph.returns.ReturnTree;
import ringout.graph.wire.Ampacity;
import ringout.solve.Resistivity;
import ringout.solve.power.LoadCase;
import ringout.solve.power.PowerFlow;
import ringout.solve.rating.WireRules;

/**
 * A thin 0V conductor beside a thick return that takes too much of its current.
 *
 * <p>Why it matters: the 0V of a signal lead closes a way beside the main return. As long as that is sound little flows
 * there; one tired contact in the main return sends amperes through a signal wire.
 *
 * <p>Formula: with all loads at their average, share of the thin conductor as solved; and with 10 mohm more in the main return, by the
 * current divider of the loop of the two: I thin + I main x d / (R loop + d). Held against 50 percent of the ampacity of the thin one.
 * Thin is what carries less than half of the main return. Where the main return has several conductors side by side, d
 * is what one bad contact of them adds.
 *
 * <p>Does not see: loops in which a third way takes part of what is displaced, which makes the share smaller; returns of equal
 * thickness; a main return that is open (P09, P10).
 *
 * <p>Reference: current divider (exact mathematics); 50 percent and 10 mohm are common practice, no source.
 */
@CheckInfo(
        code = "P11",
        name = "return-share",
        severity = Severity.S3,
        since = "0.2",
        solves = true,
        needs = {
            "length and wire size of 0V conductors",
            "contact resistance of the main return",
            "average current of each load"
        })
public final class ReturnShare implements Weighing {
    private static final double THIN = 2;
    private static final double MILLI = 0.001;

    @Override
    public void look(Situation at, Outcomes out) {
        if (!(at.operatingPoint(LoadCase.AVERAGE) instanceof PowerFlow flow)) {
            return;
        }
        Gaps gaps = new Gaps();
        Overload.averages(at, flow, gaps);
        boolean returns = false;
        Set<Integer> told = new HashSet<>();
        for (Returns.Need need : Returns.of(at)) {
            List<Wire> wires = wires(at, need);
            Optional<Wire> main =
                    wires.stream().max((a, b) -> Double.compare(Math.abs(flow.amps(a)), Math.abs(flow.amps(b))));
            if (main.isPresent() && wires.size() > 1) {
                Main pair = new Main(need, main.get(), wires);
                for (Wire thin : wires) {
                    returns |= thin.leadIndex() != main.get().leadIndex();
                    boolean other = thin.leadIndex() != main.get().leadIndex();
                    if (other && !told.contains(thin.index()) && judge(at, out, gaps, flow, pair, thin)) {
                        told.add(thin.index());
                    }
                }
            }
        }
        if (returns) {
            gaps.tell(out, PowerData::way);
        }
    }

    /** The conductors at the 0V pins of a unit. */
    private static List<Wire> wires(Situation at, Returns.Need need) {
        List<Wire> wires = new ArrayList<>();
        for (int pin : Supplies.zeroPins(at, need.unit(), need.zero())) {
            for (int wire : at.wiring().wiresAt(pin)) {
                if (at.circuit().mated(at.wiring().wires().get(wire))) {
                    wires.add(at.wiring().wires().get(wire));
                }
            }
        }
        return wires;
    }

    /**
     * What flows in a thin conductor.
     *
     * @param healthy current in A as solved
     * @param worn current in A with more resistance in the main return
     * @param ohm resistance of the loop of both in ohm
     * @param mainA current of the main return in A
     */
    record Share(double healthy, double worn, double ohm, double mainA) {
        double worst() {
            return Math.max(healthy, worn);
        }
    }

    /**
     * The main return of a unit.
     *
     * @param need what the unit returns
     * @param wire the conductor that carries most of it
     * @param beside it and those of its lead beside it
     */
    record Main(Returns.Need need, Wire wire, List<Wire> beside) {
        /** Keeps only the conductors of the lead. */
        Main {
            beside = beside.stream()
                    .filter(other -> other.leadIndex() == wire.leadIndex())
                    .toList();
        }

        int count() {
            return beside.size();
        }
    }

    /** Judges one conductor; true when a finding was made. */
    private static boolean judge(Situation at, Outcomes out, Gaps gaps, PowerFlow flow, Main main, Wire thin) {
        WireRules rules = WireRules.of(at.aircraft());
        Ampacity carries = rules.ampacity(thin);
        double thick = rules.ampacity(main.wire()).high() * main.count();
        boolean isThin = carries.high() * THIN <= thick || Double.isInfinite(carries.high());
        Optional<Double> loop = isThin ? loop(at, main, thin) : Optional.empty();
        if (loop.isEmpty()) {
            return false;
        }
        Share share = share(at, flow, loop.get(), main, thin);
        double part = at.limit(Thresholds.RETURN_SHARE).value() / 100;
        if (share.worst() <= Overload.NEGLIGIBLE_A || !Overload.over(share.worst(), carries.low() * part)) {
            out.looked();
            return false;
        }
        List<Gap> guessed = ParallelReturn.open(at, main.wire());
        guessed.addAll(ParallelReturn.open(at, thin));
        if (!guessed.isEmpty()) {
            gaps.add(guessed);
        } else if (!Overload.over(share.worst(), carries.high() * part)) {
            gaps.add(rules.missing(thin));
        } else {
            out.finding(ReturnShareDraft.of(at, main, thin, share));
            return true;
        }
        return false;
    }

    private static Share share(Situation at, PowerFlow flow, double loop, Main main, Wire thin) {
        double more = at.limit(Thresholds.RETURN_WORN).value() * MILLI;
        double one = ohm(at, main.wire());
        double added = more;
        if (main.count() > 1) {
            added = 1 / ((main.count() - 1) / one + 1 / (one + more)) - one / main.count();
        }
        double mainA = main.beside().stream()
                .mapToDouble(wire -> Math.abs(flow.amps(wire)))
                .sum();
        double healthy = Math.abs(flow.amps(thin));
        return new Share(healthy, healthy + mainA * added / (loop + added), loop, mainA);
    }

    /** Resistance of the loop a thin conductor closes with the main return; nothing when it is no way beside it. */
    private static Optional<Double> loop(Situation at, Main main, Wire thin) {
        Returns.Need need = main.need();
        Wiring wiring = at.wiring();
        int far = wiring.unitOf(thin.fromPin()) == need.unit() ? thin.toPin() : thin.fromPin();
        ReturnTree tree = ReturnTree.of(at.circuit());
        boolean joined = ReturnGraph.of(at.circuit()).reaches(far, need.home());
        List<Wire> other = tree.wires(far, need.home());
        boolean through = other.stream()
                .anyMatch(wire -> wire.index() == thin.index()
                        || wire.leadIndex() == main.wire().leadIndex());
        if (!joined || through) {
            return Optional.empty();
        }
        Map<Integer, Wire> once = new TreeMap<>();
        tree.wires(need.zero(), need.home()).forEach(wire -> once.put(wire.index(), wire));
        for (Wire wire : other) {
            if (once.remove(wire.index()) == null) {
                once.put(wire.index(), wire);
            }
        }
        double sum = ohm(at, thin);
        for (Wire wire : once.values()) {
            sum += wire.leadIndex() == main.wire().leadIndex() ? ohm(at, wire) / main.count() : ohm(at, wire);
        }
        return Optional.of(sum);
    }

    /** Resistance of a conductor and its contacts in ohm. */
    private static double ohm(Situation at, Wire wire) {
        return Resistivity.ohm(wire)
                + Resistivity.contactOhm(at.wiring(), wire.fromPin())
                + Resistivity.contactOhm(at.wiring(), wire.toPin());
    }
}
