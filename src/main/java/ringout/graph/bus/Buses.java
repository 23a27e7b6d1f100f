package ringout.graph.bus;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ringout.graph.Circuit;
import ringout.graph.Part;
import ringout.graph.Terminators;
import ringout.graph.index.Components;
import ringout.graph.index.IndexGraph;
import ringout.model.Datum;

/** All two-wire buses of a circuit. Hubs are vertices, links are edges of {@link #graph}, segments its components. */
public final class Buses {
    private final Circuit circuit;
    private final HubFinder finder;
    private final List<BusHub> hubs;
    private final List<BusLink> links;
    private final IndexGraph graph;
    private final List<BusSegment> segments;
    private final int[] segmentOf;

    private Buses(Circuit circuit) {
        this.circuit = circuit;
        this.finder = new HubFinder(circuit);
        this.hubs = List.copyOf(finder.hubs());
        this.links = List.copyOf(new LinkFinder(circuit, finder).links());
        int[] from = links.stream().mapToInt(BusLink::from).toArray();
        int[] to = links.stream().mapToInt(BusLink::to).toArray();
        this.graph = IndexGraph.undirected(hubs.size(), from, to)
                .onlyEdges(link -> links.get(link).pair());
        Components components = Components.of(graph);
        this.segmentOf = new int[hubs.size()];
        for (int hub = 0; hub < hubs.size(); hub++) {
            segmentOf[hub] = components.componentOf(hub);
        }
        this.segments = segments(components);
    }

    /** The buses of a circuit, found once. */
    public static Buses of(Circuit circuit) {
        return circuit.know(Buses.class, Buses::new);
    }

    private List<BusSegment> segments(Components components) {
        List<List<Integer>> linksOf = new ArrayList<>();
        List<List<TerminatorAt>> terminatorsOf = new ArrayList<>();
        for (int i = 0; i < components.count(); i++) {
            linksOf.add(new ArrayList<>());
            terminatorsOf.add(new ArrayList<>());
        }
        links.stream()
                .filter(BusLink::pair)
                .forEach(link -> linksOf.get(segmentOf[link.from()]).add(link.index()));
        terminators(terminatorsOf);
        List<BusSegment> found = new ArrayList<>();
        for (int i = 0; i < components.count(); i++) {
            List<Integer> members = new ArrayList<>();
            for (int hub : components.members(i)) {
                members.add(hub);
            }
            found.add(new BusSegment(
                    i,
                    name(members),
                    Collections.unmodifiableList(members),
                    Collections.unmodifiableList(linksOf.get(i)),
                    Collections.unmodifiableList(terminatorsOf.get(i))));
        }
        return Collections.unmodifiableList(found);
    }

    private void terminators(List<List<TerminatorAt>> terminatorsOf) {
        Map<Long, Integer> hubByPort = new HashMap<>();
        for (Part part : circuit.wiring().parts()) {
            if (part.origin() instanceof Part.Terminator terminator && circuit.aboard(terminator.unit())) {
                Terminators.Seen seen = Terminators.state(circuit, terminator);
                int hub = hubAt(part, hubByPort);
                if (hub >= 0 && seen != Terminators.Seen.OFF) {
                    terminatorsOf.get(segmentOf[hub]).add(new TerminatorAt(hub, part, terminator, seen));
                }
            }
        }
    }

    private int hubAt(Part part, Map<Long, Integer> hubByPort) {
        if (hubByPort.isEmpty()) {
            for (BusHub hub : hubs) {
                hubByPort.put((long) hub.high(), hub.index());
            }
        }
        return hubByPort.getOrDefault((long) part.from(), -1);
    }

    private String name(List<Integer> members) {
        Map<String, Integer> votes = new HashMap<>();
        String best = "";
        for (int hub : members) {
            String name = declared(hub).orElse("");
            if (!name.isEmpty()) {
                int count = votes.merge(name, 1, Integer::sum);
                int most = best.isEmpty() ? 0 : votes.getOrDefault(best, 0);
                best = count > most ? name : best;
            }
        }
        return best;
    }

    /** The bus a hub is declared on: by the setting of its port, by a bus that lists it, or by nothing. */
    public Optional<String> declared(int hub) {
        return BusNames.of(circuit).declared(hubs.get(hub));
    }

    /** All hubs. */
    public List<BusHub> hubs() {
        return hubs;
    }

    /** All links, single-leg ones too. */
    public List<BusLink> links() {
        return links;
    }

    /** All segments: hubs joined by whole pairs. A hub without a link is a segment of its own. */
    public List<BusSegment> segments() {
        return segments;
    }

    /** The segment of a hub. */
    public BusSegment segment(BusHub hub) {
        return segments.get(segmentOf[hub.index()]);
    }

    /** The pair graph: hubs as vertices, pair links as edges (single-leg links hidden). */
    public IndexGraph graph() {
        return graph;
    }

    /** The hub a pin belongs to, if any. */
    public Optional<BusHub> hubOfPin(int pin) {
        int hub = finder.hubOfPin(pin);
        return hub < 0 ? Optional.empty() : Optional.of(hubs.get(hub));
    }

    /** Name of a hub: the unit, with its port when the unit has several hubs. */
    public String name(BusHub hub) {
        return circuit.wiring().directory().name(hub.unit());
    }

    /** Name of a segment in words: the declared name, or the units it joins. */
    public String name(BusSegment segment) {
        if (!segment.name().isEmpty()) {
            return "bus " + segment.name();
        }
        return "bus at "
                + String.join(
                        ", ",
                        segment.hubs().stream()
                                .limit(4)
                                .map(h -> name(hubs.get(h)))
                                .toList());
    }

    /** Length of a link in mm. */
    public Datum<Double> lengthMm(int link) {
        return links.get(link).lengthMm();
    }

    /** The circuit. */
    public Circuit circuit() {
        return circuit;
    }
}
