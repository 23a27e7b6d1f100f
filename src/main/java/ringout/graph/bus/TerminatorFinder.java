package ringout.graph.bus;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ringout.graph.Circuit;
import ringout.graph.Directory;
import ringout.graph.Part;
import ringout.graph.PortSettings;
import ringout.graph.Terminators;
import ringout.model.BusPort;
import ringout.model.PartKind;
import ringout.model.TerminatorFit;
import ringout.model.TerminatorState;
import ringout.model.UnitKind;

/**
 * Finds terminators: those of ports, and those made of resistors inside a unit, counted by what they are between H and L
 * and not by the number of parts, so that a split terminator (two of 60 ohm) is one.
 */
final class TerminatorFinder {
    /** ISO 11898-2:2003, table 9: 95 to 140 ohm. */
    private static final double LOW_OHM = 95;

    private static final double HIGH_OHM = 140;

    private final Circuit circuit;
    private final HubFinder hubs;
    private final List<TerminatorAt> found = new ArrayList<>();

    /** What lies between H and a point: the sum of the resistors on the way, and whether all are given. */
    private record Way(double ohm, boolean known) {
        Way then(Part part) {
            Optional<Double> more = part.origin() instanceof Part.Inner inner
                    ? inner.part().rating().ohm().known()
                    : Optional.empty();
            return new Way(ohm + more.orElse(0.0), known && more.isPresent());
        }

        boolean terminates() {
            return !known || (ohm >= LOW_OHM && ohm <= HIGH_OHM);
        }
    }

    TerminatorFinder(Circuit circuit, HubFinder finder, List<BusHub> all) {
        this.circuit = circuit;
        this.hubs = finder;
        Map<Integer, List<Part>> resistors = new LinkedHashMap<>();
        for (Part part : circuit.wiring().parts()) {
            if (part.origin() instanceof Part.Terminator terminator && circuit.aboard(terminator.unit())) {
                port(part, terminator);
            } else if (part.origin() instanceof Part.Inner inner
                    && inner.part().kind().is(PartKind.RESISTOR)) {
                resistors
                        .computeIfAbsent(inner.unit(), key -> new ArrayList<>())
                        .add(part);
            }
        }
        if (!resistors.isEmpty()) {
            all.forEach(hub -> made(hub, resistors.getOrDefault(hub.unit(), List.of())));
        }
    }

    List<TerminatorAt> found() {
        return found;
    }

    private void port(Part part, Part.Terminator terminator) {
        Terminators.Seen seen = Terminators.state(circuit, terminator);
        int hub = hubs.hubOf(part.from());
        if (hub >= 0 && seen != Terminators.Seen.OFF) {
            found.add(new TerminatorAt(hub, terminator.unit(), seen, how(terminator)));
        }
    }

    private TerminatorAt.How how(Part.Terminator terminator) {
        Directory directory = circuit.wiring().directory();
        BusPort port = terminator.port();
        boolean set = PortSettings.of(directory.unit(terminator.unit()), port.name())
                .flatMap(setting -> setting.terminator().known())
                .filter(state -> state == TerminatorState.ON || state == TerminatorState.OFF)
                .isPresent();
        if (port.terminator().is(TerminatorFit.PLUG)) {
            return TerminatorAt.How.PLUG;
        }
        boolean fixed =
                port.terminator().is(TerminatorFit.FIXED) || (!port.terminator().isKnown() && !set);
        return fixed ? fitted(terminator.unit()) : TerminatorAt.How.SWITCH;
    }

    private TerminatorAt.How fitted(int unit) {
        boolean plug = circuit.wiring().directory().type(unit).kind().is(UnitKind.TERMINATOR);
        return plug ? TerminatorAt.How.PLUG : TerminatorAt.How.BUILT_IN;
    }

    private void made(BusHub hub, List<Part> resistors) {
        if (resistors.isEmpty() || hub.high() < 0 || hub.low() < 0) {
            return;
        }
        Map<Integer, Way> ways = new HashMap<>(Map.of(hub.high(), new Way(0, true)));
        for (int i = 0; i < resistors.size() && !ways.containsKey(hub.low()); i++) {
            resistors.forEach(part -> reach(ways, part));
        }
        Way way = ways.get(hub.low());
        if (way != null && way.terminates()) {
            Terminators.Seen seen = way.known() ? Terminators.Seen.ON : Terminators.Seen.UNKNOWN;
            found.add(new TerminatorAt(hub.index(), hub.unit(), seen, fitted(hub.unit())));
        }
    }

    private void reach(Map<Integer, Way> ways, Part part) {
        int a = hubs.core(part.from());
        int b = hubs.core(part.to());
        Way fromA = ways.get(a);
        Way fromB = ways.get(b);
        if (fromA != null) {
            ways.putIfAbsent(b, fromA.then(part));
        } else if (fromB != null) {
            ways.put(a, fromB.then(part));
        }
    }
}
