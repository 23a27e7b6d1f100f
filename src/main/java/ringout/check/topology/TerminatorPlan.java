package ringout.check.topology;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import ringout.finding.Draft;
import ringout.finding.Sketch;
import ringout.graph.bus.BusHub;
import ringout.graph.bus.BusSegment;
import ringout.graph.bus.Buses;
import ringout.graph.bus.TerminatorAt;
import ringout.graph.bus.Trunk;
import ringout.model.TerminatorFit;

/** Where the two terminators of a segment belong, and what to change for it. */
final class TerminatorPlan {
    private final Buses buses;
    private final BusSegment segment;
    private final boolean sure;
    private final List<TerminatorAt> off = new ArrayList<>();
    private final List<BusHub> on = new ArrayList<>();

    TerminatorPlan(Buses buses, BusSegment segment) {
        this.buses = buses;
        this.segment = segment;
        Trunk trunk = buses.trunk(segment);
        this.sure =
                segment.rings() == 0 && (trunk.line() || trunk.withoutLength().isEmpty());
        List<Integer> kept = new ArrayList<>();
        for (TerminatorAt terminator : segment.on()) {
            if (trunk.farEnds().contains(terminator.hub()) && !kept.contains(terminator.hub())) {
                kept.add(terminator.hub());
            } else {
                off.add(terminator);
            }
        }
        for (int end : trunk.farEnds()) {
            if (!kept.contains(end)) {
                on.add(buses.hubs().get(end));
            }
        }
    }

    /** Terminators that are not at an end; empty when it is not sure where the ends are. */
    List<TerminatorAt> off() {
        return sure ? off : List.of();
    }

    /** The change in words. */
    String words() {
        if (!sure) {
            return "one terminator at each end of the trunk, none elsewhere";
        }
        String switches = joined(
                "terminator: ",
                off.stream().filter(at -> at.how() == TerminatorAt.How.SWITCH).map(at -> "off at " + name(at)),
                on.stream().filter(this::switched).map(hub -> "on at " + buses.name(hub)));
        String plugs = joined(
                "",
                off.stream().filter(at -> at.how() != TerminatorAt.How.SWITCH).map(this::away),
                on.stream().filter(hub -> !switched(hub)).map(hub -> "fit a terminator plug at " + buses.name(hub)));
        return switches.isEmpty() || plugs.isEmpty() ? switches + plugs : switches + "; " + plugs;
    }

    private static String joined(
            String head, java.util.stream.Stream<String> first, java.util.stream.Stream<String> then) {
        String all = java.util.stream.Stream.concat(first, then).distinct().collect(Collectors.joining(", "));
        return all.isEmpty() ? "" : head + all;
    }

    private String away(TerminatorAt at) {
        return at.how() == TerminatorAt.How.PLUG
                ? "take the terminator plug " + name(at) + " off"
                : "move " + name(at) + " with its built-in terminator to an end";
    }

    /** Whether a member can be told to terminate: by a switch, or in a way nobody looked at yet. */
    private boolean switched(BusHub hub) {
        boolean open = segment.unknown().stream().anyMatch(at -> at.hub() == hub.index());
        return open
                || buses.port(hub)
                        .filter(port -> port.terminator().is(TerminatorFit.SWITCH))
                        .isPresent();
    }

    private String name(TerminatorAt at) {
        return buses.circuit().wiring().directory().name(at.unit());
    }

    /** Points a finding to the units to change, and shows a drawing where terminators are missing or too many. */
    void show(Draft draft) {
        if (!sure) {
            return;
        }
        off.forEach(at -> draft.at(buses.circuit().wiring().directory().unit(at.unit()), "terminator"));
        on.stream().filter(BusHub::member).forEach(hub -> draft.at(buses.unit(hub), "terminator"));
        if (off.size() == 1 && on.size() == 1) {
            String here = name(off.get(0));
            draft.sketch(new Sketch.Misplaced(Sketch.What.TERMINATOR, here, buses.name(on.get(0))));
            return;
        }
        off.forEach(at -> draft.sketch(new Sketch.Extra(Sketch.What.TERMINATOR, name(at))));
        on.forEach(hub -> draft.sketch(new Sketch.Missing(Sketch.What.TERMINATOR, buses.name(hub), buses.name(hub))));
    }
}
