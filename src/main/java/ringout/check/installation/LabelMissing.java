package ringout.check.installation;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import ringout.check.form.Check;
import ringout.check.form.CheckInfo;
import ringout.check.form.Gaps;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.finding.Draft;
import ringout.finding.Severity;
import ringout.model.Datum;
import ringout.model.Lead;

/**
 * A lead without a label at one of its ends, or two leads with one label.
 *
 * <p>Why it matters: in the field a lead is known by its label alone; without one, or with one that another lead has too, it goes
 * into the wrong socket or is cut.
 *
 * <p>Condition: an end is told to have no label (n/a); or leads of different identity carry the same label. Nothing is asked
 * before a label of any lead is listed.
 *
 * <p>Does not see: where the label sits (within 75 mm of the end is common), whether it can be read.
 *
 * <p>Reference: common practice, no source.
 */
@CheckInfo(
        code = "M10",
        name = "label-missing",
        severity = Severity.S4,
        since = "0.3",
        needs = {"labels at both ends"})
public final class LabelMissing implements Check {
    @Override
    public void look(Situation at, Outcomes out) {
        if (!Asked.ofLeads(at, List.of(Lead::fromLabel, Lead::toLabel))) {
            return;
        }
        Gaps gaps = new Gaps();
        Map<String, List<Lead>> byLabel = new LinkedHashMap<>();
        for (Lead lead : at.aircraft().leads()) {
            List<String> bare = new ArrayList<>();
            end(gaps, byLabel, bare, lead, true);
            end(gaps, byLabel, bare, lead, false);
            if (!bare.isEmpty()) {
                out.finding(bare(lead, bare));
            }
        }
        byLabel.forEach((label, leads) -> {
            out.looked();
            if (leads.stream().map(Lead::id).distinct().count() > 1) {
                out.finding(shared(leads));
            }
        });
        gaps.tell(out, datum -> new Gaps.Way("look at the lead", 1));
    }

    private static void end(Gaps gaps, Map<String, List<Lead>> byLabel, List<String> bare, Lead lead, boolean from) {
        Datum<String> label = from ? lead.fromLabel() : lead.toLabel();
        String end = (from ? lead.from() : lead.to()).toString();
        if (label.isNotApplicable()) {
            bare.add(end);
        } else if (label.isMissing()) {
            gaps.add("label", lead.id() + " at " + end);
        } else {
            List<Lead> leads =
                    byLabel.computeIfAbsent(label.or("").strip().toUpperCase(Locale.ROOT), key -> new ArrayList<>(1));
            if (leads.isEmpty() || !leads.get(leads.size() - 1).id().equals(lead.id())) {
                leads.add(lead);
            }
        }
    }

    private static Draft bare(Lead lead, List<String> ends) {
        return Draft.of(Severity.S4, "no label: " + lead.id() + " at " + String.join(" and ", ends))
                .about(lead.id())
                .at(lead)
                .sum("label told to be absent at " + String.join(" and ", ends))
                .why("in the field a lead is known by its label alone")
                .fix("label every lead at both ends, within 75 mm");
    }

    private static Draft shared(List<Lead> leads) {
        List<String> ids = leads.stream().map(Lead::id).distinct().toList();
        Lead first = leads.get(0);
        String label =
                first.fromLabel().known().or(() -> first.toLabel().known()).orElse("");
        Draft draft = Draft.of(Severity.S4, "one label on several leads: " + label + " on " + String.join(", ", ids))
                .about(ids)
                .sum("label " + label + ": " + String.join(", ", ids))
                .why("one of them is taken for the other")
                .fix("give each of " + String.join(", ", ids) + " a label of its own");
        leads.forEach(draft::at);
        return draft;
    }
}
