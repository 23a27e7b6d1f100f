package ringout.check.record;

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
import ringout.finding.Place;
import ringout.finding.Severity;
import ringout.graph.order.BuildPlan;
import ringout.graph.order.Covers;
import ringout.graph.order.Item;
import ringout.graph.order.Items;
import ringout.graph.order.LeadEnd;
import ringout.graph.order.PlanStep;
import ringout.model.Signature;

/**
 * Something grave that one person both made and inspected.
 *
 * <p>Why it matters: who made a mistake does not see it; that is what the second person is for.
 *
 * <p>Condition: the same name stands for made, or did the step, and for inspected, of a step, a hold point, a unit that flight
 * depends on, a lead of such a unit, or a joint under a lid. Other items may be inspected by who made them.
 *
 * <p>Does not see: whether the second person looked. A firm of one person waives it with the method: photo and a look the next
 * day.
 *
 * <p>Reference: common practice, no source.
 */
@CheckInfo(
        code = "X09",
        name = "made-and-inspected-by-one",
        severity = Severity.S3,
        since = "0.3",
        needs = {"who made and who inspected each item"})
public final class OnePerson implements Check {
    /** Who made and who inspected an item. */
    private record Pair(List<String> made, List<String> inspected, List<Signature> rows) {}

    @Override
    public void look(Situation at, Outcomes out) {
        List<Signature> signatures = at.aircraft().record().signatures();
        if (signatures.isEmpty()) {
            return;
        }
        Gaps gaps = new Gaps();
        Map<String, Pair> byItem = new LinkedHashMap<>();
        for (Signature signature : signatures) {
            String role = signature.role().or("").strip().toLowerCase(Locale.ROOT);
            boolean open = signature.role().isMissing() || signature.by().isMissing();
            if (open && grave(at, signature.item())) {
                gaps.add("name and role of the signature", signature.item());
            } else if (!open) {
                Pair pair = byItem.computeIfAbsent(
                        signature.item(), key -> new Pair(new ArrayList<>(), new ArrayList<>(), new ArrayList<>()));
                pair.rows().add(signature);
                (role.equals("inspected") ? pair.inspected() : pair.made())
                        .add(fold(signature.by().or("")));
            }
        }
        byItem.forEach((item, pair) -> {
            BuildPlan.of(at.circuit())
                    .step(item)
                    .flatMap(step -> step.step().by().known())
                    .ifPresent(by -> pair.made().add(fold(by)));
            look(at, out, item, pair);
        });
        gaps.tell(out, datum -> new Gaps.Way("ask who signed", 2));
    }

    private static String fold(String name) {
        return name.strip().toUpperCase(Locale.ROOT);
    }

    private static void look(Situation at, Outcomes out, String item, Pair pair) {
        if (pair.made().isEmpty() || pair.inspected().isEmpty() || !grave(at, item)) {
            return;
        }
        if (pair.inspected().stream().anyMatch(name -> !pair.made().contains(name))) {
            out.looked();
            return;
        }
        String who = pair.rows().get(pair.rows().size() - 1).by().or("");
        boolean step = BuildPlan.of(at.circuit()).step(item).isPresent();
        String what = step ? "step " + item : item;
        Draft draft = Draft.of(Severity.S3, "made and inspected by one: " + who + " did both for " + what)
                .about(item)
                .cause(item + "/signature")
                .sum("made: " + String.join(", ", pair.made()) + "; inspected: " + String.join(", ", pair.inspected()))
                .why("who made a mistake does not see it")
                .fix("have " + what + " inspected by another person");
        pair.rows().forEach(row -> draft.at(new Place(row.at(), row.item(), "signature of " + row.item())));
        out.finding(draft);
    }

    /** A step or hold point, what flight depends on, or what a lid hides. */
    private static boolean grave(Situation at, String name) {
        if (BuildPlan.of(at.circuit()).step(name).isPresent() || hold(at, name)) {
            return true;
        }
        Item item = Items.of(at.circuit()).find(name);
        if (item instanceof Item.OfUnit of) {
            return at.flightCritical(at.directory().name(of.unit()));
        }
        if (item instanceof Item.OfPlug on) {
            return grave(at, on.unit(), on.plug());
        }
        return item instanceof Item.OfLead lead
                && Items.of(at.circuit()).rows(lead.id()).stream()
                        .flatMap(row -> BuildPlan.ends(at.wiring(), row).stream())
                        .anyMatch((LeadEnd end) -> grave(at, end.unit(), end.plug()));
    }

    private static boolean hold(Situation at, String name) {
        for (PlanStep step : BuildPlan.of(at.circuit()).steps()) {
            if (step.items().stream()
                    .anyMatch(
                            item -> item instanceof Item.Strange of && of.name().equalsIgnoreCase(name))) {
                return true;
            }
        }
        return false;
    }

    private static boolean grave(Situation at, int unit, int plug) {
        Covers covers = Covers.of(at.circuit());
        for (int cover = 0; cover < covers.all().size(); cover++) {
            if (covers.hides(cover, unit, plug)) {
                return true;
            }
        }
        return at.flightCritical(at.directory().name(unit));
    }
}
