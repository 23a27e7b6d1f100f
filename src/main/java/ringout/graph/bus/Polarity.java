package ringout.graph.bus;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.Deque;
import java.util.List;
import java.util.Locale;
import ringout.graph.Wiring;
import ringout.graph.index.IndexGraph;
import ringout.model.PinRole;

/**
 * Which way round each hub of a segment sits on its pair. Two swaps in a row cancel. Passive points that nobody named H or
 * L are taken the way round that needs the fewest crossed leads.
 */
public final class Polarity {
    private final Buses buses;
    private final BusSegment segment;
    private final BitSet turnedPassives = new BitSet();
    private final BitSet odd = new BitSet();
    private final List<BusLink> crossed = new ArrayList<>();
    private boolean shorted;

    private Polarity(Buses buses, BusSegment segment) {
        this.buses = buses;
        this.segment = segment;
        segment.hubs().stream().map(buses.hubs()::get).filter(this::nameless).forEach(this::turn);
        for (int link : segment.links()) {
            if (isCrossed(buses.links().get(link))) {
                crossed.add(buses.links().get(link));
            }
        }
        if (!crossed.isEmpty()) {
            walk();
        }
    }

    /** The polarity of a segment. */
    public static Polarity of(Buses buses, BusSegment segment) {
        return new Polarity(buses, segment);
    }

    private boolean nameless(BusHub hub) {
        return !hub.member() && !named(hub.high()) && !named(hub.low());
    }

    private boolean named(int point) {
        Wiring wiring = buses.circuit().wiring();
        if (point < 0 || wiring.isPin(point)) {
            return point >= 0 && legName(wiring.pin(point).name().or(""));
        }
        IndexGraph graph = wiring.graph();
        for (int end = graph.endSlot(point), s = graph.firstSlot(point); s < end; s = graph.nextSlot(s, end)) {
            int pin = graph.slotVertex(s);
            if (wiring.isPin(pin) && legName(wiring.pin(pin).name().or(""))) {
                return true;
            }
        }
        return false;
    }

    private static boolean legName(String name) {
        String plain = name.strip().toLowerCase(Locale.ROOT);
        return is(PinRole.CAN_H, plain) || is(PinRole.CAN_L, plain);
    }

    static boolean is(PinRole role, String name) {
        return role.words().stream().anyMatch(word -> word.equalsIgnoreCase(name.strip()));
    }

    private void turn(BusHub hub) {
        IndexGraph graph = buses.graph();
        List<Integer> links = new ArrayList<>();
        for (int end = graph.endSlot(hub.index()), s = graph.firstSlot(hub.index());
                s < end;
                s = graph.nextSlot(s, end)) {
            links.add(graph.slotEdge(s));
        }
        links.sort(Comparator.comparingInt(segment.links()::indexOf));
        long wrong = links.stream()
                .filter(link -> isCrossed(buses.links().get(link)))
                .count();
        boolean tie = 2 * wrong == links.size();
        if (2 * wrong > links.size()
                || (tie && wrong > 0 && isCrossed(buses.links().get(links.get(0))))) {
            turnedPassives.set(hub.index());
        }
    }

    private boolean isCrossed(BusLink link) {
        return link.crossed() ^ turnedPassives.get(link.from()) ^ turnedPassives.get(link.to());
    }

    private void walk() {
        IndexGraph graph = buses.graph();
        BitSet seen = new BitSet();
        Deque<Integer> open = new ArrayDeque<>(List.of(segment.hubs().get(0)));
        seen.set(segment.hubs().get(0));
        while (!open.isEmpty()) {
            int hub = open.remove();
            for (int end = graph.endSlot(hub), s = graph.firstSlot(hub); s < end; s = graph.nextSlot(s, end)) {
                int other = graph.slotVertex(s);
                boolean turned = odd.get(hub) ^ isCrossed(buses.links().get(graph.slotEdge(s)));
                if (seen.get(other)) {
                    shorted |= odd.get(other) != turned;
                } else {
                    seen.set(other);
                    odd.set(other, turned);
                    open.add(other);
                }
            }
        }
    }

    /** The leads that cross H and L. */
    public List<BusLink> crossed() {
        return crossed;
    }

    /** Whether a ring with an odd number of swaps joins H and L. */
    public boolean shorted() {
        return shorted;
    }

    /** Nodes that sit the other way round than the most of them, or than the first when it is a tie; of a ring, none. */
    public List<BusHub> reversed() {
        List<BusHub> nodes = buses.nodes(segment);
        long turned = nodes.stream().filter(hub -> odd.get(hub.index())).count();
        boolean minority = 2 * turned <= nodes.size();
        return nodes.stream().filter(hub -> odd.get(hub.index()) == minority).toList();
    }
}
