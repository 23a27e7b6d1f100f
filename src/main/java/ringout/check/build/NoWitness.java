package ringout.check.build;

import java.util.Optional;
import ringout.check.form.Check;
import ringout.check.form.CheckInfo;
import ringout.check.form.Figures;
import ringout.check.form.Gaps;
import ringout.check.form.Outcomes;
import ringout.check.form.RecordThresholds;
import ringout.check.form.Situation;
import ringout.check.form.Threshold;
import ringout.finding.Draft;
import ringout.finding.Severity;
import ringout.graph.order.Covers;
import ringout.graph.order.Items;
import ringout.graph.order.Progress;
import ringout.model.AsBuilt;
import ringout.model.Datum;
import ringout.model.Lead;

/**
 * A screw joint that carries much current, under a lid, without photo, torque or witness mark.
 *
 * <p>Why it matters: a screw that was only put in by hand passes every meter and burns in flight; with the lid on nobody can
 * tell any more whether it was tightened.
 *
 * <p>Condition: a clamp, stud or screw of more than 10 A (by its rating, else by the current its leads are sized for) lies under
 * a lid, and neither a torque or witness mark nor a photo of it is on record. As long as the lid is not closed, a step before
 * that takes a photo or checks torque or witness mark is enough.
 *
 * <p>Does not see: whether the torque was right (the value belongs to the maker of the joint).
 *
 * <p>Reference: common practice, no source.
 */
@CheckInfo(
        code = "B10",
        name = "hidden-screw-joint-without-witness",
        severity = Severity.S3,
        since = "0.3",
        needs = {"rating of the clamp", "torque, witness mark or photo", "what each lid hides"})
public final class NoWitness implements Check {
    @Override
    public void look(Situation at, Outcomes out) {
        AsBuilt record = at.aircraft().record();
        boolean begun = !record.steps().isEmpty()
                || !record.photos().isEmpty()
                || !record.torques().isEmpty();
        if (!begun || at.aircraft().airframe().covers().isEmpty()) {
            return;
        }
        Gaps gaps = new Gaps();
        Threshold limit = at.limit(RecordThresholds.JOINT_WITNESS);
        for (HiddenSpots.Spot spot : HiddenSpots.all(at)) {
            if (spot.screwed(at)) {
                Datum<Double> amps = amps(at, spot);
                if (!amps.isKnown()) {
                    gaps.add("current", spot.name());
                } else if (amps.or(0.0) > limit.value()) {
                    look(at, out, spot, amps, limit, gaps);
                } else {
                    out.looked();
                }
            }
        }
        gaps.tell(out, datum -> new Gaps.Way("look at the joint, or ask who closed the lid", 3));
    }

    private static void look(
            Situation at, Outcomes out, HiddenSpots.Spot spot, Datum<Double> amps, Threshold limit, Gaps gaps) {
        Witness seen = Witness.of(at, spot.unit(), spot.plug(), Witness.Wanted.TORQUE_OR_PHOTO);
        switch (seen) {
            case THERE -> out.looked();
            case UNKNOWN -> gaps.add("photo, torque or witness mark", spot.name());
            case NONE -> out.finding(draft(at, spot, amps, limit));
        }
    }

    /** The rating of the joint, else the highest current one of its leads is sized for. */
    private static Datum<Double> amps(Situation at, HiddenSpots.Spot spot) {
        Datum<Double> rating = at.directory().isJoint(spot.unit())
                ? at.directory().joint(spot.unit()).ratingA()
                : at.directory().type(spot.unit()).plugs().get(spot.plug()).contactRatingA();
        if (rating.isKnown()) {
            return rating;
        }
        Datum<Double> most = rating;
        for (int row : Items.of(at.circuit()).rowsAt(spot.unit(), spot.plug())) {
            Lead lead = at.aircraft().leads().get(row);
            Datum<Double> sized = lead.peakA().isKnown() ? lead.peakA() : lead.averageA();
            if (sized.isKnown() && sized.or(0.0) > most.or(0.0)) {
                most = sized;
            }
        }
        return most;
    }

    private static Draft draft(Situation at, HiddenSpots.Spot spot, Datum<Double> amps, Threshold limit) {
        Covers covers = Covers.of(at.circuit());
        String lid = covers.name(spot.cover());
        Optional<Progress.Closed> chance = Progress.of(at.circuit()).lastChance(spot.pins(at.wiring()));
        Draft draft = Draft.of(
                        Severity.S3,
                        "no witness: screw joint " + spot.name() + " under the " + lid
                                + " has neither photo nor torque on record")
                .about(spot.name())
                .cause(spot.name() + "/witness")
                .sum(Figures.of(amps.or(0.0)) + " A, from " + Figures.of(limit.value())
                        + " A a joint under a lid needs a witness; " + Lids.again(covers, spot.cover()))
                .judged(amps.or(0.0), limit.value(), "A", limit.source())
                .input(amps)
                .why("a screw put in by hand passes every meter and burns in flight")
                .fix("torque, mark and photograph the screw joints under the " + lid
                        + chance.map(closed ->
                                        " before step " + closed.by().step().id())
                                .orElse(""));
        if (!at.directory().isJoint(spot.unit())) {
            draft.seen(at.directory().unit(spot.unit()));
        }
        draft.at(Lids.place(covers.all().get(spot.cover())));
        return draft;
    }
}
