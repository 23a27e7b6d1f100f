package ringout.check.installation;

import java.util.List;
import java.util.Locale;
import java.util.Set;
import ringout.check.form.Check;
import ringout.check.form.CheckInfo;
import ringout.check.form.Gaps;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.finding.Draft;
import ringout.finding.Severity;
import ringout.model.Datum;
import ringout.model.Lead;
import ringout.model.Zone;

/**
 * Tin that mates gold in a wet zone.
 *
 * <p>Why it matters: water between unlike metals makes a cell; the tin wanders onto the gold, turns to oxide with every small movement,
 * and the contact loses itself from the inside.
 *
 * <p>Condition: the unit sits in a zone that sees spray or rain, and of the contacts of lead and unit one is tin and the
 * other gold. Nothing is asked before the plating of a lead's contacts is listed.
 *
 * <p>Does not see: other pairs of metals, what lies under the plating.
 *
 * <p>Reference: common practice, no source.
 */
@CheckInfo(
        code = "M27",
        name = "unlike-plating",
        severity = Severity.S4,
        since = "0.3",
        needs = {"plating of the contacts at both sides"})
public final class UnlikePlating implements Check {
    private static final Set<String> PAIR = Set.of("tin", "gold");

    @Override
    public void look(Situation at, Outcomes out) {
        if (!Asked.ofLeads(at, List.of(Lead::fromPlating, Lead::toPlating))) {
            return;
        }
        LeadZones zones = new LeadZones(at);
        Gaps gaps = new Gaps();
        LeadEnd.each(at, end -> {
            if (!end.plating().isNotApplicable() && !end.plug().plating().isNotApplicable() && wet(zones, gaps, end)) {
                look(at, out, gaps, end);
            }
        });
        gaps.tell(out, datum -> switch (datum) {
            case "whether it sees spray or rain" -> new Gaps.Way("look there after a flight", 1);
            case "plating" -> new Gaps.Way("look at the contact: gold is yellow, tin is grey", 1);
            default -> LeadZones.way(datum);
        });
    }

    private static boolean wet(LeadZones zones, Gaps gaps, LeadEnd end) {
        if (zones.none()) {
            return false;
        }
        boolean wet = false;
        for (Zone zone : zones.ofUnit(end.unit(), gaps)) {
            wet |= zone.wet().is(true);
            if (zone.wet().isMissing()) {
                gaps.add("whether it sees spray or rain", zone.name());
            }
        }
        return wet;
    }

    private static void look(Situation at, Outcomes out, Gaps gaps, LeadEnd end) {
        if (end.plating().isMissing()) {
            gaps.add("plating", end.lead().id() + " at " + end.name(at));
        }
        if (end.plug().plating().isMissing()) {
            gaps.add("plating", end.name(at));
        }
        if (!end.plating().isKnown() || !end.plug().plating().isKnown()) {
            return;
        }
        String lead = metal(end.plating());
        String unit = metal(end.plug().plating());
        if (PAIR.equals(Set.copyOf(List.of(lead, unit)))) {
            out.finding(draft(at, end, lead, unit));
        } else {
            out.looked();
        }
    }

    private static String metal(Datum<String> plating) {
        String word = plating.or("").strip().toLowerCase(Locale.ROOT);
        return word.startsWith("gold") ? "gold" : word.startsWith("tin") ? "tin" : word;
    }

    private static Draft draft(Situation at, LeadEnd end, String lead, String unit) {
        String name = end.name(at);
        return Draft.of(
                        Severity.S4,
                        "unlike contacts in the wet: " + end.lead().id() + " has " + lead + " at " + name
                                + ", which has " + unit)
                .about(end.lead().id(), name)
                .at(end.lead())
                .seen(at.directory().unit(end.unit()))
                .sum("lead " + lead + ", unit " + unit + ", zone "
                        + at.directory().unit(end.unit()).zone().or(""))
                .why("water between them makes a cell, and the contact loses itself from the inside")
                .meter("drop over the mated contact under load: it grows from inspection to inspection")
                .fix("make " + end.lead().id() + " with " + unit + " contacts at " + name);
    }
}
