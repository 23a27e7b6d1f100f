package ringout.check.record;

import ringout.check.build.HiddenSpots;
import ringout.check.build.Witness;
import ringout.check.form.Check;
import ringout.check.form.CheckInfo;
import ringout.check.form.Gaps;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.finding.Draft;
import ringout.finding.Place;
import ringout.finding.Severity;
import ringout.graph.order.Covers;
import ringout.model.AsBuilt;
import ringout.model.Cover;

/**
 * A joint under a lid without a photo.
 *
 * <p>Why it matters: years later the only way to see how it was made is to take the lid off.
 *
 * <p>Condition: photos are on record or a lid is closed, a plug or joint with leads lies under a lid, and neither it nor its unit
 * is on a photo. As long as the lid is not closed, a step before it that takes the photo is enough.
 *
 * <p>Does not see: what is to be seen on the photo.
 *
 * <p>Reference: common practice, no source.
 */
@CheckInfo(
        code = "X07",
        name = "hidden-joint-without-photo",
        severity = Severity.S4,
        since = "0.3",
        needs = {"photos by joint or unit", "what each lid hides"})
public final class NoPhoto implements Check {
    @Override
    public void look(Situation at, Outcomes out) {
        AsBuilt record = at.aircraft().record();
        boolean begun = !record.photos().isEmpty()
                || record.steps().stream()
                        .anyMatch(step -> step.cover().isKnown() && step.done().isKnown());
        if (!begun || at.aircraft().airframe().covers().isEmpty()) {
            return;
        }
        Gaps gaps = new Gaps();
        for (HiddenSpots.Spot spot : HiddenSpots.all(at)) {
            switch (Witness.of(at, spot.unit(), spot.plug(), Witness.Wanted.PHOTO)) {
                case THERE -> out.looked();
                case UNKNOWN -> gaps.add("photo", spot.name());
                case NONE -> out.finding(draft(at, spot));
            }
        }
        gaps.tell(out, datum -> new Gaps.Way("look through the photos", 2));
    }

    private static Draft draft(Situation at, HiddenSpots.Spot spot) {
        Cover lid = Covers.of(at.circuit()).all().get(spot.cover());
        return Draft.of(Severity.S4, "no photo: " + spot.name() + " under the " + lid.name() + " is on no photo")
                .about(spot.name())
                .at(new Place(lid.at(), lid.name(), lid.name() + ": lid"))
                .cause(spot.name() + "/photo")
                .sum("photos of " + spot.name() + " or its unit on record: 0")
                .why("the only way to see how it was made is to take the lid off")
                .fix("photograph what lies under the " + lid.name()
                        + " when it is open next, with the tail in the picture");
    }
}
