package ringout.plan.power;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import ringout.graph.Circuit;
import ringout.graph.Part;
import ringout.graph.Site;
import ringout.graph.Wiring;
import ringout.graph.power.PowerSource;
import ringout.model.Datum;
import ringout.model.End;
import ringout.model.PartRating;
import ringout.model.Plug;

/** Finds the order in which pack plugs are made. Common practice, no source. */
final class PlugOrders {
    /** Volts per cell two packs may differ by when one joins the other. Common practice, no source. */
    private static final double CELL_V = 0.05;

    private static final double MILLI = 0.001;

    /** A contact of a pack. */
    private record Contact(int unit, int plug, String name, Plug record) {
        boolean suppressed() {
            return record.suppressor().is(true);
        }
    }

    private final Circuit circuit;
    private final Wiring wiring;
    private final Packs packs;
    private final List<PlugOrder.Act> making = new ArrayList<>();
    private final List<String> cannotTell = new ArrayList<>();

    private PlugOrders(Circuit circuit) {
        this.circuit = circuit;
        wiring = circuit.wiring();
        packs = Packs.of(circuit);
    }

    /** {@return the order for a circuit} */
    static PlugOrder of(Circuit circuit) {
        return new PlugOrders(circuit).order();
    }

    private PlugOrder order() {
        List<String> declared = declared();
        Map<Packs.Stack, List<Contact>> contacts = new LinkedHashMap<>();
        packs.stacks().forEach(stack -> contacts.put(stack, contacts(stack, declared)));
        Map<Packs.Stack, Contact> closing = new LinkedHashMap<>();
        contacts.forEach((stack, all) -> {
            if (!all.isEmpty()) {
                closing.put(stack, closing(stack, all));
            }
        });
        contacts.values().stream()
                .flatMap(List::stream)
                .filter(contact -> !closing.containsValue(contact))
                .sorted(turn(declared))
                .forEach(contact -> making.add(new PlugOrder.Make(contact.name(), false, false)));
        List<Packs.Stack> live = new ArrayList<>();
        closing.entrySet().stream()
                .sorted(Map.Entry.comparingByValue(turn(declared)))
                .forEach(entry -> close(entry.getKey(), entry.getValue(), live));
        PlugOrder order = new PlugOrder(List.copyOf(making), List.copyOf(cannotTell), List.of());
        return new PlugOrder(order.making(), order.cannotTell(), disagrees(order, declared));
    }

    private void close(Packs.Stack stack, Contact last, List<Packs.Stack> live) {
        if (!live.isEmpty()) {
            List<String> both = new ArrayList<>();
            live.forEach(one -> both.addAll(packs.names(one)));
            both.addAll(packs.names(stack));
            making.add(new PlugOrder.Compare(List.copyOf(both), compare(live.get(0), stack)));
        }
        making.add(new PlugOrder.Make(last.name(), last.suppressed(), true));
        live.add(stack);
    }

    /** The declared order as plug names of the list; the rest of the packs' plugs follow in the order of the list. */
    private List<String> declared() {
        List<String> names = new ArrayList<>();
        for (String name : circuit.wiring().aircraft().airframe().plugOrder()) {
            if (wiring.directory().resolve(new End(name)) instanceof Site.OnPlug on) {
                names.add(wiring.plugName(on.unit(), on.plug()));
            }
        }
        return names;
    }

    private static Comparator<Contact> turn(List<String> declared) {
        return Comparator.comparingInt(contact -> {
            int turn = declared.indexOf(contact.name());
            return turn < 0 ? Integer.MAX_VALUE : turn;
        });
    }

    private List<Contact> contacts(Packs.Stack stack, List<String> declared) {
        List<Contact> all = new ArrayList<>();
        for (int unit : stack.units()) {
            for (int plug : packs.plugs(unit)) {
                Plug record = wiring.directory().type(unit).plugs().get(plug);
                all.add(new Contact(unit, plug, wiring.plugName(unit, plug), record));
            }
        }
        return all.stream().sorted(turn(declared)).toList();
    }

