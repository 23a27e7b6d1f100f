package ringout.compare.find;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import ringout.compare.difference.Difference;
import ringout.compare.difference.Kind;
import ringout.compare.difference.Touched;
import ringout.compare.match.Match;
import ringout.finding.Place;
import ringout.graph.Directory;
import ringout.model.UnitType;

/** Differences of the types that are aboard: contacts, ratings, the rest. A type nobody uses is no difference of the aircraft. */
final class TypeFinder {
    private final Scene scene;
    private final Match match;

    TypeFinder(Scene scene) {
        this.scene = scene;
        this.match = scene.match();
    }

    List<Difference> find() {
        Directory here = match.base().directory();
        Directory there = match.other().directory();
        Set<String> looked = new HashSet<>();
        List<Difference> found = new ArrayList<>();
        for (int unit = 0; unit < here.count(); unit++) {
            int twin = match.unit(unit);
            boolean both = twin >= 0 && !here.isJoint(unit) && here.typeKnown(unit) && there.typeKnown(twin);
            if (both
                    && Names.fold(here.unit(unit).type())
                            .equals(Names.fold(there.unit(twin).type()))
                    && looked.add(Names.fold(here.unit(unit).type()))) {
                look(here.type(unit), there.type(twin), found);
            }
        }
        return found;
    }

    private void look(UnitType here, UnitType there, List<Difference> found) {
        Map<Kind, List<FieldChange>> changes = new EnumMap<>(Kind.class);
        for (FieldChange change : new FieldWalk(scene.values()).of(here, there, slot -> true)) {
            changes.computeIfAbsent(UnitKinds.ofType(change), key -> new ArrayList<>())
                    .add(change);
        }
        changes.forEach((kind, list) -> found.add(difference(kind, here, there, list)));
    }

    private Difference difference(Kind kind, UnitType here, UnitType there, List<FieldChange> changes) {
        Set<String> units = new TreeSet<>();
        match.base().aircraft().units().stream()
                .filter(unit -> Names.fold(unit.type()).equals(Names.fold(here.name())))
                .forEach(unit -> units.add(unit.ref()));
        Set<String> unitsThere = new TreeSet<>();
        match.other().aircraft().units().stream()
                .filter(unit -> Names.fold(unit.type()).equals(Names.fold(there.name())))
                .forEach(unit -> unitsThere.add(unit.ref()));
        return Said.of(
                kind,
                here.name(),
                changes,
                List.of(new Place(here.at(), here.name(), "type " + here.name())),
                List.of(new Place(there.at(), there.name(), "type " + there.name())),
                Set.of(here.name()),
                new Touched(List.of(), List.of(), units, unitsThere, Set.of(), Set.of()));
    }
}
