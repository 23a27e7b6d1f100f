package ringout.check.installation;

import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import ringout.check.form.Assumed;
import ringout.check.form.Figures;
import ringout.check.form.Gaps;
import ringout.check.form.InstallationThresholds;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.check.form.Threshold;
import ringout.finding.Draft;
import ringout.finding.Severity;
import ringout.graph.Wire;
import ringout.model.Awg;
import ringout.model.Datum;
import ringout.model.Lead;
import ringout.model.Unit;

/** What hangs on units that sit on a damper: thin wire, and a free loop. */
final class DampedUnit {
    /** Half a gauge as a factor of the cross-section. */
    private static final double HALF_A_GAUGE = 1.12;

    private DampedUnit() {}

    static void look(Situation at, Outcomes out, Gaps gaps) {
        Set<Integer> damped = new HashSet<>();
        for (int unit = 0; unit < at.aircraft().units().size(); unit++) {
            Datum<Boolean> on = at.directory().type(unit).damped();
            if (on.is(true)) {
                damped.add(unit);
            } else if (on instanceof Datum.Unknown) {
                gaps.add("whether it sits on a damper", at.directory().name(unit));
            }
        }
        if (damped.isEmpty()) {
            return;
        }
        int last = -1;
        for (Wire wire : at.wiring().wires()) {
            int from = at.wiring().unitOf(wire.fromPin());
            int to = at.wiring().unitOf(wire.toPin());
            if (wire.leadIndex() != last && damped.contains(from) != damped.contains(to)) {
                last = wire.leadIndex();
                lead(at, out, gaps, last, at.directory().unit(damped.contains(from) ? from : to));
            }
        }
    }

    private static void lead(Situation at, Outcomes out, Gaps gaps, int row, Unit unit) {
        Lead lead = at.aircraft().leads().get(row);
        Threshold thickest = at.limit(InstallationThresholds.DAMPED_WIRE);
        Threshold loop = at.limit(InstallationThresholds.DAMPED_LOOP);
        double most = new Awg((int) Math.round(thickest.value())).areaMm2();
        Optional<Wire> thick = RowWires.of(at, row).stream()
                .filter(wire -> wire.areaMm2().or(0.0) > most * HALF_A_GAUGE)
                .findFirst();
        boolean sizes =
                RowWires.of(at, row).stream().allMatch(wire -> wire.areaMm2().isKnown());
        thick.ifPresent(wire -> out.finding(thick(lead, unit, wire, thickest, most)));
        if (thick.isEmpty() && !sizes) {
            gaps.add("wire size", lead.id());
        }
        if (lead.freeLoopMm().isMissing()) {
            gaps.add("free loop at " + unit.ref(), lead.id());
        } else if (lead.freeLoopMm().isKnown() && lead.freeLoopMm().or(0.0) < loop.value()) {
            out.finding(tight(lead, unit, loop));
        } else {
            out.looked();
        }
    }

    private static Draft thick(Lead lead, Unit unit, Wire wire, Threshold limit, double most) {
        String size = wire.awg()
                .known()
                .map(awg -> awg + " AWG")
                .orElseGet(() -> Figures.of(wire.areaMm2().or(0.0)) + " mm2");
        return Draft.of(Severity.S3, "stiff lead on a damped unit: " + lead.id() + " of " + size + " at " + unit.ref())
                .about(lead.id(), unit.ref(), "size")
                .at(lead)
                .seen(unit)
                .input(wire.areaMm2())
                .sum(size + " " + Figures.of(wire.areaMm2().or(0.0)) + " mm2, at most " + Figures.of(limit.value())
                        + " AWG " + Figures.of(most) + " mm2")
                .judged(wire.areaMm2().or(0.0), most, "mm2", limit.source())
                .why("it carries the vibration past the damper")
                .meter("press the unit down and let go: it must come back by itself, the lead must not move it")
                .fix("make the last piece of " + lead.id() + " of " + Figures.of(limit.value()) + " AWG or thinner");
    }

    private static Draft tight(Lead lead, Unit unit, Threshold limit) {
        double mm = lead.freeLoopMm().or(0.0);
        return Draft.of(
                        Severity.S3,
                        "no free loop at a damped unit: " + lead.id() + " has " + Figures.of(mm) + " mm at "
                                + unit.ref())
                .about(lead.id(), unit.ref(), "loop")
                .at(lead)
                .seen(unit)
                .input(lead.freeLoopMm())
                .sum(Figures.of(mm) + " mm free loop, at least " + Figures.of(limit.value()) + " mm")
                .judged(mm, limit.value(), "mm", limit.source())
                .onAssumption(Assumed.turns(lead.freeLoopMm(), factor -> limit.value() - mm * factor))
                .why("it carries the vibration past the damper")
                .meter("press the unit down and let go: it must come back by itself, the lead must not move it")
                .fix("tie " + lead.id() + " so that a loop of " + Figures.of(limit.value()) + " mm stays free at "
                        + unit.ref());
    }
}
