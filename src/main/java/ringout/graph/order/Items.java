package ringout.graph.order;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import ringout.graph.Circuit;
import ringout.graph.Site;
import ringout.graph.Wiring;
import ringout.model.End;
import ringout.model.Lead;

/** Finds what a step or a record names: a lead by its id, else a unit, a joint, a plug or a pin. */
public final class Items {
    private final Wiring wiring;
    private final Map<String, List<Integer>> rowsOfLead = new HashMap<>();

    private Items(Circuit circuit) {
        this.wiring = circuit.wiring();
        List<Lead> leads = wiring.aircraft().leads();
        for (int row = 0; row < leads.size(); row++) {
            rowsOfLead
                    .computeIfAbsent(fold(leads.get(row).id()), key -> new ArrayList<>(1))
                    .add(row);
        }
    }

    /** What is aboard, by name; made once. */
    public static Items of(Circuit circuit) {
        return circuit.know(Items.class, Items::new);
    }

    private static String fold(String name) {
        return name.strip().toUpperCase(Locale.ROOT);
    }

    /** What a name stands for. */
    public Item find(String name) {
        List<Integer> rows = rows(name);
        if (!rows.isEmpty()) {
            return new Item.OfLead(wiring.aircraft().leads().get(rows.get(0)).id());
        }
        int unit = wiring.directory().find(name.strip()).orElse(-1);
        if (unit >= 0) {
            return new Item.OfUnit(unit);
        }
        Site site = wiring.directory().resolve(new End(name));
        if (site instanceof Site.OnPlug on) {
            return new Item.OfPlug(on.unit(), on.plug());
        }
        return site instanceof Site.OnPin on
                ? new Item.OfPin(on.unit(), on.plug(), wiring.pinVertex(on.unit(), on.pin()))
                : new Item.Strange(name);
    }

    /** Numbers of the rows of a lead; none when there is no such lead. */
    public List<Integer> rows(String id) {
        return rowsOfLead.getOrDefault(fold(id), List.of());
    }

    /** Numbers of the rows that end on a plug, or on any plug of a unit or joint when the plug is -1, in their order. */
    public List<Integer> rowsAt(int unit, int plug) {
        List<Integer> rows = new ArrayList<>();
        int first = plug < 0 ? wiring.firstPin(unit) : wiring.firstPin(unit, plug);
        int end = plug < 0 ? wiring.endPin(unit) : wiring.endPin(unit, plug);
        for (int pin = first; pin < end; pin++) {
            for (int wire : wiring.wiresAt(pin)) {
                rows.add(wiring.wires().get(wire).leadIndex());
            }
        }
        return rows.stream().distinct().sorted().toList();
    }

    /** Name of what is found, as the list has it. */
    public String name(Item item) {
        if (item instanceof Item.OfUnit of) {
            return wiring.directory().name(of.unit());
        }
        if (item instanceof Item.OfPlug of) {
            return wiring.plugName(of.unit(), of.plug());
        }
        if (item instanceof Item.OfPin of) {
            return wiring.name(of.vertex());
        }
        return item instanceof Item.OfLead of ? of.id() : ((Item.Strange) item).name();
    }
}
