package ringout.sheet.page;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ringout.graph.Circuit;
import ringout.graph.Wiring;
import ringout.graph.bus.BusHub;
import ringout.graph.bus.BusSegment;
import ringout.graph.bus.Buses;
import ringout.graph.power.Consumer;
import ringout.graph.power.PowerGraph;
import ringout.solve.meter.BusPull;
import ringout.solve.meter.OhmsQuestion;
import ringout.solve.meter.Reading;

/** What every plug of one state takes with it when it is pulled. */
final class Pulls {
    private final Circuit circuit;
    private final Wiring wiring;
    private final BusPull readings;
    private final BitSet lit;

    private Pulls(Circuit circuit) {
        this.circuit = circuit;
        wiring = circuit.wiring();
        readings = BusPull.of(circuit);
        lit = supplied(circuit);
    }

    static Pulls of(Circuit circuit) {
        return new Pulls(circuit);
    }

    /** By plug, what happens when it is pulled. */
    List<PagePull> all(List<PageBooks.PlugPlace> plugs) {
        return plugs.stream().map(this::pull).toList();
    }

    /** Between H and L at every plug of a bus, everything mated. */
    Map<String, Reading> buses() {
        return readings.mated();
    }

    private PagePull pull(PageBooks.PlugPlace place) {
        if (!mated(place)) {
            return new PagePull(false, List.of(), List.of(), List.of());
        }
        String name = wiring.plugName(place.unit(), place.plug());
        Circuit without = Circuit.of(wiring, OhmsQuestion.pulled(circuit.state(), List.of(name)));
        BitSet dark = (BitSet) lit.clone();
        dark.andNot(supplied(without));
        return new PagePull(
                true,
                dark.stream().mapToObj(wiring.directory()::name).toList(),
                cut(without),
                readings.effects(place.unit(), place.plug()));
    }

    private boolean mated(PageBooks.PlugPlace place) {
        for (int pin = wiring.firstPin(place.unit(), place.plug());
                pin < wiring.endPin(place.unit(), place.plug());
                pin++) {
            for (int w : wiring.wiresAt(pin)) {
                if (circuit.mated(wiring.wires().get(w))) {
                    return true;
                }
            }
        }
        return false;
    }

    /** Units of which some supply input is fed. */
    private static BitSet supplied(Circuit circuit) {
        PowerGraph power = PowerGraph.of(circuit);
        BitSet units = new BitSet();
        for (Consumer consumer : power.consumers()) {
            if (circuit.aboard(consumer.unit()) && power.fed(consumer.plus())) {
                units.set(consumer.unit());
            }
        }
        return units;
    }

    /** Members that are left in a smaller piece of what was one bus. */
    private List<String> cut(Circuit without) {
        Buses before = Buses.of(circuit);
        Buses after = Buses.of(without);
        List<String> names = new ArrayList<>();
        for (BusSegment segment : before.segments()) {
            if (segment.wired()) {
                names.addAll(cut(before.nodes(segment), after));
            }
        }
        return names;
    }

    private List<String> cut(List<BusHub> members, Buses after) {
        Map<Optional<BusSegment>, List<String>> pieces = new LinkedHashMap<>();
        for (BusHub member : members) {
            pieces.computeIfAbsent(now(member, after), piece -> new ArrayList<>())
                    .add(wiring.directory().name(member.unit()));
        }
        List<List<String>> bySize = new ArrayList<>(pieces.values());
        bySize.sort(Comparator.comparingInt(piece -> -piece.size()));
        return bySize.stream().skip(1).flatMap(List::stream).toList();
    }

    /** The pieces of copper are numbered anew in another circuit; units and ports keep their names. */
    private static Optional<BusSegment> now(BusHub member, Buses after) {
        return after.hubs().stream()
                .filter(hub -> hub.unit() == member.unit() && hub.port().equals(member.port()))
                .findFirst()
                .map(after::segment);
    }
}
