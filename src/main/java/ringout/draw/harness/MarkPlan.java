package ringout.draw.harness;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import ringout.draw.scene.BadgeKind;
import ringout.draw.scene.FindingLine;
import ringout.draw.scene.Mark;
import ringout.draw.scene.Move;
import ringout.draw.scene.Presence;
import ringout.draw.scene.Wire;
import ringout.draw.scene.WireKind;
import ringout.draw.scene.WiringSceneBuilder;
import ringout.finding.Finding;
import ringout.finding.Headline;
import ringout.finding.Place;
import ringout.finding.Severity;
import ringout.finding.Sketch;
import ringout.graph.Circuit;
import ringout.graph.Site;
import ringout.graph.Trail;
import ringout.model.End;

/**
 * Which findings show on a sheet and how: badges on conductors, plugs and units, ghosts of what is missing, crosses on what
 * is too much, arrows from where a thing is to where it should be.
 */
final class MarkPlan {
    private final Circuit circuit;
    private final List<Headline> headlines;
    private final Focus focus;
    private final Set<String> leads = new HashSet<>();
    private final Map<String, Presence> terminators = new HashMap<>();
    private final Set<String> extraLeads = new HashSet<>();

    MarkPlan(Circuit circuit, List<Headline> headlines, Focus focus) {
        this.circuit = circuit;
        this.focus = focus;
        this.headlines = headlines;
        circuit.wiring().aircraft().leads().forEach(lead -> leads.add(lead.id()));
        headlines.forEach(headline -> headline.finding().sketches().forEach(this::plan));
    }

    private void plan(Sketch sketch) {
        if (sketch instanceof Sketch.Missing missing && missing.what() == Sketch.What.TERMINATOR) {
            terminators.put(missing.from(), Presence.MISSING);
        } else if (sketch instanceof Sketch.Extra extra && extra.what() == Sketch.What.TERMINATOR) {
            terminators.put(extra.at(), Presence.EXTRA);
        } else if (sketch instanceof Sketch.Extra extra) {
            extraLeads.add(extra.at());
        }
    }

    /** How the terminator of a unit is drawn. */
    Presence terminator(String unit) {
        return terminators.getOrDefault(unit, Presence.FITTED);
    }

    /** How the conductors of a lead are drawn. */
    Presence wire(String lead) {
        return extraLeads.contains(lead) ? Presence.EXTRA : Presence.FITTED;
    }

    /** Adds the plugs that missing conductors need, where one of their units is on the sheet already. */
    void plugsWanted(Map<Integer, Set<Integer>> plugsOf) {
        for (Headline headline : headlines) {
            for (Sketch sketch : headline.finding().sketches()) {
                if (sketch instanceof Sketch.Missing missing && missing.what() == Sketch.What.WIRE) {
                    wanted(missing, plugsOf);
                }
            }
        }
    }

    private void wanted(Sketch.Missing missing, Map<Integer, Set<Integer>> plugsOf) {
        Site from = circuit.wiring().directory().resolve(new End(missing.from()));
        Site to = circuit.wiring().directory().resolve(new End(missing.to()));
        if (from instanceof Site.OnPin a
                && to instanceof Site.OnPin b
                && (plugsOf.containsKey(a.unit()) || plugsOf.containsKey(b.unit()))) {
            plugsOf.computeIfAbsent(a.unit(), key -> new TreeSet<>()).add(a.plug());
            plugsOf.computeIfAbsent(b.unit(), key -> new TreeSet<>()).add(b.plug());
        }
    }

    /** Number of headlines with a mark on the sheet. */
    int shown(SheetScene.Seen seen) {
        return (int) headlines.stream()
                .filter(headline -> !targets(headline.finding(), seen).isEmpty())
                .count();
    }

    /** Puts ghosts, arrows, badges and the finding list on the sheet. */
    void draw(WiringSceneBuilder scene, SheetScene.Seen seen) {
        for (int i = 0; i < headlines.size(); i++) {
            Finding finding = headlines.get(i).finding();
            if (!finding.severity().atLeast(Severity.S4) || !focus.shows(i + 1)) {
                continue;
            }
            List<String> targets = new ArrayList<>(targets(finding, seen));
            finding.sketches().forEach(sketch -> sketch(scene, seen, sketch, targets));
            if (!targets.isEmpty()) {
                BadgeKind kind = BadgeKind.valueOf(finding.severity().name());
                scene.mark(new Mark(i + 1, kind, false, targets));
                scene.finding(new FindingLine(i + 1, kind, false, finding.code(), finding.title()));
            }
        }
    }

    private void sketch(WiringSceneBuilder scene, SheetScene.Seen seen, Sketch sketch, List<String> targets) {
        if (sketch instanceof Sketch.Misplaced misplaced) {
            var from = seen.terminator(misplaced.from());
            var to = seen.terminator(misplaced.to());
            if (from.isPresent() && to.isPresent() && !from.equals(to)) {
                scene.move(
                        new Move(seen.free("move " + misplaced.from() + " " + misplaced.to()), from.get(), to.get()));
            }
        } else if (sketch instanceof Sketch.Missing missing && missing.what() == Sketch.What.WIRE) {
            ghost(scene, seen, missing, targets);
        }
    }

    private void ghost(WiringSceneBuilder scene, SheetScene.Seen seen, Sketch.Missing missing, List<String> targets) {
        var from = seen.row(missing.from());
        var to = seen.row(missing.to());
        if (from.isPresent() && to.isPresent() && !from.equals(to)) {
            String id = seen.free("missing " + missing.from());
            scene.wire(new Wire(
                    id,
                    "missing",
                    "",
                    "",
                    WireKind.OTHER,
                    "missing " + missing.from(),
                    from.get(),
                    to.get(),
                    Presence.MISSING));
            targets.add(id);
        }
    }

    /** What of a finding shows here; nothing when it names rows and none of them is on this sheet. */
    private Set<String> targets(Finding finding, SheetScene.Seen seen) {
        List<String> rows =
                finding.at().stream().map(Place::row).filter(leads::contains).toList();
        if (!rows.isEmpty()
                && rows.stream().allMatch(row -> seen.wires(row, Set.of()).isEmpty())) {
            return Set.of();
        }
        Set<String> pins = new TreeSet<>();
        for (Trail.Step step : finding.evidence().path().steps()) {
            if (step.kind() == Trail.Kind.PIN) {
                pins.add(step.name());
            }
        }
        Set<String> targets = new LinkedHashSet<>();
        for (Place place : finding.at()) {
            if (finding.causes().contains(place.row())) {
                targets.addAll(seen.wires(place.row(), pins));
            }
        }
        for (String object : finding.objects()) {
            seen.terminator(object)
                    .filter(id -> finding.causes().contains(object + "/terminator"))
                    .ifPresent(targets::add);
            seen.row(object).or(() -> seen.box(object)).ifPresent(targets::add);
        }
        for (Place place : targets.isEmpty() ? finding.at() : List.<Place>of()) {
            seen.box(place.row()).ifPresent(targets::add);
            targets.addAll(seen.wires(place.row(), pins));
        }
        return targets;
    }
}
