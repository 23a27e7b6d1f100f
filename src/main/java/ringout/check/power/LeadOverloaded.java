package ringout.check.power;

import java.util.List;
import java.util.Optional;
import ringout.check.form.CheckInfo;
import ringout.check.form.Figures;
import ringout.check.form.Gaps;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.check.form.Threshold;
import ringout.check.form.Thresholds;
import ringout.check.form.Weighing;
import ringout.finding.Draft;
import ringout.finding.Severity;
import ringout.graph.Gap;
import ringout.graph.Trail;
import ringout.graph.Wire;
import ringout.graph.wire.Ampacity;
import ringout.solve.power.LoadCase;
import ringout.solve.power.PowerFlow;
import ringout.solve.rating.WireRules;

/**
 * A lead that carries more than its conductors stand all day.
 *
 * <p>Why it matters: the insulation ages or melts, solder and contacts at its ends get hot, and a bundle heats its neighbours.
 *
 * <p>Formula: current of each conductor with all loads at their average, solved over the whole network, against its ampacity
 * with all factors by the rule set of the project. S2 above 100 percent, S3 above 80 percent; a lead is told of once, by the
 * conductor that is used most.
 *
 * <p>Does not see: phase leads of motors and other leads that carry no supply; peaks (P15), contacts (P16), what the fuse lets
 * through (P22). Currents up to 0.05 A are nobody's concern, whatever the size.
 *
 * <p>Reference: by rule set, single wire in free air (common practice, no source), or FAA AC 43.13-1B, table 11-9; 80 percent is
 * common practice, no source.
 */
@CheckInfo(
        code = "P14",
        name = "lead-overloaded",
        severity = Severity.S2,
        since = "0.2",
        solves = true,
        needs = {"wire size of each supply lead", "number of loaded wires in its bundle", "average current of each load"
        })
public final class LeadOverloaded implements Weighing {
    @Override
    public void look(Situation at, Outcomes out) {
        Gaps gaps = new Gaps();
        Optional<Flowing> average = Flowing.of(at, LoadCase.AVERAGE, gaps);
        if (average.isPresent()) {
            Overload.averages(at, average.get().flow(), gaps);
            look(at, out, gaps, average.get().flow());
        }
        gaps.tell(out, PowerData::way);
    }

    private static void look(Situation at, Outcomes out, Gaps gaps, PowerFlow flow) {
        WireRules rules = WireRules.of(at.aircraft());
        double share = at.limit(Thresholds.AMPACITY_SHARE).value() / 100;
        Wire[] worst = new Wire[at.aircraft().leads().size()];
        double[] use = new double[worst.length];
        for (Wire wire : at.wiring().wires()) {
            double amps = Math.abs(flow.amps(wire));
            if (amps <= Overload.NEGLIGIBLE_A) {
                if (amps > 0) {
                    out.looked();
                }
                continue;
            }
            Ampacity carries = rules.ampacity(wire);
            List<Gap> guessed =
                    Overload.over(amps, carries.low() * share) ? ParallelReturn.guessed(at, flow, wire) : List.of();
            if (!guessed.isEmpty()) {
                gaps.add(guessed);
            } else if (Overload.over(amps, carries.high() * share)) {
                if (amps / carries.high() > use[wire.leadIndex()]) {
                    use[wire.leadIndex()] = amps / carries.high();
                    worst[wire.leadIndex()] = wire;
                }
            } else if (Overload.over(amps, carries.low() * share)) {
                gaps.add(rules.missing(wire));
            } else {
                out.looked();
            }
        }
        for (Wire wire : worst) {
            if (wire != null) {
                Draft draft = draft(at, rules, wire, Math.abs(flow.amps(wire)));
                ParallelReturn.tell(at, flow, wire, draft);
                out.finding(draft);
            }
        }
    }

    private static Draft draft(Situation at, WireRules rules, Wire wire, double amps) {
        Ampacity carries = rules.ampacity(wire);
        Threshold share = at.limit(Thresholds.AMPACITY_SHARE);
        boolean over = Overload.over(amps, carries.high());
        double limit = over ? carries.high() : carries.high() * share.value() / 100;
        String id = wire.lead().id();
        String most = (carries.isKnown() ? "" : "at most ") + Figures.of(carries.high()) + " A";
        return Draft.of(
                        over ? Severity.S2 : Severity.S3,
                        "lead overloaded: " + id + " carries " + Figures.of(amps) + " A on average, "
                                + Figures.of(100 * amps / carries.high()) + " % of " + most)
                .about(id)
                .path(at.circuit().trail(wire.fromPin(), wire.toPin()).orElse(Trail.NONE))
                .sum(Figures.of(amps) + " A, all at their average; " + rules.words(wire) + " " + most
                        + (over ? "" : ", x " + Figures.of(share.value()) + " % = " + Figures.of(limit) + " A")
                        + ", by "
                        + rules.title())
                .judged(amps, limit, "A", over ? rules.currentSource() : share.source())
                .input(wire.areaMm2())
                .onAssumption(!Overload.over(amps, limit * Ampacity.bonusLeft(wire)))
                .why("it gets hot as long as the aircraft runs; insulation and solder age, and the bundle with them")
                .meter("power on, all at their average, clamp a meter around " + id + ": " + Figures.of(amps) + " A")
                .fix("thicker " + id + ": for " + Figures.of(amps * 100 / share.value())
                        + " A or more, or less load on it")
                .at(wire.lead())
                .explains("P15");
    }
}
