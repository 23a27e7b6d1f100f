package ringout.check.build;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import ringout.check.form.Situation;
import ringout.graph.Wiring;
import ringout.graph.power.PowerGraph;
import ringout.graph.power.PowerSource;
import ringout.model.PinRole;

/** The packs of an aircraft by stack: packs in series are one stack, stacks side by side are in parallel. */
final class PackStacks {
    private final Map<Integer, Integer> stackOfUnit = new LinkedHashMap<>();
    private final List<List<Integer>> stacks = new ArrayList<>();
    private final Situation at;

    private PackStacks(Situation at) {
        this.at = at;
        PowerGraph power = PowerGraph.of(at.circuit());
        Map<Integer, Integer> byBottom = new LinkedHashMap<>();
        for (PowerSource source : power.sources()) {
            if (power.works(source) && pack(source)) {
                int bottom = power.bottom(source).index();
                int stack = byBottom.computeIfAbsent(bottom, key -> {
                    stacks.add(new ArrayList<>());
                    return stacks.size() - 1;
                });
                if (stackOfUnit.putIfAbsent(source.unit(), stack) == null) {
                    stacks.get(stack).add(source.unit());
                }
            }
        }
    }

    static PackStacks of(Situation at) {
        return new PackStacks(at);
    }

    /** A pack with contacts of its own, told by its pins; a cell soldered inside a unit is none. */
    private boolean pack(PowerSource source) {
        return source.kind() == PowerSource.Kind.PACK && !plugs(source.unit()).isEmpty();
    }

    private Set<Integer> plugs(int unit) {
        Wiring wiring = at.wiring();
        Set<Integer> plugs = new TreeSet<>();
        for (int pin = wiring.firstPin(unit); pin < wiring.endPin(unit); pin++) {
            boolean contact = wiring.is(pin, PinRole.PACK_PLUS) || wiring.is(pin, PinRole.PACK_MINUS);
            if (contact && wiring.wiresAt(pin).length > 0 && !MadeOrder.isTap(wiring.plug(pin))) {
                plugs.add(wiring.plugIndex(pin));
            }
        }
        return plugs;
    }

    /** Contacts of a stack that an order names neither at the pack nor, on a lead to no other pack, at its other end. */
    List<String> untold(int stack, Set<String> told) {
        List<String> untold = new ArrayList<>();
        for (int unit : stacks.get(stack)) {
            for (int plug : plugs(unit)) {
                String name = at.wiring().plugName(unit, plug);
                if (!told.contains(name) && farPlugs(unit, plug).noneMatch(told::contains)) {
                    untold.add(name);
                }
            }
        }
        return untold;
    }

    private Stream<String> farPlugs(int unit, int plug) {
        Wiring wiring = at.wiring();
        return IntStream.range(wiring.firstPin(unit), wiring.endPin(unit))
                .filter(pin -> wiring.plugIndex(pin) == plug)
                .flatMap(pin -> IntStream.of(wiring.wiresAt(pin))
                        .map(wire -> wiring.wires().get(wire).otherPin(pin)))
                .filter(far -> !wiring.directory().isJoint(wiring.unitOf(far)) && stackOf(wiring.unitOf(far)) < 0)
                .mapToObj(far -> wiring.plugName(wiring.unitOf(far), wiring.plugIndex(far)));
    }

    /** Number of stacks. */
    int count() {
        return stacks.size();
    }

    /** Number of pack plugs that are made. */
    int contacts() {
        return stackOfUnit.keySet().stream()
                .mapToInt(unit -> plugs(unit).size())
                .sum();
    }

    /** The stack a unit belongs to, or -1. */
    int stackOf(int unit) {
        return stackOfUnit.getOrDefault(unit, -1);
    }

    /** Names of all packs. */
    List<String> names() {
        return stackOfUnit.keySet().stream().map(at.directory()::name).toList();
    }

    /** Names of the packs of a stack. */
    List<String> names(Situation in, int stack) {
        return stacks.get(stack).stream().map(in.directory()::name).toList();
    }

    /** Whether a pack of a stack limits its inrush by itself. */
    boolean preChargeInside(Situation in, int stack) {
        return stacks.get(stack).stream()
                .anyMatch(unit -> in.directory().type(unit).inputPrecharge().is(true));
    }
}
