package ringout.graph.power;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import ringout.graph.TypeLayout;
import ringout.model.Datum;
import ringout.model.InnerPart;
import ringout.model.PartKind;
import ringout.model.PinRole;
import ringout.model.Rail;
import ringout.model.UnitKind;

/**
 * The supply points of one unit type, described once for all its units. A <em>spot</em> is a pin that stands alone, by its
 * number in the type, or a point inside, numbered after all pins.
 */
final class TypeSupplies {
    private final TypeLayout layout;
    private final Map<Integer, SupplySpot> spots = new TreeMap<>();
    private final int onlyZero;

    TypeSupplies(TypeLayout layout, List<Load> loads) {
        this.layout = layout;
        this.onlyZero = onlyZero();
        pins();
        layout.type().rails().forEach(rail -> layout.point(rail.name()).ifPresent(p -> at(pinCount() + p)));
        layout.type().parts().forEach(this::part);
        loads.forEach(this::load);
        spots.values().forEach(this::zero);
    }

    private int pinCount() {
        return layout.pinCount();
    }

    private void pins() {
        for (int pin = 0; pin < pinCount(); pin++) {
            PinRole role = layout.pin(pin).role().or(PinRole.NONE);
            if (role == PinRole.SUPPLY_IN
                    || role == PinRole.SUPPLY_OUT
                    || role == PinRole.SUPPLY_THROUGH
                    || role == PinRole.PACK_PLUS) {
                at(spotOf(pin)).pin(pin, role);
            }
        }
    }

    private int spotOf(int pin) {
        return layout.pointOf(pin) < 0 ? pin : pinCount() + layout.pointOf(pin);
    }

    private SupplySpot at(int spot) {
        return spots.computeIfAbsent(spot, key -> {
            String name = key < pinCount()
                    ? layout.type().plugs().get(layout.plugOf(key)).name() + "-"
                            + layout.pin(key).number()
                    : layout.points().get(key - pinCount());
            return new SupplySpot(key, name, rail(name));
        });
    }

    /** What the type says of a rail. */
    Optional<Rail> rail(String name) {
        return layout.type().rails().stream()
                .filter(rail -> rail.name().equals(name))
                .findFirst();
    }

    private void part(InnerPart part) {
        SupplySpot to = spots.get(spot(part.to()).orElse(-1));
        SupplySpot from = spots.get(spot(part.from()).orElse(-1));
        if (to != null) {
            to.fed = true;
            to.driven |= drives(part.kind().or(PartKind.LINK));
        }
        if (from != null) {
            from.feeds = true;
        }
        // a tie has no direction: what hangs on either side of it is not an output of its own
        if (from != null && ties(part.kind().or(PartKind.DIODE))) {
            from.fed = true;
        }
    }

    private static boolean drives(PartKind kind) {
        return kind == PartKind.SOURCE
                || kind == PartKind.REGULATOR
                || kind == PartKind.LINEAR_REGULATOR
                || kind == PartKind.ISOLATED_CONVERTER;
    }

    private static boolean ties(PartKind kind) {
        return kind == PartKind.LINK
                || kind == PartKind.FUSE
                || kind == PartKind.SWITCH
                || kind == PartKind.SENSE_RESISTOR;
    }

    private void load(Load load) {
        List<SupplySpot> takers =
                spots.values().stream().filter(spot -> spot.takes).toList();
        Optional<Integer> named = load.rail().known().flatMap(this::spot);
        if (named.isPresent()) {
            at(named.get()).loads.add(load);
        } else if (takers.size() == 1) {
            takers.get(0).loads.add(load);
        }
    }

    private void zero(SupplySpot spot) {
        Datum<String> named = spot.rail.map(Rail::zero).orElse(Datum.notAsked());
        spot.frameReturn = named.isNotApplicable();
        spot.zeroSpot = spot.frameReturn ? SupplySpot.NO_ZERO : zeroSpot(named.or("0V"));
    }

    /** The spot of a return by name; a type with one 0V only needs no name for it. -1 when there is none. */
    int zeroSpot(String name) {
        Optional<Integer> point = layout.point(name).filter(this::used).map(p -> pinCount() + p);
        return point.orElse(name.equals("0V") ? onlyZero : SupplySpot.NO_ZERO);
    }

    /** Whether a point has a pin or a part; a point that only a load or rail names is no way out of the unit. */
    private boolean used(int point) {
        for (int pin = 0; pin < pinCount(); pin++) {
            if (layout.pointOf(pin) == point) {
                return true;
            }
        }
        String name = layout.points().get(point);
        return layout.type().parts().stream()
                .anyMatch(part -> part.from().equals(name) || part.to().equals(name));
    }

    private int onlyZero() {
        int only = -1;
        for (int pin = 0; pin < pinCount(); pin++) {
            if (layout.pin(pin).role().is(PinRole.ZERO_V)) {
                if (only >= 0 && only != spotOf(pin)) {
                    return -1;
                }
                only = spotOf(pin);
            }
        }
        return only;
    }

    /** The spot of a rail, point or pin a part or load names. */
    Optional<Integer> spot(String name) {
        return layout.point(name).map(p -> pinCount() + p).or(() -> layout.pinAt(name));
    }

    /** All supply spots, ascending. */
    Collection<SupplySpot> spots() {
        return spots.values();
    }

    /** Whether a unit of this type only passes power on. */
    boolean passesOnly() {
        return layout.type().kind().is(UnitKind.BOARD) || layout.type().kind().is(UnitKind.SPLICE);
    }

    /** Supply-in pins' spots of the type: what may feed an output whose type does not say what feeds it. */
    List<Integer> takers() {
        List<Integer> takers = new ArrayList<>();
        spots.values().stream().filter(spot -> spot.takes).forEach(spot -> takers.add(spot.spot));
        return takers;
    }
}
