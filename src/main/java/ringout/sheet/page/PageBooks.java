package ringout.sheet.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import ringout.graph.Circuit;
import ringout.graph.Wire;
import ringout.graph.Wiring;
import ringout.graph.wire.WireColour;
import ringout.model.PinRole;
import ringout.model.shape.Scalars;

/** Works out what a page shows beside the drawings. */
public final class PageBooks {
    private static final double METRE = 1000;

    private PageBooks() {}

    /** {@return the book of an aircraft in some states; all circuits are of one wiring} */
    public static PageBook of(List<Circuit> circuits) {
        Wiring wiring = circuits.get(0).wiring();
        List<PlugPlace> places = places(wiring);
        return new PageBook(
                wiring.wires().stream().map(wire -> wire(wiring, wire)).toList(),
                places.stream().map(place -> place.plug(wiring)).toList(),
                circuits.stream().map(circuit -> StatePages.of(circuit, places)).toList(),
                PageSearches.of(circuits.get(0)));
    }

    /** A plug by its numbers. */
    record PlugPlace(int unit, int plug) {
        private PagePlug plug(Wiring wiring) {
            TreeSet<Integer> wires = new TreeSet<>();
            for (int pin = wiring.firstPin(unit, plug); pin < wiring.endPin(unit, plug); pin++) {
                for (int w : wiring.wiresAt(pin)) {
                    wires.add(w);
                }
            }
            return new PagePlug(wiring.plugName(unit, plug), wiring.directory().name(unit), List.copyOf(wires));
        }
    }

    private static List<PlugPlace> places(Wiring wiring) {
        List<PlugPlace> places = new ArrayList<>();
        for (int unit = 0; unit < wiring.directory().count(); unit++) {
            if (!wiring.directory().isJoint(unit)) {
                for (int plug = 0; plug < wiring.directory().type(unit).plugs().size(); plug++) {
                    if (wired(wiring, unit, plug)) {
                        places.add(new PlugPlace(unit, plug));
                    }
                }
            }
        }
        return places;
    }

    private static boolean wired(Wiring wiring, int unit, int plug) {
        for (int pin = wiring.firstPin(unit, plug); pin < wiring.endPin(unit, plug); pin++) {
            if (wiring.wiresAt(pin).length > 0) {
                return true;
            }
        }
        return false;
    }

    private static PageWire wire(Wiring wiring, Wire wire) {
        Optional<PinRole> role = telling(wiring, wire.fromPin()).or(() -> telling(wiring, wire.toPin()));
        String leg = role.filter(PinRole.CAN_H::equals).map(high -> "H").orElse("");
        leg = role.filter(PinRole.CAN_L::equals).map(low -> "L").orElse(leg);
        return new PageWire(
                wire.lead().id(),
                wiring.name(wire.fromPin()),
                wiring.name(wire.toPin()),
                leg,
                role.map(PinRole::word).orElse(""),
                facts(wiring, wire),
                wire.lead().note().or(""));
    }

    /** What a pin carries, when it tells: a point of a board does not. */
    private static Optional<PinRole> telling(Wiring wiring, int pin) {
        return wiring.role(pin).filter(role -> role != PinRole.NONE && role != PinRole.PASSIVE);
    }

    private static List<String> facts(Wiring wiring, Wire wire) {
        List<String> facts = new ArrayList<>();
        String colour = WireColour.of(wiring, wire);
        if (!colour.isEmpty()) {
            facts.add(colour);
        }
        wire.awg().known().ifPresent(size -> facts.add("AWG " + size));
        wire.lengthMm().known().ifPresent(mm -> facts.add(length(mm)));
        wire.lead().fuseA().known().ifPresent(amps -> facts.add("fuse " + Scalars.number(amps) + " A"));
        return facts;
    }

    private static String length(double mm) {
        return mm < METRE ? Scalars.number(mm) + " mm" : Scalars.number(mm / METRE) + " m";
    }
}
