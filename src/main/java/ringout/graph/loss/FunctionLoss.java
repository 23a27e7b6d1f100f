package ringout.graph.loss;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import ringout.graph.Circuit;
import ringout.graph.Directory;
import ringout.model.AircraftFunction;

/**
 * What takes a function when it lets go alone: the supply of every unit of its chain and every signal way along it. Where a
 * unit of the chain has others that stand in for it, only what takes all of them counts.
 */
public final class FunctionLoss {
    private static final int MOST_WAYS = 16;

    private final Circuit circuit;
    private final SupplyLoss supply;
    private final SignalLoss signals;
    private final Directory directory;
    private final Items items;
    private final Map<AircraftFunction, Optional<Set<Integer>>> known = new HashMap<>();

    private FunctionLoss(Circuit circuit, SupplyLoss supply, SignalLoss signals) {
        this.circuit = circuit;
        this.supply = supply;
        this.signals = signals;
        this.directory = circuit.wiring().directory();
        this.items = Items.of(circuit);
    }

    /** The losses of a circuit. */
    public static FunctionLoss of(Circuit circuit) {
        return circuit.know(FunctionLoss.class, one -> new FunctionLoss(one, SupplyLoss.of(one), SignalLoss.of(one)));
    }

    /** The losses when single conductors open. */
    static FunctionLoss byWire(Circuit circuit, SupplyLoss supply, SignalLoss signals) {
        return new FunctionLoss(circuit, supply, signals);
    }

    /** Items that take a function, ascending, the units of its chain among them; nothing when it does not work even so. */
    public Optional<Set<Integer>> of(AircraftFunction function) {
        Optional<Set<Integer>> found = known.get(function);
        if (found == null) {
            found = find(function);
            known.put(function, found);
        }
        return found;
    }

    private Optional<Set<Integer>> find(AircraftFunction function) {
        Optional<Set<Integer>> common = Optional.empty();
        for (List<Integer> chain : ways(function)) {
            Optional<Set<Integer>> way = chain(chain);
            if (way.isPresent()) {
                Set<Integer> taking = new TreeSet<>(way.get());
                common.ifPresent(taking::retainAll);
                common = Optional.of(taking);
            }
        }
        return common;
    }

    /** The chain, and the same with units replaced by those that stand in for them. */
    private List<List<Integer>> ways(AircraftFunction function) {
        List<List<Integer>> ways = List.of(List.of());
        for (String name : function.chain()) {
            List<List<Integer>> longer = new ArrayList<>();
            for (int unit : standIns(name)) {
                for (List<Integer> way : ways) {
                    List<Integer> more = new ArrayList<>(way);
                    more.add(unit);
                    longer.add(more);
                }
            }
            ways = longer.subList(0, Math.min(longer.size(), MOST_WAYS));
        }
        return function.chain().isEmpty() ? List.of() : ways;
    }

    private List<Integer> standIns(String name) {
        Optional<Integer> unit = directory.find(name);
        List<Integer> found = new ArrayList<>();
        unit.ifPresent(found::add);
        if (unit.isPresent() && !directory.isJoint(unit.get())) {
            for (String other : directory.unit(unit.get()).redundantWith()) {
                directory.find(other).filter(circuit::aboard).ifPresent(found::add);
            }
        }
        return found;
    }

    private Optional<Set<Integer>> chain(List<Integer> chain) {
        Set<Integer> taking = new TreeSet<>();
        for (int i = 0; i < chain.size(); i++) {
            int unit = chain.get(i);
            Optional<Set<Integer>> power = supply.of(unit);
            Optional<Set<Integer>> link = i == 0 ? Optional.of(Set.of()) : signals.between(chain.get(i - 1), unit);
            if (power.isEmpty() || link.isEmpty()) {
                return Optional.empty();
            }
            taking.add(items.unit(unit));
            taking.addAll(power.get());
            taking.addAll(link.get());
        }
        return Optional.of(taking);
    }
}
