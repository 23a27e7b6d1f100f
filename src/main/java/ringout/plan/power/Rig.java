package ringout.plan.power;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ringout.graph.Circuit;
import ringout.graph.Wire;
import ringout.graph.Wiring;
import ringout.graph.power.PowerSource;
import ringout.model.PinRole;
import ringout.solve.power.PackFigure;
import ringout.solve.power.PowerFlow;

/**
 * Where a supply takes the place of packs.
 *
 * @param cells cells in series of the stack it stands for
 * @param stacks all stacks; the supply stands for the first
 * @param plus pole of the stack the aircraft is fed from
 * @param minus the other
 * @param where the two loose ends it is joined to, in words
 * @param otherPacks names of the packs that stay off
 */
record Rig(int cells, List<List<Integer>> stacks, int plus, int minus, String where, List<String> otherPacks) {
    /** {@return the rig of the first stack; empty when there is none, or one whose cells are not told} */
    static Optional<Rig> of(Circuit circuit) {
        Packs packs = Packs.of(circuit);
        if (packs.stacks().isEmpty() || packs.cells(packs.stacks().get(0)).isEmpty()) {
            return Optional.empty();
        }
        Packs.Stack first = packs.stacks().get(0);
        List<String> others = packs.stacks().stream()
                .skip(1)
                .flatMap(stack -> packs.names(stack).stream())
                .toList();
        List<List<Integer>> stacks = new ArrayList<>();
        packs.stacks()
                .forEach(stack -> stacks.add(
                        stack.sources().stream().map(PowerSource::index).toList()));
        Wiring wiring = circuit.wiring();
        int top = pole(circuit, first, true);
        int bottom = pole(circuit, first, false);
        return top < 0 || bottom < 0
                ? Optional.empty()
                : Optional.of(new Rig(
                        packs.cells(first).getAsInt(),
                        stacks,
                        top,
                        bottom,
                        ends(end(wiring, top), end(wiring, bottom)),
                        others));
    }

    /** The contact of a stack whose lead leads to no other pack of it: plus or minus of the whole. */
    private static int pole(Circuit circuit, Packs.Stack stack, boolean plus) {
        Wiring wiring = circuit.wiring();
        PinRole role = plus ? PinRole.PACK_PLUS : PinRole.PACK_MINUS;
        for (int unit : stack.units()) {
            for (int pin = wiring.firstPin(unit); pin < wiring.endPin(unit); pin++) {
                boolean out = wiring.is(pin, role) && !wiring.pin(pin).cellTap().isKnown();
                if (out && wiring.wiresAt(pin).length > 0 && leaves(wiring, stack, pin)) {
                    return pin;
                }
            }
        }
        return -1;
    }

    private static boolean leaves(Wiring wiring, Packs.Stack stack, int pin) {
        for (int wire : wiring.wiresAt(pin)) {
            int far = wiring.wires().get(wire).otherPin(pin);
            if (stack.units().contains(wiring.unitOf(far))) {
                return false;
            }
        }
        return true;
    }

    /** One lead may have both poles in one plug. */
    private static String ends(String plus, String minus) {
        return plus.equals(minus) ? plus : plus + " and " + minus;
    }

    /** The lead's end that belongs on a contact: {@code W03 for BAT2-POS}. */
    private static String end(Wiring wiring, int pin) {
        Wire wire = wiring.wires().get(wiring.wiresAt(pin)[0]);
        return "the loose end of " + wire.lead().id() + " that belongs on "
                + wiring.plugName(wiring.unitOf(pin), wiring.plugIndex(pin));
    }

    /** {@return the contact at the far end of the lead on a pole: of the power board} */
    int board(Wiring wiring, int pole) {
        return wiring.wires().get(wiring.wiresAt(pole)[0]).otherPin(pole);
    }

    /** {@return the volts of the first stack at rest in V} */
    double restVolts(PowerFlow flow) {
        return flow.packs().stream()
                .filter(pack -> stacks.get(0).contains(pack.source().index()))
                .mapToDouble(PackFigure::openVolts)
                .sum();
    }

    /** {@return the current all stacks give in A; of packs in series once} */
    double amps(PowerFlow flow) {
        double sum = 0;
        for (List<Integer> stack : stacks) {
            sum += flow.packs().stream()
                    .filter(pack -> stack.contains(pack.source().index()))
                    .findFirst()
                    .map(PackFigure::amps)
                    .orElse(0.0);
        }
        return sum;
    }
}
