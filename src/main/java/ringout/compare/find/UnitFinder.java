package ringout.compare.find;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import ringout.compare.difference.Difference;
import ringout.compare.difference.Kind;
import ringout.compare.difference.Touched;
import ringout.compare.match.Cable;
import ringout.compare.match.Match;
import ringout.finding.Place;
import ringout.graph.Directory;
import ringout.graph.Wire;
import ringout.graph.Wiring;
import ringout.model.Joint;
import ringout.model.PortSetting;
import ringout.model.Unit;
import ringout.model.shape.Shape;
import ringout.text.Span;

/** Differences of units and joints: new, gone, renamed, exchanged, moved, set otherwise. */
final class UnitFinder {
    private static final Shape<Unit> UNIT = Shape.of(Unit.class);

    private final Scene scene;
    private final Match match;
    private final List<Difference> found = new ArrayList<>();

    UnitFinder(Scene scene) {
        this.scene = scene;
        this.match = scene.match();
    }

    List<Difference> find() {
        Directory here = match.base().directory();
        Directory there = match.other().directory();
        for (int unit = 0; unit < here.count(); unit++) {
            if (match.unit(unit) < 0) {
                alone(match.base(), unit, true);
            } else if (here.isJoint(unit)) {
                joint(here.joint(unit), there.joint(match.unit(unit)));
            } else {
                unit(unit, here.unit(unit), there.unit(match.unit(unit)));
            }
        }
        for (int unit = 0; unit < there.count(); unit++) {
            if (match.unitBack(unit) < 0) {
                alone(match.other(), unit, false);
            }
        }
        return found;
    }

    /** A unit only one of them has, with the leads that go with it. */
    private void alone(Wiring wiring, int unit, boolean here) {
        String name = wiring.directory().name(unit);
        List<Cable> cables = (here ? match.gone() : match.added())
                .stream().filter(cable -> ends(wiring, cable, unit)).toList();
        List<Wire> wires =
                cables.stream().flatMap(cable -> cable.wires().stream()).toList();
        Set<String> leads = cables.stream().map(Cable::id).collect(Collectors.toCollection(TreeSet::new));
        String words = what(wiring, unit) + (leads.isEmpty() ? "" : " with " + String.join(", ", leads));
        boolean joint = wiring.directory().isJoint(unit);
        Kind kind = joint ? Kind.JOINT : here ? Kind.UNIT_GONE : Kind.UNIT_NEW;
        Touched touched = here
                ? new Touched(wires, List.of(), Set.of(name), Set.of(), leads, Set.of())
                : new Touched(List.of(), wires, Set.of(), Set.of(name), Set.of(), leads);
        List<Place> at = List.of(place(wiring, unit));
        Set<String> causes = new TreeSet<>(leads);
        causes.add(name);
        found.add(new Difference(
                kind,
                name,
                name,
                here ? words : "",
                here ? "" : words,
                List.of(),
                here ? at : List.of(),
                here ? List.of() : at,
                causes,
                touched));
    }

    private static boolean ends(Wiring wiring, Cable cable, int unit) {
        return cable.wires().stream()
                .anyMatch(wire -> wiring.unitOf(wire.fromPin()) == unit || wiring.unitOf(wire.toPin()) == unit);
    }

    private static String what(Wiring wiring, int unit) {
        return wiring.directory().isJoint(unit)
                ? wiring.directory()
                        .joint(unit)
                        .kind()
                        .known()
                        .map(kind -> kind.word())
                        .orElse("joint")
                : wiring.directory()
                        .unit(unit)
                        .what()
                        .or(wiring.directory().unit(unit).type());
    }

    private static Place place(Wiring wiring, int unit) {
        return wiring.directory().isJoint(unit)
                ? place(wiring.directory().joint(unit))
                : Scene.place(wiring.directory().unit(unit));
    }

    private static Place place(Joint joint) {
        return new Place(joint.at(), joint.id(), joint.id());
    }

