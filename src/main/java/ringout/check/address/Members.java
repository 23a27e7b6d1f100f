package ringout.check.address;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.Collectors;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.graph.bus.BusHub;
import ringout.graph.bus.BusSegment;
import ringout.graph.bus.Buses;
import ringout.model.Bus;
import ringout.model.BusPort;
import ringout.model.Datum;
import ringout.model.PortSetting;
import ringout.model.Unit;

/**
 * The nodes of one piece of bus with what is set at their ports.
 *
 * @param buses the buses it is one of
 * @param segment the piece
 * @param nodes its nodes, by name
 */
record Members(Buses buses, BusSegment segment, List<Member> nodes) {
    /**
     * One node.
     *
     * @param hub its place
     * @param unit the unit
     * @param several whether the unit has more than one port on buses
     */
    record Member(BusHub hub, Unit unit, boolean several) {
        /** The unit, with its port when it has several. */
        String words() {
            return several ? unit.ref() + " " + hub.typePort() : unit.ref();
        }
    }

    /** All pieces that join anything, found once a circuit. */
    static List<Members> all(Situation at) {
        return at.circuit()
                .know(All.class, circuit -> new All(find(Buses.of(circuit))))
                .members();
    }

    private record All(List<Members> members) {}

    private static List<Members> find(Buses buses) {
        List<Members> found = new ArrayList<>();
        int[] ports = new int[buses.circuit().wiring().directory().count()];
        buses.hubs().stream().filter(BusHub::member).forEach(hub -> ports[hub.unit()]++);
        for (BusSegment segment : buses.segments()) {
            if (segment.wired()) {
                List<Member> nodes = buses.nodes(segment).stream()
                        .map(hub -> new Member(hub, buses.unit(hub), ports[hub.unit()] > 1))
                        .toList();
                found.add(new Members(buses, segment, nodes));
            }
        }
        return found;
    }

    /** Name of the bus in words. */
    String name() {
        return buses.name(segment);
    }

    /** Address of a node as listed. */
    Datum<Integer> address(Member node) {
        return buses.setting(node.hub()).map(PortSetting::address).orElse(Datum.notAsked());
    }

    /** Rate of a node: as set, else the only one it can do. */
    Datum<Double> rateKbit(Member node) {
        Datum<Double> set = buses.setting(node.hub()).map(PortSetting::rateKbit).orElse(Datum.notAsked());
        List<Double> can = port(node).map(BusPort::ratesKbit).orElse(List.of());
        return set.isKnown() || can.size() != 1 ? set : Datum.of(can.get(0));
    }

    /** The port of a node as its type describes it. */
    java.util.Optional<BusPort> port(Member node) {
        return buses.port(node.hub());
    }

    /** Whether addresses are given out: by the bus as declared or by a node; not known when nobody says. */
    Datum<Boolean> allocator() {
        Datum<Boolean> declared = buses.declaration(segment).map(Bus::allocator).orElse(Datum.notAsked());
        boolean missing = false;
        for (Member node : nodes) {
            Datum<Boolean> gives = port(node).map(BusPort::allocator).orElse(Datum.notAsked());
            if (gives.is(true)) {
                return gives;
            }
            missing |= gives.isMissing();
        }
        return declared.isKnown() || missing ? declared : Datum.of(false);
    }

    /** Asks for one datum of several nodes in one line. */
    void ask(Outcomes out, String datum, String how, List<Member> open) {
        if (!open.isEmpty()) {
            TreeSet<String> names = open.stream().map(Member::words).collect(Collectors.toCollection(TreeSet::new));
            out.cannotTell(
                    datum + " of " + String.join(", ", names),
                    how,
                    2 * names.size(),
                    open.stream().map(node -> node.unit().ref()).distinct().toArray(String[]::new));
        }
    }

    /** The tokens of copper between declared buses: what two of them share then comes from there. */
    List<String> bridges() {
        TreeSet<String> declared = new TreeSet<>();
        nodes.forEach(node -> buses.declared(node.hub().index()).ifPresent(declared::add));
        return declared.size() < 2 ? List.of() : List.of("bridge of " + String.join(" and ", declared));
    }
}