    /** The contact that must be the last of a stack: the one with pre-charge, else the last of all. */
    private Contact closing(Packs.Stack stack, List<Contact> all) {
        List<Contact> suppressed = all.stream().filter(Contact::suppressed).toList();
        if (!suppressed.isEmpty()) {
            return suppressed.get(suppressed.size() - 1);
        }
        String names = String.join(", ", packs.names(stack));
        boolean inside = stack.units().stream()
                .anyMatch(unit -> wiring.directory().type(unit).inputPrecharge().is(true));
        if (!inside
                && all.stream().map(contact -> contact.record().suppressor()).anyMatch(Datum::isMissing)) {
            cannotTell.add("which contact must be last: needs which contact of " + names + " has pre-charge, if any");
        } else if (!inside) {
            cannotTell.add("how to keep the inrush small: no contact of " + names
                    + " has pre-charge; close it through a resistor lead first");
        }
        return all.get(all.size() - 1);
    }

    /** What must hold before a stack joins a live one: less than 0.05 V a cell, and less than 1 C through their resistance. */
    private String compare(Packs.Stack live, Packs.Stack joining) {
        String what = "measure " + String.join(" + ", packs.names(live)) + " and "
                + String.join(" + ", packs.names(joining)) + " before they are joined: ";
        OptionalInt cells = packs.cells(joining);
        OptionalDouble capacity = capacity(live, joining);
        OptionalDouble milliohm = milliohm(live, joining);
        if (cells.isEmpty() || capacity.isEmpty() || milliohm.isEmpty()) {
            return what + "cannot tell the limit: needs cells, capacity and resistance of the packs";
        }
        double byCell = CELL_V * cells.getAsInt();
        double byCurrent = capacity.getAsDouble() * milliohm.getAsDouble() * MILLI;
        return what
                + String.format(
                        Locale.ROOT,
                        "they may differ by less than %.2f V (%.2f V a cell gives %.2f V; 1 C = %.0f A through %.1f mohm of"
                                + " both packs gives %.2f V)",
                        Math.min(byCell, byCurrent),
                        CELL_V,
                        byCell,
                        capacity.getAsDouble(),
                        milliohm.getAsDouble(),
                        byCurrent);
    }

    private OptionalDouble capacity(Packs.Stack... stacks) {
        double least = Double.POSITIVE_INFINITY;
        for (Packs.Stack stack : stacks) {
            for (PowerSource source : stack.sources()) {
                Datum<Double> capacity = rating(source);
                if (!capacity.isKnown()) {
                    return OptionalDouble.empty();
                }
                least = Math.min(least, capacity.or(0.0));
            }
        }
        return OptionalDouble.of(least);
    }

    private Datum<Double> rating(PowerSource source) {
        Part part = wiring.parts().get(source.part());
        return part.origin() instanceof Part.Inner inner ? capacity(inner.part().rating()) : Datum.notAsked();
    }

    private static Datum<Double> capacity(PartRating rating) {
        return rating.capacityAh();
    }

    private static OptionalDouble milliohm(Packs.Stack... stacks) {
        double sum = 0;
        for (Packs.Stack stack : stacks) {
            for (PowerSource source : stack.sources()) {
                if (!source.milliohm().isKnown()) {
                    return OptionalDouble.empty();
                }
                sum += source.milliohm().or(0.0);
            }
        }
        return OptionalDouble.of(sum);
    }

    private static List<String> disagrees(PlugOrder order, List<String> declared) {
        List<String> own = order.made().stream().filter(declared::contains).toList();
        List<String> theirs = declared.stream().filter(own::contains).toList();
        return own.equals(theirs)
                ? List.of()
                : List.of("the declared order is " + String.join(", ", theirs) + "; it does not put the contact with"
                        + " pre-charge last");
    }
}
