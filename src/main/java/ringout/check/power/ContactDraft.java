package ringout.check.power;

import java.util.OptionalDouble;
import ringout.check.form.Figures;
import ringout.check.form.Situation;
import ringout.check.form.Threshold;
import ringout.check.form.Thresholds;
import ringout.finding.Draft;
import ringout.finding.Severity;
import ringout.model.Unit;
import ringout.solve.power.PowerFlow;

/** Writes the finding that a contact carries more than it is rated for. */
final class ContactDraft {
    private ContactDraft() {}

    /** Too much with all loads at their average. */
    static Draft average(Situation at, Contact contact, PowerFlow flow) {
        return draft(at, contact, flow, contact.limitA(), "all at their average", "on average");
    }

    /** Too much in a peak; how long it lasts is known. */
    static Draft peak(Situation at, Contact contact, double limit, OwnPeaks peaks, OwnPeaks.Peak peak) {
        OptionalDouble seconds = peaks.seconds(contact.wire(peak.flow()), peak.of());
        String lasts = "for " + Figures.of(seconds) + " s";
        return draft(at, contact, peak.flow(), limit, peak.of().words(), lasts);
    }

    private static Draft draft(
            Situation at, Contact contact, PowerFlow flow, double limit, String words, String lasts) {
        double amps = contact.worst(flow);
        int pin = contact.pin(flow);
        Unit unit = at.wiring().unit(pin);
        String name = at.wiring().name(pin);
        Threshold share = at.limit(Thresholds.CONTACT_SHARE);
        int count = contact.pins().size();
        double rated = limit / contact.share();
        String uneven = count == 1
                ? ""
                : ", " + count + " contacts side by side x " + Figures.of(share.value()) + " % = " + Figures.of(limit)
                        + " A each";
        Draft draft = Draft.of(
                        at.flightCritical(unit.ref()) ? Severity.S2 : Severity.S3,
                        "contact overloaded: " + name + " carries " + Figures.of(amps) + " A " + lasts + ", "
                                + (count == 1 ? "is rated " : "may carry ") + Figures.of(limit) + " A")
                .about(contact.plugName())
                .sum(Figures.of(amps) + " A, " + words + "; " + (limit > contact.limitA() ? "short-time " : "")
                        + "rating of one contact " + Figures.of(rated) + " A" + uneven)
                .judged(amps, limit, "A", count == 1 ? "maker's data" : share.source())
                .input(contact.plug().contactRatingA())
                .why("it runs hot, loses spring and plating, and opens or melts its housing")
                .meter("clamp a meter around " + contact.wire(flow).lead().id() + ", " + words + ": " + Figures.of(amps)
                        + " A; feel " + contact.plugName() + " after a run, power off")
                .fix("a plug for " + Figures.of(amps / contact.share()) + " A a contact at " + contact.plugName()
                        + ", more contacts for it, or less load on it");
        for (int other : contact.pins()) {
            for (int wire : at.wiring().wiresAt(other)) {
                draft.at(at.wiring().wires().get(wire).lead());
            }
        }
        // plugs of one type are too small together
        draft.cause(unit.type() + " plug " + contact.plug().name() + " rated");
        ParallelReturn.tell(at, flow, contact.wire(flow), draft);
        return draft.seen(unit);
    }
}
