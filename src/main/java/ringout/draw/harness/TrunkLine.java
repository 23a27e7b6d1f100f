package ringout.draw.harness;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import ringout.graph.Circuit;
import ringout.graph.bus.BusHub;
import ringout.graph.bus.BusLink;
import ringout.graph.bus.BusSegment;
import ringout.graph.bus.Buses;
import ringout.graph.bus.Trunk;
import ringout.model.UnitKind;

/**
 * The line a bus is drawn along: the longest way through it, from the flight controller outwards, as it is read. A ring is
 * drawn opened at one lead, which then closes it.
 *
 * @param hubs along the line
 * @param links between them
 * @param branches what hangs off the line
 * @param closing the lead that closes the line to a ring from its last hub to its first, if it is one
 * @param untold leads of rings that this line does not show
 */
record TrunkLine(
        List<Integer> hubs,
        List<Integer> links,
        List<Trunk.Branch> branches,
        Optional<BusLink> closing,
        List<BusLink> untold) {
    /**
     * The line of a segment.
     *
     * @param extra names of leads that are one too many; a ring is opened at one of these
     */
    static TrunkLine of(Circuit circuit, Buses buses, BusSegment segment, Set<String> extra) {
        if (segment.rings() == 1) {
            for (int link : openedAt(buses, segment, extra)) {
                TrunkLine line = outwards(circuit, buses, opened(buses, segment, link));
                if (line.closing().isPresent()) {
                    return line;
                }
            }
        }
        Trunk trunk = Trunk.longest(buses, segment);
        List<Integer> told = new ArrayList<>(trunk.links());
        trunk.branches().forEach(branch -> told.addAll(branch.all()));
        List<BusLink> untold = segment.links().stream()
                .filter(link -> !told.contains(link))
                .map(buses.links()::get)
                .toList();
        return outwards(
                circuit, buses, new TrunkLine(trunk.hubs(), trunk.links(), trunk.branches(), Optional.empty(), untold));
    }

    /** Where a ring may be opened, best first: at a lead that is one too many, else at the last of the list. */
    private static List<Integer> openedAt(Buses buses, BusSegment segment, Set<String> extra) {
        List<Integer> links = new ArrayList<>(segment.links());
        Collections.reverse(links);
        links.sort((a, b) -> Boolean.compare(
                extra.contains(buses.links().get(b).lead().id()),
                extra.contains(buses.links().get(a).lead().id())));
        return links;
    }

    private static TrunkLine opened(Buses buses, BusSegment segment, int link) {
        List<Integer> rest =
                segment.links().stream().filter(other -> other != link).toList();
        BusSegment open = new BusSegment(segment.index(), segment.name(), segment.hubs(), rest, List.of());
        Trunk trunk = Trunk.longest(buses, open);
        BusLink closing = buses.links().get(link);
        int first = trunk.hubs().get(0);
        int last = trunk.hubs().get(trunk.hubs().size() - 1);
        boolean closes = first != last
                && Set.of(first, last).equals(Set.of(closing.from(), closing.to()))
                && buses.hubs().get(first).member()
                && buses.hubs().get(last).member();
        return new TrunkLine(
                trunk.hubs(),
                trunk.links(),
                trunk.branches(),
                closes ? Optional.of(closing) : Optional.empty(),
                List.of());
    }

    /** The same line begun at the end nearer to the flight controller; without one, at the unit with more plugs. */
    private static TrunkLine outwards(Circuit circuit, Buses buses, TrunkLine line) {
        List<BusHub> along = line.hubs().stream().map(buses.hubs()::get).toList();
        int last = along.size() - 1;
        int order = 0;
        for (int i = 0; i <= last && order == 0; i++) {
            order = Boolean.compare(controls(circuit, along.get(i)), controls(circuit, along.get(last - i)));
        }
        if (order == 0) {
            order = Integer.compare(plugs(circuit, along.get(0)), plugs(circuit, along.get(last)));
        }
        return order < 0 ? line.reversed() : line;
    }

    private static boolean controls(Circuit circuit, BusHub hub) {
        return hub.member()
                && circuit.wiring().directory().type(hub.unit()).kind().is(UnitKind.CONTROLLER);
    }

    private static int plugs(Circuit circuit, BusHub hub) {
        return hub.member()
                ? circuit.wiring().directory().type(hub.unit()).plugs().size()
                : 0;
    }

    private TrunkLine reversed() {
        List<Integer> back = new ArrayList<>(hubs);
        List<Integer> linksBack = new ArrayList<>(links);
        Collections.reverse(back);
        Collections.reverse(linksBack);
        return new TrunkLine(back, linksBack, branches, closing, untold);
    }
}
