package ringout.check.build;

import java.util.BitSet;
import java.util.OptionalDouble;
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
import ringout.graph.Nets;
import ringout.graph.order.Covers;

/**
 * A joint under a lid that takes long to open, without a point of its net outside.
 *
 * <p>Why it matters: every doubt about the joint costs the lid; in the field that is where fault finding ends.
 *
 * <p>Condition: opening the lid and all over it and closing them again takes more than 20 min, and of the net of a contact under it
 * no pin can be reached with all lids on.
 *
 * <p>Does not see: whether a probe fits into a plug that can be reached.
 *
 * <p>Reference: common practice, no source; 20 min is judgement.
 */
@CheckInfo(
        code = "B08",
        name = "costly-joint-without-outside-point",
        severity = Severity.S4,
        since = "0.3",
        needs = {"minutes to open each lid", "what each lid hides"})
public final class NoOutsidePoint implements Check {
    @Override
    public void look(Situation at, Outcomes out) {
        if (at.aircraft().airframe().covers().isEmpty()) {
            return;
        }
        Covers covers = Covers.of(at.circuit());
        BitSet hidden = new BitSet();
        for (int cover = 0; cover < covers.all().size(); cover++) {
            hidden.or(covers.pins(cover));
        }
        Threshold limit = at.limit(RecordThresholds.LID_COSTLY);
        Gaps gaps = new Gaps();
        for (HiddenSpots.Spot spot : HiddenSpots.all(at)) {
            OptionalDouble minutes = covers.minutes(spot.cover());
            int pin = shut(at, spot, hidden);
            if (pin < 0) {
                out.looked();
            } else if (minutes.isEmpty()) {
                covers.withoutMinutes(spot.cover()).forEach(lid -> gaps.add("time to open and close", lid));
            } else if (minutes.getAsDouble() > limit.value()) {
                out.finding(draft(at, spot, pin, minutes.getAsDouble(), limit));
            } else {
                out.looked();
            }
        }
        gaps.tell(out, datum -> new Gaps.Way("open and close it once with a watch", 15));
    }

    /** A wired contact of the spot whose net has no pin in reach; -1 when there is none. */
    private static int shut(Situation at, HiddenSpots.Spot spot, BitSet hidden) {
        Nets nets = at.whole().nets();
        int end = at.wiring().endPin(spot.unit(), spot.plug());
        for (int pin = at.wiring().firstPin(spot.unit(), spot.plug()); pin < end; pin++) {
            if (at.wiring().wiresAt(pin).length > 0 && hidden.get(pin) && allHidden(nets, nets.of(pin), hidden)) {
                return pin;
            }
        }
        return -1;
    }

    private static boolean allHidden(Nets nets, int net, BitSet hidden) {
        for (int pin : nets.pins(net)) {
            if (!hidden.get(pin)) {
                return false;
            }
        }
        return true;
    }

    private static Draft draft(Situation at, HiddenSpots.Spot spot, int pin, double minutes, Threshold limit) {
        Covers covers = Covers.of(at.circuit());
        String lid = covers.name(spot.cover());
        return Draft.of(
                        Severity.S4,
                        "costly joint without outside point: " + at.wiring().name(pin) + " under the " + lid
                                + " can be measured from nowhere else")
                .about(spot.name())
                .at(Lids.place(covers.all().get(spot.cover())))
                .cause(spot.name() + "/outside point")
                .sum(Figures.of(minutes) + " min to open the " + lid + ", limit " + Figures.of(limit.value())
                        + " min; pins of its net in reach: 0")
                .judged(minutes, limit.value(), "min", limit.source())
                .why("every doubt about the joint costs the lid")
                .fix("bring a test point of what lies under the " + lid + " outside");
    }
}
