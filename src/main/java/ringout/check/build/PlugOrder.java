package ringout.check.build;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import ringout.check.form.Check;
import ringout.check.form.CheckInfo;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.finding.Severity;
import ringout.model.Datum;

/**
 * A pack whose last made contact is not the one with pre-charge, or a second pack that joins a live one unmeasured.
 *
 * <p>Why it matters: the contact that closes the circuit takes the whole inrush: a crack, pitted metal, and a hot contact later. Two
 * packs at different charge put tens of amperes through each other.
 *
 * <p>Condition: of the contacts of a stack of packs, in the order they are made, the last must be the one with pre-charge; what is
 * broken first must be the same. "Red last" is not enough with several reds. A pack that joins another in parallel needs a step
 * before it that compares their voltages: one step that reads both, or one each. Packs with pre-charge inside need no such contact; with no pre-charge contact at all there
 * is nothing to put last (P26).
 *
 * <p>Does not see: how firmly and fast the plug is pushed; the voltages themselves (P28).
 *
 * <p>Reference: common practice, no source.
 */
@CheckInfo(
        code = "B05",
        name = "plug-order",
        severity = Severity.S1,
        since = "0.1",
        needs = {
            "order in which pack plugs are made",
            "which contact has pre-charge",
            "steps before a pack joins another"
        })
public final class PlugOrder implements Check {
    /** The contact that closes the circuit of a stack. */
    private record Closing(int stack, MadeOrder.Made plug) {}

    @Override
    public void look(Situation at, Outcomes out) {
        PackStacks stacks = PackStacks.of(at);
        if (stacks.contacts() < 2) {
            return;
        }
        MadeOrder made = MadeOrder.of(at);
        if (made.plugs().isEmpty()) {
            out.cannotTell(
                    "order in which the pack plugs are made",
                    "write it down as it is done",
                    2,
                    stacks.names().toArray(new String[0]));
            return;
        }
        Map<Integer, List<MadeOrder.Made>> byStack = byStack(stacks, made);
        Set<String> names = Set.copyOf(made.names());
        List<Closing> closing = closing(made, byStack);
        closing.forEach(one ->
                suppressed(at, out, stacks, made, names, new Stack(one.stack(), contacts(byStack, one)), one.plug()));
        if (stacks.count() > 1) {
            joined(at, out, stacks, made, closing);
        }
    }

    /**
     * A stack of packs and what closes it.
     *
     * @param number its number
     * @param contacts its contacts in the order they are made, with the one that closes it
     */
    private record Stack(int number, List<MadeOrder.Made> contacts) {}

    /** The contacts of each stack in the order they are made; an isolator stands under -1. */
    private static Map<Integer, List<MadeOrder.Made>> byStack(PackStacks stacks, MadeOrder made) {
        Map<Integer, List<MadeOrder.Made>> byStack = new LinkedHashMap<>();
        for (MadeOrder.Made plug : made.plugs()) {
            int stack = stacks.stackOf(plug.unit());
            byStack.computeIfAbsent(Math.max(stack, -1), key -> new ArrayList<>())
                    .add(plug);
        }
        return byStack;
    }

    private static List<MadeOrder.Made> contacts(Map<Integer, List<MadeOrder.Made>> byStack, Closing one) {
        List<MadeOrder.Made> contacts = new ArrayList<>(byStack.getOrDefault(one.stack(), List.of()));
        if (!contacts.contains(one.plug())) {
            contacts.add(one.plug());
        }
        return contacts;
    }

    /** The contact that closes each stack, in that order: its last, or that of an isolator made after all packs. */
    private static List<Closing> closing(MadeOrder made, Map<Integer, List<MadeOrder.Made>> byStack) {
        List<MadeOrder.Made> plugs = made.plugs();
        MadeOrder.Made last = plugs.get(plugs.size() - 1);
        List<MadeOrder.Made> isolators = byStack.getOrDefault(-1, List.of());
        boolean isolated = isolators.contains(last);
        Map<String, Integer> turns = new HashMap<>();
        for (int i = 0; i < plugs.size(); i++) {
            turns.put(plugs.get(i).name(), i);
        }
        return byStack.entrySet().stream()
                .filter(entry -> entry.getKey() >= 0)
                .map(entry -> new Closing(
                        entry.getKey(),
                        isolated ? last : entry.getValue().get(entry.getValue().size() - 1)))
                .sorted(Comparator.comparingInt(
                        one -> turns.getOrDefault(one.plug().name(), 0)))
                .toList();
    }

    private static void suppressed(
            Situation at,
            Outcomes out,
            PackStacks stacks,
            MadeOrder made,
            Set<String> named,
            Stack one,
            MadeOrder.Made last) {
        int stack = one.number();
        List<MadeOrder.Made> all = one.contacts();
        List<MadeOrder.Made> right =
                all.stream().filter(plug -> plug.record().suppressor().is(true)).toList();
        List<String> untold = stacks.untold(stack, named);
        if (stacks.preChargeInside(at, stack)) {
            out.looked();
        } else if (!untold.isEmpty()) {
            out.cannotTell(
                    "turn of " + String.join(", ", untold) + " in the order in which the pack plugs are made",
                    "write it down as it is done",
                    2,
                    untold.toArray(new String[0]));
        } else if (right.isEmpty()) {
            unmarked(at, out, stacks, stack, all);
        } else if (last.record().suppressor().is(true)) {
            out.looked();
            broken(at, out, stacks, made, stack, right);
        } else {
            out.finding(PlugOrderDraft.order(at, stacks.names(at, stack), last, right, made));
        }
    }

    /** With no contact marked, it is open whether there is one; when all are said to have none, nothing is to be put last. */
    private static void unmarked(Situation at, Outcomes out, PackStacks stacks, int stack, List<MadeOrder.Made> all) {
        if (all.stream().map(plug -> plug.record().suppressor()).anyMatch(Datum::isMissing)) {
            List<String> names = stacks.names(at, stack);
            out.cannotTell(
                    "which contact of " + String.join(", ", names) + " has pre-charge, if any",
                    "look at the plugs or the maker's data",
                    2,
                    names.toArray(new String[0]));
        } else {
            out.looked();
        }
    }

    private static void broken(
            Situation at, Outcomes out, PackStacks stacks, MadeOrder made, int stack, List<MadeOrder.Made> right) {
        Optional<MadeOrder.Made> first = made.broken().stream()
                .filter(plug -> stacks.stackOf(plug.unit()) == stack)
                .findFirst();
        if (first.isPresent() && !first.get().record().suppressor().is(true)) {
            out.finding(PlugOrderDraft.brokenFirst(stacks.names(at, stack), first.get(), right));
        }
    }

    /** Every stack after the first joins a live one: its voltage must have been compared before. */
    private static void joined(Situation at, Outcomes out, PackStacks stacks, MadeOrder made, List<Closing> closing) {
        List<String> open = new ArrayList<>();
        List<String> first = stacks.names(at, closing.get(0).stack());
        for (Closing one : closing.subList(1, closing.size())) {
            List<String> names = stacks.names(at, one.stack());
            if (at.aircraft().record().steps().isEmpty() || made.untoldSteps(at)) {
                open.addAll(names);
            } else if (made.comparedBefore(at, first, names, one.plug())) {
                out.looked();
            } else {
                out.finding(PlugOrderDraft.unmeasured(at, first, names, one.plug()));
            }
        }
        if (!open.isEmpty()) {
            out.cannotTell(
                    "whether voltages are compared before " + String.join(", ", open) + " joins",
                    "write the step down",
                    2,
                    open.toArray(new String[0]));
        }
    }
}
