package ringout.compare.find;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import ringout.compare.difference.Difference;
import ringout.compare.difference.Kind;
import ringout.compare.difference.Touched;
import ringout.compare.match.Match;
import ringout.finding.Place;
import ringout.model.Aircraft;
import ringout.model.shape.Shape;
import ringout.model.shape.Slot;
import ringout.text.Span;

/**
 * Differences of what is neither a unit nor a lead: buses, airframe, states, functions, rules, waivers, record. What names the
 * aircraft and its revision is not among them.
 */
final class AircraftFinder {
    private static final Set<String> ELSEWHERE = Set.of("types", "units", "leads", "joints");
    private static final Set<String> TITLES =
            Set.of("name", "designation", "tail", "typeRevision", "tailRevision", "library");

    private final Scene scene;

    AircraftFinder(Scene scene) {
        this.scene = scene;
    }

    List<Difference> find() {
        Match match = scene.match();
        Aircraft here = match.base().aircraft();
        Aircraft there = match.other().aircraft();
        List<Difference> found = new ArrayList<>();
        for (Slot slot : Shape.of(Aircraft.class).slots()) {
            if (!ELSEWHERE.contains(slot.name()) && !TITLES.contains(slot.name())) {
                part(slot, here, there, found);
            }
        }
        return found;
    }

    private void part(Slot slot, Aircraft here, Aircraft there, List<Difference> found) {
        Map<String, List<FieldChange>> groups = new LinkedHashMap<>();
        boolean inner = slot.kind() == Slot.Kind.RECORD;
        List<FieldChange> changes = inner
                ? new FieldWalk(scene.values()).of(slot.get(here), slot.get(there), any -> true)
                : new FieldWalk(scene.values()).of(here, there, slot::equals);
        changes.forEach(change ->
                groups.computeIfAbsent(change.group(), key -> new ArrayList<>()).add(change));
        groups.values().forEach(group -> found.add(difference(slot, group)));
    }

    private static Difference difference(Slot slot, List<FieldChange> group) {
        String field = UnitKinds.outer(group.get(0));
        boolean reading = slot.name().equals("record") && field.equals("readings");
        Kind kind = reading ? Kind.READING : UnitKinds.ofAircraft(slot.name());
        String words = group.get(0).group();
        return Said.of(
                kind,
                Values.words(slot.name()),
                group,
                places(group.stream().map(FieldChange::at).toList(), words),
                places(group.stream().map(FieldChange::there).toList(), words),
                Set.of(),
                Touched.NOTHING);
    }

    private static List<Place> places(List<Span> spans, String words) {
        return spans.stream()
                .filter(Span::known)
                .distinct()
                .limit(1)
                .map(span -> new Place(span, words, words))
                .toList();
    }
}
