package ringout.graph;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import ringout.model.Aircraft;
import ringout.model.End;
import ringout.model.Joint;
import ringout.model.Lead;
import ringout.model.Unit;
import ringout.model.UnitType;
import ringout.text.Nearest;

/**
 * Everything aboard by name: units first, then joints as units with one point. Finds what an end of a lead points to.
 */
public final class Directory {
    private static final String SEPARATORS = "-.:/";

    private final Aircraft aircraft;
    private final List<String> names = new ArrayList<>();
    private final List<TypeLayout> layouts = new ArrayList<>();
    private final List<Boolean> known = new ArrayList<>();
    private final NameTable byName = new NameTable();

    /** Lists what is aboard. */
    public Directory(Aircraft aircraft) {
        this.aircraft = aircraft;
        Map<String, TypeLayout> types = new HashMap<>();
        aircraft.types().forEach(type -> types.computeIfAbsent(fold(type.name()), key -> new TypeLayout(type)));
        Map<String, TypeLayout> guessed = GuessedTypes.of(aircraft, types.keySet());
        for (Unit unit : aircraft.units()) {
            TypeLayout layout = types.get(unit.type());
            layout = layout == null ? types.get(fold(unit.type())) : layout;
            known.add(layout != null);
            add(unit.ref(), layout != null ? layout : guessed.getOrDefault(unit.ref(), GuessedTypes.bare(unit.type())));
        }
        TypeLayout point = GuessedTypes.point();
        for (Joint joint : aircraft.joints()) {
            known.add(true);
            add(joint.id(), point);
        }
    }

    private void add(String name, TypeLayout layout) {
        byName.add(name, names.size());
        names.add(name);
        layouts.add(layout);
    }

    static String fold(String name) {
        return name.toUpperCase(Locale.ROOT);
    }

    /** The aircraft listed. */
    public Aircraft aircraft() {
        return aircraft;
    }

    /** Number of units and joints. */
    public int count() {
        return names.size();
    }

    /** Whether a number is a joint and not a unit. */
    public boolean isJoint(int unit) {
        return unit >= aircraft.units().size();
    }

    /** The unit of a number; only for units, not joints. */
    public Unit unit(int unit) {
        return aircraft.units().get(unit);
    }

    /** The joint of a number; only for joints. */
    public Joint joint(int unit) {
        return aircraft.joints().get(unit - aircraft.units().size());
    }

    /** Name of a unit or joint. */
    public String name(int unit) {
        return names.get(unit);
    }

    /** Layout of its type. */
    public TypeLayout layout(int unit) {
        return layouts.get(unit);
    }

    /** The type of a unit. */
    public UnitType type(int unit) {
        return layouts.get(unit).type();
    }

    /** Whether the type of a unit is in the library. */
    public boolean typeKnown(int unit) {
        return known.get(unit);
    }

    /** A unit or joint by name. */
    public Optional<Integer> find(String name) {
        int unit = byName.find(name);
        return unit < 0 ? Optional.empty() : Optional.of(unit);
    }

    /** What an end of a lead points to. */
    public Site resolve(End end) {
        String text = end.text().strip();
        int whole = byName.find(text);
        if (whole >= 0) {
            return alone(whole);
        }
        for (int i = text.length() - 1; i > 0; i--) {
            if (SEPARATORS.indexOf(text.charAt(i)) >= 0) {
                int unit = byName.find(text, 0, i);
                if (unit >= 0) {
                    return within(unit, text.substring(i + 1).strip());
                }
            }
        }
        return new Site.Loose("no unit or joint for '" + text + "'", Nearest.hint(firstWord(text), names));
    }

    private Site alone(int unit) {
        int plugs = layouts.get(unit).type().plugs().size();
        if (plugs == 1) {
            return new Site.OnPlug(unit, 0);
        }
        return new Site.Loose("'" + names.get(unit) + "' has " + plugs + " plugs: name one", has(unit));
    }

    private Site within(int unit, String rest) {
        TypeLayout layout = layouts.get(unit);
        int plug = layout.plug(rest);
        if (plug >= 0) {
            return new Site.OnPlug(unit, plug);
        }
        for (int i = rest.length() - 1; i > 0; i--) {
            if (SEPARATORS.indexOf(rest.charAt(i)) >= 0) {
                int found = layout.plug(rest, 0, i);
                if (found >= 0) {
                    return pin(unit, found, rest.substring(i + 1).strip());
                }
            }
        }
        if (layout.type().plugs().size() == 1 && layout.pin(0, rest) >= 0) {
            return new Site.OnPin(unit, 0, layout.pin(0, rest));
        }
        return new Site.Loose("no plug '" + rest + "' on " + names.get(unit), has(unit));
    }

    private Site pin(int unit, int plug, String name) {
        TypeLayout layout = layouts.get(unit);
        int pin = layout.pin(plug, name);
        if (pin >= 0) {
            return new Site.OnPin(unit, plug, pin);
        }
        String of = names.get(unit) + "-" + layout.type().plugs().get(plug).name();
        return new Site.Loose(
                "no pin '" + name + "' on " + of, "it has " + (layout.endPin(plug) - layout.firstPin(plug)) + " pins");
    }

    private String has(int unit) {
        return "it has "
                + String.join(
                        ", ",
                        layouts.get(unit).type().plugs().stream()
                                .map(plug -> plug.name())
                                .toList());
    }

    private static String firstWord(String text) {
        for (int i = 1; i < text.length(); i++) {
            if (SEPARATORS.indexOf(text.charAt(i)) >= 0) {
                return text.substring(0, i);
            }
        }
        return text;
    }

    /** All leads, for callers that hold only the directory. */
    public List<Lead> leads() {
        return aircraft.leads();
    }
}
