package ringout.check.installation;

import java.util.List;
import java.util.OptionalInt;
import ringout.check.form.Check;
import ringout.check.form.CheckInfo;
import ringout.check.form.Gaps;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.finding.Draft;
import ringout.finding.Severity;
import ringout.model.Datum;
import ringout.model.Lead;
import ringout.model.Plug;

/**
 * A lead whose plug has another key or another number of poles than the plug of the unit.
 *
 * <p>Why it matters: either it does not go in, or it goes in somewhere it was keyed against.
 *
 * <p>Condition: both key codes are known and differ; or the plugs are of one family and their numbers of poles differ. S2; S4 for
 * fewer poles on a header without a shroud, where the plug fits with contacts left over and can be shifted (M08). A plug marked
 * n/a has no key.
 *
 * <p>Does not see: a key cut off, the way round a plug goes in.
 *
 * <p>Reference: common practice, no source.
 */
@CheckInfo(
        code = "M05",
        name = "key-or-count-differs",
        severity = Severity.S2,
        since = "0.3",
        needs = {"key code at both sides", "number of poles at both sides"})
public final class KeyOrCountDiffers implements Check {
    @Override
    public void look(Situation at, Outcomes out) {
        boolean keys = Asked.ofLeads(at, List.of(Lead::fromKey, Lead::toKey));
        boolean families = Asked.ofLeads(at, List.of(Lead::fromFamily, Lead::toFamily));
        if (!keys && !families) {
            return;
        }
        Gaps gaps = new Gaps();
        LeadEnd.each(at, end -> {
            if (keys) {
                key(at, out, gaps, end);
            }
            if (families) {
                count(at, out, gaps, end);
            }
        });
        gaps.tell(out, datum -> new Gaps.Way("look at the plug", 1));
    }

    private static void key(Situation at, Outcomes out, Gaps gaps, LeadEnd end) {
        if (end.key().isNotApplicable() || end.plug().key().isNotApplicable()) {
            return;
        }
        boolean lead = Asked.is(end.key());
        boolean unit = Asked.is(end.plug().key());
        if (end.key().isMissing() && (lead || unit)) {
            gaps.add("key code of the lead", end.lead().id() + " at " + end.name(at));
        } else if (end.plug().key().isMissing() && (lead || unit)) {
            gaps.add("key code of the unit", end.name(at));
        } else if (lead && end.key().or("").equalsIgnoreCase(end.plug().key().or(""))) {
            out.looked();
        } else if (lead) {
            String has = end.key().or("");
            String wants = end.plug().key().or("");
            out.finding(draft(at, end, Severity.S2, "key " + has, "key " + wants)
                    .fix("make " + end.lead().id() + " with key " + wants + " at " + end.name(at)
                            + ", or plug it where it belongs"));
        }
    }

    private static void count(Situation at, Outcomes out, Gaps gaps, LeadEnd end) {
        if (!end.family().isKnown() || !end.plug().family().isKnown()) {
            return;
        }
        if (end.family().equals(end.plug().family())) {
            out.looked();
            return;
        }
        Family lead = Family.of(end.family().or(""));
        OptionalInt unit = poles(end.plug());
        if (!Family.of(end.plug().family().or("")).series().equals(lead.series())) {
            return;
        }
        if (lead.poles().isEmpty() || unit.isEmpty()) {
            if (lead.poles().isPresent() || unit.isPresent()) {
                gaps.add("number of poles", end.lead().id() + " at " + end.name(at));
            }
        } else if (lead.poles().getAsInt() == unit.getAsInt()) {
            out.looked();
        } else {
            boolean fits = lead.poles().getAsInt() < unit.getAsInt()
                    && end.plug().shrouded().is(false);
            out.finding(draft(
                            at,
                            end,
                            fits ? Severity.S4 : Severity.S2,
                            lead.poles().getAsInt() + " poles",
                            unit.getAsInt() + " poles")
                    .fix("make " + end.lead().id() + " with " + unit.getAsInt() + " poles at " + end.name(at)
                            + ", unused ones left empty"));
        }
    }

    /** Poles as the family of the unit's plug says; without a number there, its positions or contacts. */
    private static OptionalInt poles(Plug plug) {
        OptionalInt told = Family.of(plug.family().or("")).poles();
        if (told.isPresent()) {
            return told;
        }
        return plug.positions() instanceof Datum.Unknown
                ? OptionalInt.empty()
                : OptionalInt.of(plug.positions().or(plug.pins().size()));
    }

    private static Draft draft(Situation at, LeadEnd end, Severity severity, String lead, String unit) {
        String name = end.name(at);
        String what = lead.startsWith("key ") ? "key" : "poles";
        return Draft.of(
                        severity,
                        (what.equals("key") ? "key differs: " : "number of poles differs: ")
                                + end.lead().id() + " has " + lead + " at " + name + ", which has " + unit)
                .about(end.lead().id(), name, what)
                .at(end.lead())
                .seen(at.directory().unit(end.unit()))
                .sum("lead " + lead + ", unit " + unit)
                .why(
                        severity == Severity.S4
                                ? "it fits with contacts left over, and can be plugged one contact beside its place"
                                : "it does not go in, or it goes in where it was keyed against")
                .meter("hold both plugs side by side, face to face");
    }
}
