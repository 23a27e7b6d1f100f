package ringout.check.power;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import ringout.check.form.Figures;
import ringout.check.form.Situation;
import ringout.graph.Trail;
import ringout.graph.Wire;
import ringout.graph.Wiring;
import ringout.graph.power.Consumer;
import ringout.graph.power.PowerGraph;
import ringout.graph.power.PowerSource;
import ringout.graph.power.Volts;
import ringout.model.Lead;
import ringout.model.PinRole;

/** Words and rows that findings about supplies share. */
final class Supplies {
    private Supplies() {}

    /** Name of a consumer: its unit, and its rail when the unit has several. */
    static String name(Situation at, Consumer consumer) {
        String ref = at.directory().name(consumer.unit());
        int rails = PowerGraph.of(at.circuit()).consumersOf(consumer.unit()).size();
        return rails > 1 ? ref + " rail " + consumer.rail() : ref;
    }

    /** Name of a source with what it gives: {@code RG6 6 V}. */
    static String name(Situation at, PowerSource source) {
        String ref = at.directory().name(source.unit());
        return source.volts().nominal().isPresent()
                ? ref + " " + Figures.of(source.volts().nominal()) + " V"
                : ref;
    }

    /** Name of a source with the packs it stands on, and what they give together: {@code BAT1 + BAT2 44.4 V}. */
    static String stack(Situation at, PowerSource source) {
        PowerGraph power = PowerGraph.of(at.circuit());
        List<String> names = new ArrayList<>();
        PowerSource next = source;
        for (int guard = power.sources().size(); guard > 0 && next.kind() == PowerSource.Kind.PACK; guard--) {
            names.add(0, at.directory().name(next.unit()));
            List<PowerSource> below = power.lifting(power.ties().of(next.minus()));
            if (below.isEmpty()) {
                break;
            }
            next = below.get(0);
        }
        Volts height = power.height(source);
        return names.size() < 2 || height.nominal().isEmpty()
                ? name(at, source)
                : String.join(" + ", names) + " " + Figures.of(height.nominal()) + " V";
    }

    /** A voltage at rest in words: {@code 39.6 to 50.4 V}. */
    static String range(Volts volts) {
        if (!volts.isBounded()) {
            return volts.nominal().isPresent() ? "nominal " + Figures.of(volts.nominal()) + " V" : "? V";
        }
        return volts.low() == volts.high()
                ? Figures.of(volts.low()) + " V"
                : Figures.of(volts.low()) + " to " + Figures.of(volts.high()) + " V";
    }

    /** The best single number for a voltage: nominal, else the middle of its range. */
    static double middle(Volts volts) {
        return volts.nominal().orElse((volts.low() + volts.high()) / 2);
    }

    /** Whether a conductor is mated at a pin. */
    static boolean wired(Situation at, int pin) {
        for (int w : at.wiring().wiresAt(pin)) {
            if (at.circuit().mated(at.wiring().wires().get(w))) {
                return true;
            }
        }
        return false;
    }

    /** The leads at some pins, in the order of the rows, each once. */
    static List<Lead> leadsAt(Situation at, List<Integer> pins) {
        Set<Wire> wires = new LinkedHashSet<>();
        for (int pin : pins) {
            for (int w : at.wiring().wiresAt(pin)) {
                wires.add(at.wiring().wires().get(w));
            }
        }
        return leads(wires.stream().toList());
    }

    /** The leads of some conductors, in the order of the rows, each once. */
    static List<Lead> leads(List<Wire> wires) {
        return wires.stream()
                .sorted((a, b) -> Integer.compare(a.leadIndex(), b.leadIndex()))
                .map(Wire::lead)
                .distinct()
                .toList();
    }

    /** The leads a way passes, in its order, each once. */
    static List<Lead> along(Situation at, Trail way) {
        Set<String> names = way.steps().stream()
                .filter(step -> step.kind() == Trail.Kind.LEAD)
                .map(Trail.Step::name)
                .collect(Collectors.toCollection(LinkedHashSet::new));
        List<Lead> found = new ArrayList<>();
        names.forEach(name -> at.aircraft().leads().stream()
                .filter(lead -> lead.id().equals(name))
                .findFirst()
                .ifPresent(found::add));
        return found;
    }

    /** Conductors of some ties that join a supply pin to a 0V pin or to the minus of a pack: where + meets -. */
    static List<Wire> crossing(Situation at, Set<Integer> ties) {
        PowerGraph power = PowerGraph.of(at.circuit());
        return at.wiring().wires().stream()
                .filter(wire -> at.circuit().mated(wire))
                .filter(wire -> ties.contains(power.ties().of(wire.fromPin())))
                .filter(wire -> crosses(at.wiring(), wire.fromPin(), wire.toPin())
                        || crosses(at.wiring(), wire.toPin(), wire.fromPin()))
                .toList();
    }

    private static boolean crosses(Wiring wiring, int plus, int minus) {
        PinRole above = wiring.pin(plus).role().or(PinRole.NONE);
        PinRole below = wiring.pin(minus).role().or(PinRole.NONE);
        boolean link = above == PinRole.PACK_PLUS && below == PinRole.PACK_MINUS;
        return PowerGraph.isSupply(above) && (below == PinRole.ZERO_V || below == PinRole.PACK_MINUS) && !link;
    }

    /** The 0V pins of a unit that belong to a return point, those of the type's order. */
    static List<Integer> zeroPins(Situation at, int unit, int zero) {
        List<Integer> pins = new ArrayList<>();
        for (int pin = at.wiring().firstPin(unit); pin < at.wiring().endPin(unit); pin++) {
            if (at.wiring().is(pin, PinRole.ZERO_V)
                    && (pin == zero || at.circuit().nets().same(pin, zero))) {
                pins.add(pin);
            }
        }
        return pins;
    }

    /** Names joined by commas, the first few of many. */
    static String names(List<String> names) {
        return String.join(", ", names);
    }
}
