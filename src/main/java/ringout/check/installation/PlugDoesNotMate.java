package ringout.check.installation;

import java.util.List;
import ringout.check.form.Check;
import ringout.check.form.CheckInfo;
import ringout.check.form.Gaps;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.finding.Draft;
import ringout.finding.Severity;
import ringout.model.ContactHalf;
import ringout.model.Datum;
import ringout.model.Lead;

/**
 * A lead whose plug does not go into the plug of the unit: another family, or the same contacts on both halves.
 *
 * <p>Why it matters: the lead cannot be plugged, and whoever makes it fit by force or with an adapter makes another aircraft than
 * the one that was drawn.
 *
 * <p>Condition: the family of the lead's plug is not the family of the unit's plug, the number of poles aside (M05); or both halves
 * carry pins, or both sockets. Contacts count, not shells: what one maker calls male another calls female.
 *
 * <p>Does not see: families of different name that mate all the same, the shell, the latch; joints.
 *
 * <p>Reference: common practice, no source.
 */
@CheckInfo(
        code = "M04",
        name = "plug-does-not-mate",
        severity = Severity.S2,
        since = "0.3",
        needs = {"plug family at both sides", "contact half at both sides"})
public final class PlugDoesNotMate implements Check {
    @Override
    public void look(Situation at, Outcomes out) {
        boolean families = Asked.ofLeads(at, List.of(Lead::fromFamily, Lead::toFamily));
        boolean halves = Asked.ofLeads(at, List.of(Lead::fromHalf, Lead::toHalf));
        if (!families && !halves) {
            return;
        }
        Gaps gaps = new Gaps();
        LeadEnd.each(at, end -> {
            if (families) {
                family(at, out, gaps, end);
            }
            if (halves) {
                half(at, out, gaps, end);
            }
        });
        gaps.tell(out, datum -> new Gaps.Way("look at the plug", 1));
    }

    private static void family(Situation at, Outcomes out, Gaps gaps, LeadEnd end) {
        if (both(at, gaps, "plug family", end.family(), end.plug().family(), end)) {
            String lead = end.family().or("");
            String unit = end.plug().family().or("");
            if (lead.equals(unit)
                    || Family.of(lead).series().equals(Family.of(unit).series())) {
                out.looked();
            } else {
                out.finding(draft(at, end, lead, unit, "family")
                        .fix("make " + end.lead().id() + " with a plug " + unit + " at " + end.name(at)
                                + ", or correct its family in the list"));
            }
        }
    }

    private static void half(Situation at, Outcomes out, Gaps gaps, LeadEnd end) {
        if (both(at, gaps, "contact half", end.half(), end.plug().half(), end)) {
            ContactHalf lead = end.half().or(ContactHalf.NEUTRAL);
            ContactHalf unit = end.plug().half().or(ContactHalf.NEUTRAL);
            if (mate(lead, unit)) {
                out.looked();
            } else {
                out.finding(draft(at, end, lead.word(), unit.word(), "contacts")
                        .fix("make " + end.lead().id() + " with a plug that carries "
                                + partner(unit).word() + " at " + end.name(at)
                                + "; look at the contacts, not at the shell"));
            }
        }
    }

    private static boolean mate(ContactHalf a, ContactHalf b) {
        return partner(a) == b;
    }

    private static ContactHalf partner(ContactHalf half) {
        return switch (half) {
            case PINS -> ContactHalf.SOCKETS;
            case SOCKETS -> ContactHalf.PINS;
            case NEUTRAL -> ContactHalf.NEUTRAL;
        };
    }

    /** Whether both sides are known; what is missing is noted. */
    private static boolean both(Situation at, Gaps gaps, String what, Datum<?> onLead, Datum<?> onUnit, LeadEnd end) {
        if (onLead.isNotApplicable() || onUnit.isNotApplicable()) {
            return false;
        }
        if (onLead.isMissing()) {
            gaps.add(what + " of the lead", end.lead().id() + " at " + end.name(at));
        }
        if (onUnit.isMissing()) {
            gaps.add(what + " of the unit", end.name(at));
        }
        return onLead.isKnown() && onUnit.isKnown();
    }

    private static Draft draft(Situation at, LeadEnd end, String lead, String unit, String what) {
        String name = end.name(at);
        return Draft.of(
                        Severity.S2,
                        "plug does not mate: " + end.lead().id() + " has " + lead + " at " + name + ", which has "
                                + unit)
                .about(end.lead().id(), name, what)
                .at(end.lead())
                .seen(at.directory().unit(end.unit()))
                .sum(what + ": lead " + lead + ", unit " + unit)
                .why("it cannot be plugged as drawn, and force or an adapter makes something else of it")
                .meter("hold both plugs side by side, face to face");
    }
}
