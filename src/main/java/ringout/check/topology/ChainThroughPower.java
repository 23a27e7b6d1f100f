package ringout.check.topology;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import ringout.check.form.Check;
import ringout.check.form.CheckInfo;
import ringout.check.form.Gaps;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.finding.Draft;
import ringout.finding.Severity;
import ringout.graph.Wire;
import ringout.graph.bus.BusHub;
import ringout.graph.bus.BusLink;
import ringout.graph.bus.BusSegment;
import ringout.graph.bus.Buses;
import ringout.model.BusPort;
import ringout.model.Datum;
import ringout.model.PassThrough;
import ringout.model.UnitKind;

/**
 * A bus unit that sends on from one socket to the other, with members beyond it.
 *
 * <p>Why it matters: when that unit loses its supply or hangs, everything beyond it is gone with it.
 *
 * <p>Condition: the sockets of one bus port are joined by an active part, and leads at two of them lead to members. Cannot tell when
 * leads are at two sockets and nobody knows what joins them. Most twin sockets are copper in parallel, but that is not assumed.
 *
 * <p>Does not see: whether the unit has a supply (P05); sockets not joined at all (T04).
 *
 * <p>Reference: common practice, no source.
 */
@CheckInfo(
        code = "T16",
        name = "chain-through-power",
        severity = Severity.S3,
        since = "0.1",
        needs = {"what joins the two bus sockets of each unit"})
public final class ChainThroughPower implements Check {
    private static final int NONE = -1;
    private static final int SEVERAL = -2;
    private static final int NAMED = 4;

    @Override
    public void look(Situation at, Outcomes out) {
        Buses buses = Buses.of(at.circuit());
        int[] plugs = plugs(at, buses);
        Map<String, List<BusHub>> sockets = new LinkedHashMap<>();
        Gaps gaps = new Gaps();
        for (BusHub hub : buses.hubs()) {
            if (!hub.member() || plugs[hub.index()] == NONE) {
                continue;
            }
            Datum<PassThrough> through =
                    buses.port(hub).map(BusPort::passThrough).orElse(Datum.notAsked());
            if (through.is(PassThrough.ACTIVE)) {
                sockets.computeIfAbsent(buses.name(hub) + " " + hub.typePort(), key -> new ArrayList<>())
                        .add(hub);
            } else if (plugs[hub.index()] == SEVERAL && through.isMissing()) {
                gaps.add("pass-through", buses.unit(hub).type() + " " + hub.typePort());
            } else if (plugs[hub.index()] == SEVERAL) {
                out.looked();
            }
        }
        sockets.values().forEach(hubs -> look(at, out, buses, hubs));
        gaps.tell(
                out,
                datum -> new Gaps.Way(
                        "unit without supply: measure H of one socket to H of the other, 0 ohm is copper", 3));
    }

    /** For each hub the plug its leads are at, {@link #NONE} or {@link #SEVERAL}. */
    private static int[] plugs(Situation at, Buses buses) {
        int[] plugs = new int[buses.hubs().size()];
        Arrays.fill(plugs, NONE);
        for (BusLink link : buses.links()) {
            if (link.pair()) {
                Wire wire = link.wires().get(0);
                note(at, buses, plugs, link.from(), wire);
                note(at, buses, plugs, link.to(), wire);
            }
        }
        return plugs;
    }

    private static void note(Situation at, Buses buses, int[] plugs, int hub, Wire wire) {
        int unit = buses.hubs().get(hub).unit();
        int pin = at.wiring().unitOf(wire.fromPin()) == unit ? wire.fromPin() : wire.toPin();
        if (at.wiring().unitOf(pin) == unit) {
            int plug = at.wiring().plugIndex(pin);
            plugs[hub] = plugs[hub] == NONE || plugs[hub] == plug ? plug : SEVERAL;
        }
    }

    private static void look(Situation at, Outcomes out, Buses buses, List<BusHub> sockets) {
        List<BusHub> leading =
                sockets.stream().filter(hub -> !others(buses, hub).isEmpty()).toList();
        out.looked();
        if (leading.stream().map(buses::segment).distinct().count() > 1) {
            out.finding(draft(at, buses, leading));
        }
    }

    /** Units on the bus at one socket, the unit itself left out. */
    private static Set<String> others(Buses buses, BusHub socket) {
        return buses.nodes(buses.segment(socket)).stream()
                .filter(hub -> hub.unit() != socket.unit())
                .map(buses::name)
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private static boolean controlled(Situation at, Buses buses, BusHub socket) {
        return buses.nodes(buses.segment(socket)).stream()
                .anyMatch(hub -> hub.unit() != socket.unit()
                        && at.directory().type(hub.unit()).kind().is(UnitKind.CONTROLLER));
    }

    private static Draft draft(Situation at, Buses buses, List<BusHub> sockets) {
        String unit = buses.name(sockets.get(0));
        List<BusHub> beyond =
                sockets.stream().filter(hub -> !controlled(at, buses, hub)).toList();
        boolean clear = !beyond.isEmpty() && beyond.size() < sockets.size();
        TreeSet<String> names = new TreeSet<>();
        (clear ? beyond : sockets.subList(1, sockets.size())).forEach(hub -> names.addAll(others(buses, hub)));
        String members = names.stream().limit(NAMED).collect(Collectors.joining(", "))
                + (names.size() > NAMED ? " and others" : "");
        Draft draft = Draft.of(
                        Severity.S3,
                        "chain depends on a powered unit: " + members + " are reached only through " + unit
                                + ", which sends on")
                .about(unit, sockets.get(0).typePort())
                .sum(names.size() + " units beyond " + unit + ", pass-through active")
                .why("when " + unit + " loses its supply, everything beyond it goes silent")
                .meter("power off, H of one socket of " + unit
                        + " to H of the other: open, it would be 0 ohm in copper")
                .fix("put " + unit + " at the end of the chain, or join the leads at its sockets past it")
                .at(buses.unit(sockets.get(0)), "pass-through");
        TreeSet<String> declared = new TreeSet<>();
        for (BusHub hub : sockets) {
            BusSegment segment = buses.segment(hub);
            declared.add(segment.name());
            segment.links().stream()
                    .map(buses.links()::get)
                    .filter(link -> link.from() == hub.index() || link.to() == hub.index())
                    .forEach(link -> draft.seen(link.lead()));
        }
        if (declared.size() == 1) {
            draft.cause(Termination.cause(buses, buses.segment(sockets.get(0))));
        }
        return draft;
    }
}
