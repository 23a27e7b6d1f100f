package ringout.check.redundancy;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import ringout.check.form.Figures;
import ringout.check.form.Situation;
import ringout.check.form.Thresholds;
import ringout.graph.bus.Buses;
import ringout.graph.loss.Item;
import ringout.graph.loss.Items;
import ringout.graph.loss.RotorLoss;
import ringout.model.Rotor;
import ringout.solve.rotor.Hover;

/** Which rotors of the rotor table stop with which thing, and what hover is left then. */
final class RotorsLost {
    /** How good a hover is left. */
    enum Left {
        /** No balance, or none with anything left to steer with. */
        NONE(0),
        /** A balance with little left to steer with. */
        LITTLE(1),
        /** A hover. */
        ENOUGH(2);

        private final int worth;

        Left(int worth) {
            this.worth = worth;
        }
    }

    private static final double HUNDRED = 100;

    final Situation at;
    final Hover hover;
    final RotorLoss losses;
    private final List<Rotor> table;
    /** Row of the rotor table of each motor that turns, -1 for one that has none. */
    final List<Integer> rows = new ArrayList<>();

    private final double enough;

    RotorsLost(Situation at, Hover hover) {
        this.at = at;
        this.hover = hover;
        table = at.aircraft().airframe().rotors();
        losses = RotorLoss.of(at.circuit());
        losses.driven()
                .forEach(driven ->
                        rows.add(driven.drive().rotor().map(table::indexOf).orElse(-1)));
        enough = at.limit(Thresholds.ROTOR_MARGIN).value() / HUNDRED * hover.largestKgf();
    }

    /** Rows of motors by their places among the motors that turn. */
    BitSet rows(Iterable<Integer> places) {
        BitSet set = new BitSet();
        for (int place : places) {
            if (rows.get(place) >= 0) {
                set.set(rows.get(place));
            }
        }
        return set;
    }

    /** Everything that turns. */
    BitSet all() {
        BitSet set = new BitSet();
        rows.stream().filter(row -> row >= 0).forEach(set::set);
        return set;
    }

    Left left(BitSet lost) {
        OptionalDouble margin = hover.without(lost);
        if (margin.isEmpty() || margin.getAsDouble() == 0) {
            return Left.NONE;
        }
        return margin.getAsDouble() < enough ? Left.LITTLE : Left.ENOUGH;
    }

    /** What a loss is worth: the verdict first, then the margin. */
    double value(BitSet lost) {
        return left(lost).worth * (hover.largestKgf() + 1) + hover.without(lost).orElse(-1);
    }

    /** The margin of a loss in words. */
    String margin(BitSet lost) {
        OptionalDouble margin = hover.without(lost);
        return margin.isPresent() ? Figures.of(margin.getAsDouble()) + " kgf" : "no balance";
    }

    double enoughKgf() {
        return enough;
    }

    /** M1, M2: motors in the order of the table. */
    String names(BitSet set, String between) {
        return set.stream().mapToObj(this::name).collect(Collectors.joining(between));
    }

    private String name(int row) {
        return table.get(row).number().known().map(number -> "M" + number).orElse(Hover.name(table.get(row)));
    }

    /** Sets of rotors that stop with one plug, lead, fuse, regulator or joint, or one bus, with what takes them. */
    Map<BitSet, List<String>> sets() {
        Map<BitSet, List<String>> sets = new LinkedHashMap<>();
        Items items = Items.of(at.circuit());
        losses.byItem().forEach((index, places) -> {
            Item item = items.item(index);
            if (item.kind() != Item.Kind.UNIT) {
                add(sets, rows(places), item.name());
            }
        });
        buses().forEach((name, places) -> add(sets, rows(places), "bus " + name));
        return sets;
    }

    private static void add(Map<BitSet, List<String>> sets, BitSet lost, String name) {
        if (!lost.isEmpty()) {
            sets.computeIfAbsent(lost, key -> new ArrayList<>()).add(name);
        }
    }

    /** The places of motors commanded over each bus, by the name of the bus. */
    Map<String, Set<Integer>> buses() {
        Map<String, Set<Integer>> found = new TreeMap<>();
        Buses buses = Buses.of(at.circuit());
        for (int i = 0; i < losses.driven().size(); i++) {
            int bus = losses.driven().get(i).bus();
            if (bus >= 0) {
                String name = buses.name(buses.segments().get(bus)).replaceFirst("^bus ", "");
                found.computeIfAbsent(name, key -> new TreeSet<>()).add(i);
            }
        }
        return found;
    }
}
