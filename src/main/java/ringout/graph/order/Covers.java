package ringout.graph.order;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import ringout.graph.Circuit;
import ringout.graph.Wiring;
import ringout.model.Cover;

/**
 * What each lid hides. A lid that lies over another hides what that one hides; what is reached through a hole is not
 * hidden.
 */
public final class Covers {
    private final Wiring wiring;
    private final List<Cover> all;
    private final Map<String, Integer> byName = new HashMap<>();
    private final List<BitSet> over = new ArrayList<>();
    private final List<BitSet> own = new ArrayList<>();
    private final List<BitSet> ownUnits = new ArrayList<>();
    private final List<BitSet> hiddenUnits = new ArrayList<>();
    private final List<BitSet> hidden = new ArrayList<>();
    private final List<List<String>> strange = new ArrayList<>();

    private Covers(Circuit circuit) {
        this.wiring = circuit.wiring();
        this.all = wiring.aircraft().airframe().covers();
        for (int i = 0; i < all.size(); i++) {
            byName.putIfAbsent(fold(all.get(i).name()), i);
            over.add(new BitSet());
        }
        for (int i = 0; i < all.size(); i++) {
            lift(i, over.get(i));
            over.get(i).clear(i);
            own.add(hides(circuit, all.get(i)));
        }
        own.forEach(pins -> hidden.add((BitSet) pins.clone()));
        ownUnits.forEach(units -> hiddenUnits.add((BitSet) units.clone()));
        for (int inner = 0; inner < all.size(); inner++) {
            for (int outer : over(inner)) {
                hidden.get(outer).or(own.get(inner));
                hiddenUnits.get(outer).or(ownUnits.get(inner));
            }
        }
    }

    /** The lids of an aircraft; made once. */
    public static Covers of(Circuit circuit) {
        return circuit.know(Covers.class, Covers::new);
    }

    private static String fold(String name) {
        return name.strip().toLowerCase(Locale.ROOT);
    }

    /** All covers that lie over one, near and far. */
    private void lift(int cover, BitSet found) {
        for (String name : all.get(cover).under()) {
            Integer outer = byName.get(fold(name));
            if (outer != null && !found.get(outer)) {
                found.set(outer);
                lift(outer, found);
            }
        }
    }

    /** The pins a lid hides by itself. */
    private BitSet hides(Circuit circuit, Cover cover) {
        BitSet pins = new BitSet();
        List<String> unknown = new ArrayList<>();
        BitSet units = new BitSet();
        Items items = Items.of(circuit);
        for (String name : cover.hides()) {
            mark(items.find(name), pins, units, true, unknown);
        }
        for (String name : cover.reachableThrough()) {
            mark(items.find(name), pins, units, false, unknown);
        }
        ownUnits.add(units);
        strange.add(List.copyOf(unknown));
        return pins;
    }

    private void mark(Item item, BitSet pins, BitSet units, boolean value, List<String> unknown) {
        if (item instanceof Item.OfUnit of) {
            units.set(of.unit(), value);
            pins.set(wiring.firstPin(of.unit()), wiring.endPin(of.unit()), value);
        } else if (item instanceof Item.OfPlug of) {
            pins.set(wiring.firstPin(of.unit(), of.plug()), wiring.endPin(of.unit(), of.plug()), value);
        } else if (item instanceof Item.OfPin of) {
            pins.set(of.vertex(), value);
        } else if (item instanceof Item.Strange of) {
            unknown.add(of.name());
        }
    }

    /** All lids. */
    public List<Cover> all() {
        return all;
    }

    /** Number of a lid by its name. */
    public Optional<Integer> find(String name) {
        return Optional.ofNullable(byName.get(fold(name)));
    }

    /** Name of a lid. */
    public String name(int cover) {
        return all.get(cover).name();
    }

    /** Whether a lid, once closed, hides a pin. */
    public boolean hides(int cover, int pin) {
        return hidden.get(cover).get(pin);
    }

    /** Whether a lid hides some pin of a plug. */
    public boolean hides(int cover, int unit, int plug) {
        int next = hidden.get(cover).nextSetBit(wiring.firstPin(unit, plug));
        return next >= 0 && next < wiring.endPin(unit, plug);
    }

    /** Whether a lid hides a whole unit, its switches and slots too. */
    public boolean hidesUnit(int cover, int unit) {
        return hiddenUnits.get(cover).get(unit);
    }

    /** Whether a lid hides some pin of a unit. */
    public boolean hidesSome(int cover, int unit) {
        int next = hidden.get(cover).nextSetBit(wiring.firstPin(unit));
        return next >= 0 && next < wiring.endPin(unit);
    }

    /** Pins a lid hides, those of lids under it too; not to be changed. */
    public BitSet pins(int cover) {
        return hidden.get(cover);
    }

    /** Names under a lid that are nothing aboard. */
    public List<String> strange(int cover) {
        return strange.get(cover);
    }

    /** Lids that must come off before this one. */
    public List<Integer> over(int cover) {
        return over.get(cover).stream().boxed().toList();
    }

    /** Minutes to take a lid off and put it on again, with all that lie over it; empty when one of them is not told. */
    public OptionalDouble minutes(int cover) {
        double sum = 0;
        for (int one : withOver(cover)) {
            if (all.get(one).minutes().isMissing()) {
                return OptionalDouble.empty();
            }
            sum += all.get(one).minutes().or(0.0);
        }
        return OptionalDouble.of(sum);
    }

    /** Names of the lids whose minutes are asked for by {@link #minutes} and not told. */
    public List<String> withoutMinutes(int cover) {
        return withOver(cover).stream()
                .filter(one -> all.get(one).minutes().isMissing())
                .map(this::name)
                .toList();
    }

    private List<Integer> withOver(int cover) {
        List<Integer> way = new ArrayList<>(over(cover));
        way.add(cover);
        return way;
    }
}
