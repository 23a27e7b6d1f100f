package ringout.check.power;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import ringout.check.form.Figures;
import ringout.check.form.Situation;
import ringout.check.form.Threshold;
import ringout.check.form.Thresholds;
import ringout.finding.Draft;
import ringout.finding.Severity;
import ringout.graph.Wire;
import ringout.graph.Wiring;
import ringout.graph.returns.ReturnTree;
import ringout.solve.power.PowerFlow;

/** Writes the finding that the 0V of two units is apart. */
final class ZeroShiftDraft {
    private static final int WRITTEN = 4;
    private static final double GOOD_PART = 5;
    private static final double SMALL = 0.01;
    private static final double SHOWN = 0.005;

    private ZeroShiftDraft() {}

    static Draft of(Situation at, ZeroLink link, OwnPeaks.Peak of, double shift) {
        ReturnTree tree = ReturnTree.of(at.circuit());
        List<Wire> way = tree.wires(link.zeroA(), link.zeroB());
        Wiring wiring = at.wiring();
        String a = wiring.unit(link.a()).ref();
        String b = wiring.unit(link.b()).ref();
        Threshold limit = limit(at, link, shift);
        boolean remark = limit.name().equals(Thresholds.ZERO_SHIFT_WARN.name());
        boolean critical = at.flightCritical(a) || at.flightCritical(b);
        Map<Wire, Double> volts = volts(at, link, way, of.flow());
        List<Wire> wires = new ArrayList<>(way);
        wires.sort((x, y) -> Double.compare(size(volts, y), size(volts, x)));
        String worst = wires.isEmpty() ? "the returns" : wires.get(0).lead().id();
        Draft draft = Draft.of(
                        remark ? Severity.S4 : critical ? Severity.S2 : Severity.S3,
                        "0V shift: " + a + " and " + b + " talk " + (link.differential() ? "on a bus" : "single-ended")
                                + ", their 0V is " + Figures.of(shift) + " V apart, most of it in " + worst)
                .about(a, b)
                .path(tree.trail(link.zeroA(), link.zeroB()))
                .sum(sum(of, wires, volts, shift) + " = " + Figures.of(shift) + " V, "
                        + of.of().words() + ", limit " + Figures.of(limit.value()) + " V")
                .judged(shift, limit.value(), "V", limit.source())
                .why(
                        link.differential()
                                ? "the bus leaves the range the receivers stand: errors, only while the load runs"
                                : "bits tip or readings are off, and only while the load runs")
                .meter("power on, " + of.of().words() + ": " + Figures.of(shift) + " V from "
                        + wiring.name(link.zeroA()) + " to " + wiring.name(link.zeroB()))
                .fix("give the load behind " + worst + " a return of its own, or take a thicker or shorter " + worst)
                .seen(wiring.unit(link.a()))
                .seen(wiring.unit(link.b()));
        for (Wire wire : wires) {
            if (wire.index() == wires.get(0).index()) {
                draft.at(wire.lead()).input(wire.lengthMm()).input(wire.areaMm2());
            } else if (size(volts, wire) > shift / GOOD_PART) {
                draft.cause(wire.lead().id());
            }
        }
        return draft;
    }

    private static Threshold limit(Situation at, ZeroLink link, double shift) {
        if (link.differential()) {
            return at.limit(Thresholds.ZERO_SHIFT_CAN);
        }
        Threshold finding = at.limit(Thresholds.ZERO_SHIFT);
        return Overload.over(shift, finding.value()) ? finding : at.limit(Thresholds.ZERO_SHIFT_WARN);
    }

    /** Volts lost in each conductor of the way, positive where they add to the shift. */
    private static Map<Wire, Double> volts(Situation at, ZeroLink link, List<Wire> way, PowerFlow flow) {
        Map<Wire, Double> volts = new LinkedHashMap<>();
        double sign = Math.signum(flow.volts(link.zeroA(), link.zeroB()).orElse(1));
        int unit = at.wiring().unitOf(link.zeroA());
        for (Wire wire : way) {
            boolean along = at.wiring().unitOf(wire.fromPin()) == unit;
            double out = along ? flow.amps(wire) : -flow.amps(wire);
            volts.put(wire, sign * Math.signum(out) * LoadRun.lost(flow, wire));
            unit = at.wiring().unitOf(along ? wire.toPin() : wire.fromPin());
        }
        return volts;
    }

    private static double size(Map<Wire, Double> volts, Wire wire) {
        return volts.getOrDefault(wire, 0.0);
    }

    /** The conductors between both that add most to the shift, each with its volts, and the rest. */
    private static String sum(OwnPeaks.Peak of, List<Wire> wires, Map<Wire, Double> volts, double shift) {
        List<String> terms = new ArrayList<>();
        double rest = shift;
        for (Wire wire : wires.subList(0, Math.min(WRITTEN, wires.size()))) {
            double lost = size(volts, wire);
            double amps = Math.abs(of.flow().amps(wire));
            if (lost > shift * SMALL) {
                rest -= lost;
                terms.add(
                        wire.lead().id() + " " + Figures.of(amps) + " A x " + Figures.of(1000 * lost / amps) + " mohm");
            }
        }
        String sign = rest < -SHOWN ? " - " : " + ";
        return String.join(" + ", terms) + sign + "contacts and the rest " + Figures.of(Math.abs(rest)) + " V";
    }
}
