package ringout.graph.loss;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import ringout.graph.Circuit;
import ringout.graph.Directory;
import ringout.model.AircraftFunction;

/**
 * The loss table: for every plug, lead, fuse, joint, regulator and other part what falls when it alone lets go, the worst
 * first. Clamps and studs of a board are plugs. Things that take nothing are left out.
 *
 * @param lines one line a thing, by functions flight depends on, other functions, units, then name
 */
public record LossTable(List<Line> lines) {
    /**
     * What one thing takes.
     *
     * @param item what lets go
     * @param units units that lose their supply or their bus, in the order of the list
     * @param functions functions that stop, in the order of the list
     * @param flightCritical number of functions among them that flight depends on
     */
    public record Line(Item item, List<String> units, List<AircraftFunction> functions, int flightCritical) {
        /** The functions in words. */
        public List<String> functionNames() {
            return functions.stream().map(AircraftFunction::name).toList();
        }
    }

    /** The table of a circuit, made once. */
    public static LossTable of(Circuit circuit) {
        return circuit.know(LossTable.class, LossTable::make);
    }

    /** Lines that take a function flight depends on. */
    public List<Line> grave() {
        return lines.stream().filter(line -> line.flightCritical() > 0).toList();
    }

    private static LossTable make(Circuit circuit) {
        Directory directory = circuit.wiring().directory();
        Map<Integer, Set<Integer>> units = new TreeMap<>();
        Map<Integer, Set<Integer>> functions = new TreeMap<>();
        SupplyLoss supply = SupplyLoss.of(circuit);
        for (int unit = 0; unit < circuit.wiring().aircraft().units().size(); unit++) {
            int lost = unit;
            supply.of(unit).ifPresent(items -> note(units, items, lost));
        }
        BusLoss.of(circuit).byUnit().forEach((unit, items) -> note(units, items, unit));
        List<AircraftFunction> all = circuit.wiring().aircraft().functions();
        FunctionLoss chains = FunctionLoss.of(circuit);
        for (int i = 0; i < all.size(); i++) {
            int lost = i;
            chains.of(all.get(i)).ifPresent(items -> note(functions, items, lost));
        }
        Set<Integer> taking = new TreeSet<>(units.keySet());
        taking.addAll(functions.keySet());
        Items items = Items.of(circuit);
        List<Line> lines = new ArrayList<>();
        for (int index : taking) {
            Item item = items.item(index);
            if (item.kind() != Item.Kind.UNIT) {
                List<AircraftFunction> stopped = functions.getOrDefault(index, Set.of()).stream()
                        .map(all::get)
                        .toList();
                lines.add(new Line(
                        item,
                        units.getOrDefault(index, Set.of()).stream()
                                .map(directory::name)
                                .toList(),
                        stopped,
                        (int) stopped.stream()
                                .filter(function -> function.flightCritical().is(true))
                                .count()));
            }
        }
        lines.sort(Comparator.comparing((Line line) -> -line.flightCritical())
                .thenComparing(line -> -line.functions().size())
                .thenComparing(line -> -line.units().size())
                .thenComparing(line -> line.item().name()));
        return new LossTable(List.copyOf(lines));
    }

    private static void note(Map<Integer, Set<Integer>> by, Set<Integer> items, int lost) {
        items.forEach(item -> by.computeIfAbsent(item, key -> new TreeSet<>()).add(lost));
    }
}
