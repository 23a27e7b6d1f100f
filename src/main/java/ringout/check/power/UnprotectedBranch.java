package ringout.check.power;

import java.util.LinkedHashMap;
import java.util.Map;
import ringout.check.form.Assumed;
import ringout.check.form.CheckInfo;
import ringout.check.form.Figures;
import ringout.check.form.Gaps;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.check.form.Sound;
import ringout.check.form.Threshold;
import ringout.check.form.Thresholds;
import ringout.finding.Draft;
import ringout.finding.Severity;
import ringout.graph.Trail;
import ringout.graph.Wire;
import ringout.graph.power.PowerGraph;
import ringout.graph.power.Protection;
import ringout.model.Datum;
import ringout.model.Lead;

/**
 * A thin branch of a thick supply without a fuse.
 *
 * <p>Why it matters: a pack feeds a short in the branch until the wire is gone, and what lies beside it too.
 *
 * <p>Condition: between a pack and its regulators, a conductor is thinner than one before it by more than half a gauge, no fuse
 * stands before it, and it is longer than 180 mm (7 in). A lead declared unfused is meant so and is not reported.
 *
 * <p>Does not see: what is behind a regulator, which limits its own current (P19); a fuse too large for the branch (P22).
 *
 * <p>Reference: common practice, no source.
 */
@CheckInfo(
        code = "P25",
        name = "unprotected-branch",
        severity = Severity.S3,
        since = "0.1",
        needs = {"wire size", "length of each lead"})
public final class UnprotectedBranch implements Sound {
    private static final double HALF_A_GAUGE = 1.12;

    @Override
    public void look(Situation at, Outcomes out) {
        Protection protection = Protection.of(at.circuit());
        Threshold longest = at.limit(Thresholds.UNPROTECTED);
        Gaps gaps = new Gaps();
        Map<Lead, Draft> drafts = new LinkedHashMap<>();
        for (Protection.Fed fed : protection.fed()) {
            boolean fused = protection.fuseBefore(fed.end()).isPresent();
            if (protection.regulated(fed.end())) {
                continue;
            }
            protection.thickestTo(fed.end()).ifPresent(thickest -> {
                Wire thick = at.wiring().wires().get(thickest);
                if (fused) {
                    out.looked();
                } else if (fed.wire().lead().fuseA() instanceof Datum.Unknown) {
                    gaps.add(PowerData.FUSE, fed.wire().lead().id());
                } else if (!thick.equals(fed.wire()) && !unfused(at, fed.wire())) {
                    judge(at, out, gaps, longest, fed, thick, drafts);
                }
            });
        }
        drafts.values().forEach(out::finding);
        gaps.tell(out, PowerData::way);
    }

    private static boolean unfused(Situation at, Wire wire) {
        return wire.lead().unfused().is(true) || unfusedUnit(at, wire.fromPin()) || unfusedUnit(at, wire.toPin());
    }

    private static boolean unfusedUnit(Situation at, int pin) {
        int unit = at.wiring().unitOf(pin);
        return !at.directory().isJoint(unit)
                && at.directory().unit(unit).unfused().is(true);
    }

    private static void judge(
            Situation at,
            Outcomes out,
            Gaps gaps,
            Threshold longest,
            Protection.Fed fed,
            Wire thick,
            Map<Lead, Draft> drafts) {
        Wire wire = fed.wire();
        Datum<Double> length = wire.lengthMm();
        if (length.isKnown() && length.or(0.0) <= longest.value()) {
            out.looked();
        } else if (!wire.areaMm2().isKnown()) {
            gaps.add("wire size", wire.lead().id());
        } else if (wire.areaMm2().or(0.0) * HALF_A_GAUGE >= thick.areaMm2().or(0.0)) {
            out.looked();
        } else if (!length.isKnown()) {
            gaps.add(PowerData.LENGTH, wire.lead().id());
        } else {
            drafts.computeIfAbsent(wire.lead(), lead -> draft(at, longest, fed, thick));
        }
    }

    private static Draft draft(Situation at, Threshold longest, Protection.Fed fed, Wire thick) {
        Wire wire = fed.wire();
        String id = wire.lead().id();
        double length = wire.lengthMm().or(0.0);
        int pin = fed.end() == wire.toEnd() ? wire.toPin() : wire.fromPin();
        return Draft.of(
                        Severity.S3,
                        "branch without a fuse: " + id + " " + size(wire) + " behind "
                                + thick.lead().id() + " " + size(thick) + ", " + Figures.of(length) + " mm long")
                .about(id)
                .at(wire.lead())
                .seen(thick.lead())
                .path(PowerGraph.of(at.circuit()).tree().trailTo(pin).orElse(Trail.NONE))
                .sum(Figures.of(length) + " mm of " + size(wire) + " without a fuse, at most "
                        + Figures.of(longest.value()) + " mm")
                .judged(length, longest.value(), "mm", longest.source())
                .input(wire.lengthMm())
                .onAssumption(Assumed.turns(wire.lengthMm(), factor -> length * factor - longest.value()))
                .why("a short in " + id + " burns it along its whole length, fed by the pack")
                .meter("look for a fuse holder at the thick end of " + id)
                .fix("fit a fuse for " + size(wire) + " within " + Figures.of(longest.value()) + " mm of "
                        + thick.lead().id() + ", or declare " + id + " unfused with the reason");
    }

    private static String size(Wire wire) {
        return wire.awg()
                .known()
                .map(awg -> awg + " AWG")
                .orElseGet(() -> Figures.of(wire.areaMm2().or(0.0)) + " mm2");
    }
}
