package ringout.graph;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import ringout.model.Aircraft;
import ringout.model.Datum;
import ringout.model.End;
import ringout.model.Lead;
import ringout.model.Pin;
import ringout.model.PinMap;
import ringout.model.PinRole;
import ringout.model.Plug;
import ringout.model.Unit;
import ringout.model.UnitType;
import ringout.model.shape.Shape;

/**
 * Stand-ins for unit types that are not in the library: the plugs and pins that the rows name, all of unknown role, so that
 * a list without a library still has a shape. A joint is one point.
 */
final class GuessedTypes {
    private GuessedTypes() {}

    static Map<String, TypeLayout> of(Aircraft aircraft, Set<String> types) {
        Map<String, Map<String, Set<String>>> plugs = new HashMap<>();
        Set<String> unknown = new HashSet<>();
        for (Unit unit : aircraft.units()) {
            if (!types.contains(Directory.fold(unit.type()))) {
                unknown.add(unit.ref());
            }
        }
        if (unknown.isEmpty()) {
            return Map.of();
        }
        for (Lead lead : aircraft.leads()) {
            note(plugs, unknown, lead.from(), pinsOf(lead, true));
            note(plugs, unknown, lead.to(), pinsOf(lead, false));
        }
        Map<String, TypeLayout> layouts = new HashMap<>();
        plugs.forEach((unit, named) -> layouts.put(unit, new TypeLayout(type("?", named, Datum.notAsked()))));
        return layouts;
    }

    private static Set<String> pinsOf(Lead lead, boolean from) {
        Set<String> pins = new LinkedHashSet<>();
        for (PinMap.Pair pair : lead.pins().or(new PinMap(List.of())).pairs()) {
            pins.add(from ? pair.from() : pair.to());
        }
        return pins;
    }

    private static void note(
            Map<String, Map<String, Set<String>>> plugs, Set<String> unknown, End end, Set<String> pins) {
        String text = end.text();
        for (int i = text.length() - 1; i > 0; i--) {
            if (text.charAt(i) == '-' && unknown.contains(text.substring(0, i))) {
                String rest = text.substring(i + 1);
                int dash = rest.indexOf('-');
                String plug = dash < 0 ? rest : rest.substring(0, dash);
                Set<String> named = plugs.computeIfAbsent(text.substring(0, i), key -> new LinkedHashMap<>())
                        .computeIfAbsent(plug, key -> new LinkedHashSet<>());
                named.addAll(pins);
                if (dash >= 0) {
                    named.add(rest.substring(dash + 1));
                }
                return;
            }
        }
    }

    static TypeLayout bare(String name) {
        return new TypeLayout(type(name, Map.of(), Datum.notAsked()));
    }

    static TypeLayout point() {
        return Point.LAYOUT;
    }

    /** Laid out once: every joint of every list has the same. */
    private static final class Point {
        private static final TypeLayout LAYOUT =
                new TypeLayout(type("joint", Map.of("", Set.of("1")), Datum.of(PinRole.PASSIVE)));
    }

    private static UnitType type(String name, Map<String, Set<String>> named, Datum<PinRole> role) {
        List<Plug> plugs = new ArrayList<>();
        named.forEach((plug, pins) -> plugs.add(plug(plug, pins, role)));
        Shape<UnitType> shape = Shape.of(UnitType.class);
        return shape.with(shape.with(shape.empty(), "name", name), "plugs", List.copyOf(plugs));
    }

    private static Plug plug(String name, Set<String> numbers, Datum<PinRole> role) {
        Shape<Pin> shape = Shape.of(Pin.class);
        List<Pin> pins = new ArrayList<>();
        for (String number : numbers) {
            Pin pin = shape.with(shape.with(shape.empty(), "number", number), "role", role);
            pins.add(role.isKnown() ? shape.with(pin, "inside", Datum.of("point")) : pin);
        }
        Shape<Plug> plug = Shape.of(Plug.class);
        return plug.with(plug.with(plug.empty(), "name", name), "pins", List.copyOf(pins));
    }
}
