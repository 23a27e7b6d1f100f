package ringout.check.installation;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import ringout.check.form.Check;
import ringout.check.form.CheckInfo;
import ringout.check.form.Figures;
import ringout.check.form.Gaps;
import ringout.check.form.InstallationThresholds;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.check.form.Threshold;
import ringout.finding.Draft;
import ringout.finding.Severity;
import ringout.graph.Wire;
import ringout.model.AsBuilt;
import ringout.model.PinRole;
import ringout.model.Torque;
import ringout.solve.power.LoadCase;
import ringout.solve.power.PowerFlow;

/**
 * A screw joint of more than 10 A of which nothing on record says that it was tightened.
 *
 * <p>Why it matters: a screw somebody forgot passes every continuity test, and works loose in flight.
 *
 * <p>Condition: the conductors under a screw carry together more than 10 A, and the record holds for it neither a torque nor a
 * witness mark nor a photo. The current is solved with all loads at their average; where nothing is solved, as for the phases of
 * a motor, it is the one the lead is listed with. Nothing is asked before a torque or a photo of anything is on record.
 *
 * <p>Does not see: peaks of seconds, whether the torque is the right one, joints with neither a kind nor a family that tells of a
 * screw.
 *
 * <p>Reference: common practice, no source.
 */
@CheckInfo(
        code = "M22",
        name = "unwitnessed-screw",
        severity = Severity.S3,
        since = "0.3",
        needs = {"torque, witness mark or photo of each screw joint", "current of its conductors"})
public final class UnwitnessedScrew implements Check {
    @Override
    public void look(Situation at, Outcomes out) {
        AsBuilt record = at.aircraft().record();
        if (record.torques().isEmpty() && record.photos().isEmpty()) {
            return;
        }
        Gaps gaps = new Gaps();
        Set<String> photos = new HashSet<>();
        record.photos().forEach(photo -> photos.add(fold(photo.item())));
        Map<String, Torque> torques = new HashMap<>();
        record.torques().forEach(torque -> torques.putIfAbsent(fold(torque.item()), torque));
        for (Screw screw : Screw.all(at)) {
            boolean photo = photos.contains(fold(screw.name())) || photos.contains(fold(screw.plug()));
            look(at, out, gaps, screw, torques, photo);
        }
        gaps.tell(
                out,
                datum -> datum.startsWith("current")
                        ? new Gaps.Way("clamp a meter around it", 5)
                        : new Gaps.Way("look for the mark, or put the wrench on it", 2));
    }

    static String fold(String name) {
        return name.strip().toUpperCase(Locale.ROOT);
    }

    private static void look(
            Situation at, Outcomes out, Gaps gaps, Screw screw, Map<String, Torque> torques, boolean photo) {
        Threshold limit = at.limit(InstallationThresholds.SCREW_CURRENT);
        OptionalDouble amps = amps(at, screw);
        Torque torque = torques.getOrDefault(fold(screw.name()), torques.get(fold(screw.plug())));
        boolean told = photo
                || (torque != null
                        && (torque.newtonMetre().isKnown() || torque.witness().is(true)));
        if (told) {
            out.looked();
        } else if (amps.isEmpty()) {
            gaps.add("current", screw.name());
        } else if (amps.getAsDouble() <= limit.value()) {
            out.looked();
        } else if (torque != null
                && (torque.newtonMetre().isMissing() || torque.witness().isMissing())) {
            gaps.add("torque or witness mark", screw.name());
        } else {
            out.finding(draft(screw, amps.getAsDouble(), limit));
        }
    }

    /** Sum of the currents under a screw; through a joint as much goes out as comes in. */
    private static OptionalDouble amps(Situation at, Screw screw) {
        PowerFlow flow = at.operatingPoint(LoadCase.AVERAGE) instanceof PowerFlow solved ? solved : null;
        double sum = 0;
        for (Wire wire : screw.wires()) {
            if (flow != null && !phase(at, wire)) {
                sum += Math.abs(flow.amps(wire));
            } else if (wire.lead().averageA().isKnown()) {
                sum += wire.lead().averageA().or(0.0);
            } else {
                return OptionalDouble.empty();
            }
        }
        return OptionalDouble.of(screw.joint() ? sum / 2 : sum);
    }

    private static boolean phase(Situation at, Wire wire) {
        return at.wiring().is(wire.fromPin(), PinRole.PHASE) || at.wiring().is(wire.toPin(), PinRole.PHASE);
    }

    private static Draft draft(Screw screw, double amps, Threshold limit) {
        List<String> ids =
                screw.wires().stream().map(wire -> wire.lead().id()).distinct().toList();
        Draft draft = Draft.of(
                        Severity.S3,
                        "screw without a record: " + screw.name() + " carries " + Figures.of(amps)
                                + " A, and there is no torque, witness mark or photo of it")
                .about(screw.name())
                .cause(screw.name() + "/torque")
                .sum(String.join(" + ", ids) + ": " + Figures.of(amps) + " A on average")
                .judged(amps, limit.value(), "A", limit.source())
                .why("a screw somebody forgot passes every continuity test, and works loose in flight")
                .meter("pull at each conductor, and put the wrench on the screw")
                .fix("tighten " + screw.name() + " to its torque, mark it and enter both");
        screw.wires().forEach(wire -> draft.seen(wire.lead()));
        return draft;
    }
}
