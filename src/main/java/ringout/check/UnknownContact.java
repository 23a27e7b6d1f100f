package ringout.check;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import ringout.graph.Circuit;
import ringout.graph.Wiring;
import ringout.model.Datum;
import ringout.model.Pin;
import ringout.model.PinRole;
import ringout.model.Plug;
import ringout.model.UnitType;
import ringout.model.shape.Shape;

/**
 * A wired contact of a unit type of which it is not known what it carries, or what it joins inside.
 *
 * @param type the unit type
 * @param plug the plug as the type lists it
 * @param pin the contact as the type lists it
 * @param units units of the type at which it is wired
 * @param partners roles of the contacts its wires go to
 */
record UnknownContact(UnitType type, Plug plug, Pin pin, Set<String> units, Set<PinRole> partners) {
    private static final Set<PinRole> SUPPLIES =
            Set.of(PinRole.SUPPLY_IN, PinRole.SUPPLY_OUT, PinRole.SUPPLY_THROUGH, PinRole.PASSIVE);
    private static final Shape<Pin> SHAPE = Shape.of(Pin.class);

    /** A contact of a type. */
    record Place(String type, String plug, String number) {}

    /** Whether it has to be supposed what a contact is: its role is missing, or its point inside is marked "?". */
    static boolean is(Pin pin) {
        return pin.role().isMissing() || pin.inside() instanceof Datum.Unknown;
    }

    /** Which contact of which type it is. */
    Place place() {
        return new Place(type.name(), plug.name(), pin.number());
    }

    static UnknownContact at(Wiring wiring, int pin) {
        int unit = wiring.unitOf(pin);
        return new UnknownContact(
                wiring.directory().type(unit),
                wiring.plug(pin),
                wiring.pin(pin),
                new LinkedHashSet<>(),
                new LinkedHashSet<>());
    }

    /** Notes where it is wired, and to what, beyond splices and boards that only pass it on. */
    void wired(Circuit whole, int pin, int other) {
        Wiring wiring = whole.wiring();
        units.add(wiring.directory().name(wiring.unitOf(pin)));
        if (!wiring.is(other, PinRole.PASSIVE)) {
            wiring.role(other).ifPresent(partners::add);
            return;
        }
        for (int beyond : whole.nets().pins(whole.nets().of(other))) {
            wiring.role(beyond).filter(role -> role != PinRole.PASSIVE).ifPresent(partners::add);
        }
    }

    /** The datum, as one asks for it. */
    String missing() {
        String what = pin.role().isMissing() ? "role" : "point inside";
        return what + " of " + type.name() + "-" + plug.name() + "-" + pin.number();
    }

    /** What the contact may be: all that would suit its wires and its type, the likeliest first. */
    List<Pin> candidates() {
        List<Pin> candidates = new ArrayList<>();
        for (PinRole role : roles()) {
            Pin known = SHAPE.with(pin, "role", Datum.of(role));
            for (Datum<String> inside : insides(role)) {
                candidates.add(SHAPE.with(known, "inside", inside));
            }
        }
        return candidates;
    }

    private Set<PinRole> roles() {
        Set<PinRole> roles = new LinkedHashSet<>();
        if (!pin.role().isMissing()) {
            pin.role().known().ifPresent(roles::add);
            return roles;
        }
        Set<PinRole> suiting = new LinkedHashSet<>();
        partners.stream().sorted().forEach(partner -> suiting.addAll(Suiting.of(partner)));
        siblings()
                .filter(other -> pin.inside().isKnown() && other.inside().equals(pin.inside()))
                .forEach(other -> other.role()
                        .known()
                        .filter(role -> role == PinRole.PASSIVE || suiting.contains(role))
                        .ifPresent(roles::add));
        roles.addAll(suiting);
        return roles;
    }

    private Set<Datum<String>> insides(PinRole role) {
        Set<Datum<String>> insides = new LinkedHashSet<>();
        if (!(pin.inside() instanceof Datum.Unknown)) {
            insides.add(pin.inside());
            return insides;
        }
        Stream.concat(plug.pins().stream(), siblings())
                .filter(other -> !is(other))
                .filter(other -> other.role().is(role)
                        || other.role().known().filter(one -> pair(one, role)).isPresent())
                .forEach(other -> insides.add(other.inside()));
        if (SUPPLIES.contains(role)) {
            type.parts().forEach(part -> {
                insides.add(Datum.of(part.from()));
                insides.add(Datum.of(part.to()));
            });
            type.rails().forEach(rail -> insides.add(Datum.of(rail.name())));
        }
        insides.add(Datum.notAsked());
        return insides;
    }

    /** Whether two roles are the legs of one pair, which belong to one port. */
    private static boolean pair(PinRole one, PinRole other) {
        return Suiting.PAIRS.stream().anyMatch(pair -> pair.contains(one) && pair.contains(other));
    }

    private Stream<Pin> siblings() {
        return type.plugs().stream().flatMap(other -> other.pins().stream());
    }
}