    private void joint(Joint here, Joint there) {
        List<FieldChange> changes = new ArrayList<>();
        rename(changes, here.id(), there.id());
        changes.addAll(new FieldWalk(scene.values()).of(here, there, slot -> true));
        if (!changes.isEmpty()) {
            add(Kind.JOINT, here.id(), there.id(), changes, place(here), place(there));
        }
    }

    private static void rename(List<FieldChange> changes, String here, String there) {
        if (!Names.fold(here).equals(Names.fold(there))) {
            changes.add(new FieldChange("ref", "ref", "name", here, there, Span.NONE, Span.NONE));
        }
    }

    private void unit(int number, Unit here, Unit there) {
        List<FieldChange> names = new ArrayList<>();
        rename(names, here.ref(), there.ref());
        if (!names.isEmpty()) {
            add(Kind.UNIT_NAME, here.ref(), there.ref(), names, Scene.place(here), Scene.place(there));
        }
        Map<Kind, List<FieldChange>> changes = new EnumMap<>(Kind.class);
        exchanged(number, here, there).ifPresent(change -> changes.put(Kind.UNIT_TYPE, List.of(change)));
        List<FieldChange> fields = new FieldWalk(scene.values())
                .of(
                        ported(here, there),
                        ported(there, here),
                        slot -> !slot.name().equals("type"));
        for (FieldChange change : fields) {
            changes.computeIfAbsent(UnitKinds.ofUnit(change), key -> new ArrayList<>())
                    .add(change);
        }
        changes.forEach((kind, list) -> byObject(kind, list)
                .forEach(same -> add(kind, here.ref(), there.ref(), same, Scene.place(here), Scene.place(there))));
    }

    /** A setting is one difference a port or output; what belongs together, such as a place, is one a unit. */
    private static List<List<FieldChange>> byObject(Kind kind, List<FieldChange> changes) {
        if (kind == Kind.POSITION || kind == Kind.ORIENTATION || kind == Kind.READ_OF_UNIT) {
            return List.of(changes);
        }
        Map<String, List<FieldChange>> groups = new LinkedHashMap<>();
        changes.forEach(change ->
                groups.computeIfAbsent(change.group(), key -> new ArrayList<>()).add(change));
        return List.copyOf(groups.values());
    }

    private Optional<FieldChange> exchanged(int number, Unit here, Unit there) {
        if (Names.fold(here.type()).equals(Names.fold(there.type()))) {
            return Optional.empty();
        }
        Object type = match.base().directory().type(number);
        Object typeThere = match.other().directory().type(match.unit(number));
        String differs = new FieldWalk(scene.values())
                .of(type, typeThere, slot -> true).stream()
                        .map(change -> change.what() + " " + Said.change(change))
                        .collect(Collectors.joining("; "));
        String words = there.type() + (differs.isEmpty() ? " (of equal record)" : " (" + differs + ")");
        return Optional.of(new FieldChange("type", "type", "type", here.type(), words, Span.NONE, Span.NONE));
    }

    /** A setting without the name of its port belongs to the only port there is: it takes the name the other row gives. */
    private static Unit ported(Unit unit, Unit twin) {
        boolean nameless = unit.ports().size() == 1
                && twin.ports().size() == 1
                && unit.ports().get(0).port().isEmpty();
        if (!nameless) {
            return unit;
        }
        Shape<PortSetting> shape = Shape.of(PortSetting.class);
        PortSetting named =
                shape.with(unit.ports().get(0), "port", twin.ports().get(0).port());
        return UNIT.with(unit, "ports", List.of(named));
    }

    private void add(Kind kind, String here, String there, List<FieldChange> changes, Place at, Place placeThere) {
        Set<String> causes = new TreeSet<>();
        changes.forEach(change -> {
            causes.add(here + "/" + change.field());
            causes.add(there + "/" + change.field());
        });
        if (kind == Kind.UNIT_TYPE) {
            causes.add(here);
        }
        found.add(Said.of(kind, here, changes, List.of(at), List.of(placeThere), causes, Touched.units(here, there)));
    }
}
