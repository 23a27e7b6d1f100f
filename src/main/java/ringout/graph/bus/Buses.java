package ringout.graph.bus;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import ringout.graph.Circuit;
import ringout.graph.PortSettings;
import ringout.graph.index.Components;
import ringout.graph.index.IndexGraph;
import ringout.model.Bus;
import ringout.model.BusPort;
import ringout.model.Datum;
import ringout.model.PortSetting;
import ringout.model.Unit;
import ringout.model.UnitKind;

/** All two-wire buses of a circuit. Hubs are vertices, links are edges of {@link #graph}, segments its components. */
public final class Buses {
    private static final int NAMED = 4;

    private final Circuit circuit;
    private final HubFinder finder;
    private final List<BusHub> hubs;
    private final List<BusLink> links;
    private final IndexGraph graph;
    private final List<Optional<String>> declared;
    private final int[] segmentOf;
    private final List<BusSegment> segments;
    private final Map<String, Bus> byName = new HashMap<>();
    private final Map<Integer, Trunk> trunks = new HashMap<>();

    private Buses(Circuit circuit) {
        this.circuit = circuit;
        Runs runs = new Runs(circuit.wiring());
        this.finder = new HubFinder(circuit, runs);
        this.hubs = List.copyOf(finder.hubs());
        this.links = List.copyOf(new LinkFinder(circuit, finder, runs).links());
        int[] from = links.stream().mapToInt(BusLink::from).toArray();
        int[] to = links.stream().mapToInt(BusLink::to).toArray();
        this.graph = IndexGraph.undirected(hubs.size(), from, to)
                .onlyEdges(link -> links.get(link).pair());
        circuit.wiring().aircraft().buses().forEach(bus -> byName.putIfAbsent(bus.name(), bus));
        BusNames names = BusNames.of(circuit);
        this.declared = hubs.stream()
                .map(hub -> hub.member() ? names.declared(hub.unit(), hub.typePort()) : Optional.<String>empty())
                .toList();
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
        new TerminatorFinder(circuit, finder, hubs)
                .found()
                .forEach(at -> terminatorsOf.get(segmentOf[at.hub()]).add(at));
        List<BusSegment> found = new ArrayList<>();
        for (int i = 0; i < components.count(); i++) {
            List<Integer> members = new ArrayList<>();
            for (int hub : components.members(i)) {
                members.add(hub);
            }
            members.sort(byName());
            linksOf.get(i).sort(byRow());
            terminatorsOf.get(i).sort(Comparator.comparing(TerminatorAt::hub, byName()));
            found.add(new BusSegment(
                    i,
                    name(members),
                    Collections.unmodifiableList(members),
                    Collections.unmodifiableList(linksOf.get(i)),
                    Collections.unmodifiableList(terminatorsOf.get(i))));
        }
        return Collections.unmodifiableList(found);
    }

    /** By unit and port, so that nothing depends on the order of rows. */
    private Comparator<Integer> byName() {
        return Comparator.comparing((Integer hub) -> name(hubs.get(hub)))
                .thenComparing(hub -> hubs.get(hub).port())
                .thenComparing(hub -> circuit.wiring().name(hubs.get(hub).leg()));
    }

    /** By the id of the row, short ids first. */
    private Comparator<Integer> byRow() {
        return Comparator.comparing(
                        (Integer link) -> links.get(link).lead().id().length())
                .thenComparing(link -> links.get(link).lead().id());
    }

    private String name(List<Integer> members) {
        Map<String, Integer> votes = new HashMap<>();
        String best = "";
        for (int hub : members) {
            String name = declared.get(hub).orElse("");
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
        return declared.get(hub);
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

    /** The trunk of a segment, found once. */
    public Trunk trunk(BusSegment segment) {
        Trunk known = trunks.get(segment.index());
        if (known == null) {
            known = new Trunk(this, segment);
            trunks.put(segment.index(), known);
        }
        return known;
    }

    /** The pair graph: hubs as vertices, pair links as edges (single-leg links hidden). */
    public IndexGraph graph() {
        return graph;
    }

    /** The hub a pin belongs to, if any. */
    public Optional<BusHub> hubOfPin(int pin) {
        int hub = finder.hubOf(pin);
        return hub < 0 ? Optional.empty() : Optional.of(hubs.get(hub));
    }

    /** Name of a hub: its unit or joint. */
    public String name(BusHub hub) {
        return circuit.wiring().directory().name(hub.unit());
    }

    /** Name of a segment in words: the declared name, or the units it joins. */
    public String name(BusSegment segment) {
        if (!segment.name().isEmpty()) {
            return "bus " + segment.name();
        }
        List<String> members = segment.hubs().stream()
                .map(hubs::get)
                .filter(BusHub::member)
                .map(this::name)
                .distinct()
                .sorted()
                .toList();
        return "bus of " + members.stream().limit(NAMED).collect(Collectors.joining(", "))
                + (members.size() > NAMED ? " and others" : "");
    }

    /** What is declared of a segment, if its bus is declared. */
    public Optional<Bus> declaration(BusSegment segment) {
        return Optional.ofNullable(byName.get(segment.name()));
    }

    /** The rate of a segment in kbit/s: as its bus is declared, else what all members that have one are set to. */
    public Datum<Double> rateKbit(BusSegment segment) {
        Datum<Double> declaredRate = declaration(segment).map(Bus::rateKbit).orElse(Datum.notAsked());
        if (!declaredRate.isMissing()) {
            return declaredRate;
        }
        List<Datum<Double>> set = nodes(segment).stream()
                .map(hub -> setting(hub).map(PortSetting::rateKbit).orElse(Datum.notAsked()))
                .filter(Datum::isKnown)
                .toList();
        boolean agreed = set.stream().map(rate -> rate.or(0.0)).distinct().count() == 1;
        return agreed ? set.get(0) : declaredRate;
    }

    /** The hubs of a segment that talk: members other than terminator plugs. */
    public List<BusHub> nodes(BusSegment segment) {
        List<BusHub> nodes = new ArrayList<>();
        for (int index : segment.hubs()) {
            BusHub hub = hubs.get(index);
            if (hub.member()
                    && !circuit.wiring().directory().type(hub.unit()).kind().is(UnitKind.TERMINATOR)) {
                nodes.add(hub);
            }
        }
        return nodes;
    }

    /** The unit of a member. */
    public Unit unit(BusHub member) {
        return circuit.wiring().directory().unit(member.unit());
    }

    /** How the port of a member is set, if the list says. */
    public Optional<PortSetting> setting(BusHub member) {
        return PortSettings.of(unit(member), member.typePort());
    }

    /** The port of a member, if its type describes it. */
    public Optional<BusPort> port(BusHub member) {
        return circuit.wiring().directory().layout(member.unit()).port(member.typePort());
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
