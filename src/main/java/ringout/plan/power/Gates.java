package ringout.plan.power;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import ringout.graph.Circuit;
import ringout.graph.Wiring;
import ringout.graph.order.Covers;
import ringout.graph.power.PlacedLoad;
import ringout.graph.power.PowerGraph;
import ringout.graph.power.PowerSource;
import ringout.graph.power.SourceReach;
import ringout.model.PinRole;
import ringout.model.UnitKind;

/**
 * What can be kept off the packs in the first stages, by plugs in reach when all lids are on: regulators that do not feed
 * the flight controller, and units that move, shine or send and hang neither on those nor on its supply. What cannot be unplugged is powered from the
 * first stage on.
 */
final class Gates {
    private static final Set<UnitKind> LATER = EnumSet.of(
            UnitKind.ACTUATOR, UnitKind.PAYLOAD, UnitKind.GEAR, UnitKind.PUMP, UnitKind.EJECTOR, UnitKind.LIGHT);

    private final Circuit circuit;
    private final Wiring wiring;
    private final PowerGraph power;
    private final SourceReach reach;
    private final BitSet hidden = new BitSet();

    private Gates(Circuit circuit) {
        this.circuit = circuit;
        wiring = circuit.wiring();
        power = PowerGraph.of(circuit);
        reach = SourceReach.of(circuit);
        Covers covers = Covers.of(circuit);
        for (int cover = 0; cover < covers.all().size(); cover++) {
            hidden.or(covers.pins(cover));
        }
    }

    /** {@return the gates of a circuit, regulators in the order of the list, then what draws directly as one} */
    static List<Gate> of(Circuit circuit) {
        return new Gates(circuit).find();
    }

    private List<Gate> find() {
        List<Gate> gates = new ArrayList<>();
        Set<Integer> core = core();
        Set<Integer> seen = new LinkedHashSet<>(core);
        for (PowerSource source : power.sources()) {
            if (onPacks(source) && seen.add(source.unit())) {
                plugs(source.unit(), source.inputs())
                        .ifPresent(plugs -> gates.add(new Gate(List.of(source.unit()), plugs, false)));
            }
        }
        later(core, gates).ifPresent(gates::add);
        return gates;
    }

    /** All units that move, shine or send and are behind no gate yet, by plugs of their own. */
    private Optional<Gate> later(Set<Integer> core, List<Gate> gates) {
        Set<Integer> gated = new LinkedHashSet<>();
        gates.forEach(gate -> gated.addAll(gate.units()));
        Map<Integer, List<Integer>> inputs = new LinkedHashMap<>();
        for (PlacedLoad load : power.loads()) {
            boolean later = wiring.directory()
                    .type(load.unit())
                    .kind()
                    .known()
                    .filter(LATER::contains)
                    .isPresent();
            if (later && circuit.aboard(load.unit()) && !core.contains(load.unit())) {
                inputs.computeIfAbsent(load.unit(), key -> new ArrayList<>()).add(load.plus());
            }
        }
        inputs.values().removeIf(points -> points.stream().anyMatch(point -> behind(point, core, gated)));
        List<Integer> units = new ArrayList<>();
        List<String> open = new ArrayList<>();
        inputs.forEach((unit, points) -> plugs(unit, points).ifPresent(plugs -> {
            units.add(unit);
            open.addAll(plugs);
        }));
        return units.isEmpty() ? Optional.empty() : Optional.of(new Gate(List.copyOf(units), List.copyOf(open), true));
    }

    /** Whether a point is fed by what the flight controller lives on, or by what already waits for its turn. */
    private boolean behind(int point, Set<Integer> core, Set<Integer> gated) {
        return reach.feeding(point).stream().anyMatch(source -> core.contains(source.unit()))
                || reach.above(point).stream().anyMatch(source -> gated.contains(source.unit()));
    }

    /** Units whose regulators the flight controller lives on. */
    private Set<Integer> core() {
        Set<Integer> core = new LinkedHashSet<>();
        for (PowerSource source : power.sources()) {
            boolean feeds = reach.loads(source).stream()
                    .anyMatch(
                            load -> wiring.directory().type(load.unit()).kind().is(UnitKind.CONTROLLER));
            if (source.kind() != PowerSource.Kind.PACK && feeds) {
                core.add(source.unit());
            }
        }
        return core;
    }

    /** A regulator fed by packs with no other regulator between. */
    private boolean onPacks(PowerSource source) {
        return source.kind() != PowerSource.Kind.PACK
                && power.works(source)
                && source.inputs().stream().anyMatch(this::packs);
    }

    private boolean packs(int vertex) {
        return reach.feeding(vertex).stream().anyMatch(source -> source.kind() == PowerSource.Kind.PACK);
    }

    /** The plugs that part a unit from the packs; empty when one of them is out of reach on either side. */
    private Optional<List<String>> plugs(int unit, List<Integer> inputs) {
        Set<String> open = new TreeSet<>();
        for (int pin = wiring.firstPin(unit); pin < wiring.endPin(unit); pin++) {
            if (wiring.wiresAt(pin).length > 0 && isInput(pin, inputs)) {
                Optional<String> plug = inReach(pin);
                if (plug.isEmpty()) {
                    return Optional.empty();
                }
                open.add(plug.get());
            }
        }
        return open.isEmpty() ? Optional.empty() : Optional.of(List.copyOf(open));
    }

    private boolean isInput(int pin, List<Integer> inputs) {
        return PowerGraph.isSupply(wiring.pin(pin).role().or(PinRole.NONE))
                && inputs.stream()
                        .anyMatch(
                                input -> power.ties().of(input) == power.ties().of(pin));
    }

    /** The plug of a pin, or the one at the other end of its lead, whichever no lid hides. */
    private Optional<String> inReach(int pin) {
        if (!hidden.get(pin)) {
            return Optional.of(name(pin));
        }
        int[] wires = wiring.wiresAt(pin);
        int far = wires.length == 1 ? wiring.wires().get(wires[0]).otherPin(pin) : -1;
        boolean clear = far >= 0 && !hidden.get(far) && !wiring.directory().isJoint(wiring.unitOf(far));
        return clear && wiring.wiresAt(far).length == 1 ? Optional.of(name(far)) : Optional.empty();
    }

    private String name(int pin) {
        return wiring.plugName(wiring.unitOf(pin), wiring.plugIndex(pin));
    }
}
