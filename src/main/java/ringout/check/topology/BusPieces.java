package ringout.check.topology;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.Collectors;
import ringout.check.form.Situation;
import ringout.finding.Draft;
import ringout.finding.Severity;
import ringout.finding.Sketch;
import ringout.graph.bus.BusHub;
import ringout.graph.bus.BusLink;
import ringout.graph.bus.BusSegment;
import ringout.graph.bus.Buses;
import ringout.model.UnitKind;

/**
 * The finding about a bus in pieces.
 *
 * @param at the aircraft in one state
 * @param buses its buses
 * @param bus declared name
 * @param pieces the members of each piece
 */
record BusPieces(Situation at, Buses buses, String bus, List<List<BusHub>> pieces) {
    Draft draft() {
        boolean twice = pieces.stream().allMatch(this::whole);
        List<String> names = pieces.stream().map(this::names).toList();
        String gap = gap();
        Draft draft = Draft.of(
                        twice ? Severity.S4 : Severity.S2,
                        (twice ? "two buses with one name: " : "bus in pieces: ") + bus + " falls into " + pieces.size()
                                + " pieces: " + String.join(" | ", names))
                .about("bus " + bus)
                .sum(gap.isEmpty() ? pieces.size() + " pieces, one is right" : "gap: " + gap)
                .why(
                        twice
                                ? "each piece is a whole bus of its own; findings and readings cannot be told apart"
                                : "the pieces do not hear each other, and each is terminated wrong")
                .fix(twice ? "give each of the two buses a name of its own" : fix())
                .explains("T02", "T06", "T07", "T08", "T11", "T17", "T21", "S22");
        if (!twice) {
            BusHub first = pieces.get(0).get(0);
            BusHub other = pieces.get(1).get(0);
            draft.meter("power off, H of " + buses.name(first) + " to H of " + buses.name(other)
                    + ": open now, below 2 ohm when right");
            sketch(draft);
        }
        int largest = pieces.stream().mapToInt(List::size).max().orElse(0);
        boolean even = pieces.stream().filter(piece -> piece.size() == largest).count() > 1;
        for (List<BusHub> piece : pieces) {
            piece.forEach(hub -> mark(draft, hub));
            HubPlugs.piece(buses, piece.get(0)).stream()
                    .filter(hub -> !hub.member())
                    .forEach(hub -> HubPlugs.open(at, buses, hub)
                            .forEach(plug -> draft.cause(OpenPlugs.cause(at, hub.unit(), plug))));
            if (even || piece.size() < largest) {
                piece.forEach(hub -> draft.seen(buses.unit(hub)));
            }
        }
        return draft;
    }

    /** Whether a piece is a bus of its own: a controller, other members, two terminators. */
    private boolean whole(List<BusHub> piece) {
        BusSegment segment = buses.segment(piece.get(0));
        return segment.wired()
                && segment.on().size() == Termination.RIGHT
                && piece.stream()
                        .anyMatch(hub -> at.directory().type(hub.unit()).kind().is(UnitKind.CONTROLLER));
    }

    private String names(List<BusHub> piece) {
        return piece.stream().map(buses::name).distinct().collect(Collectors.joining(", "));
    }

    /** Rows that reach from one piece to another but are no whole pair. */
    private List<BusLink> halves() {
        return buses.links().stream()
                .filter(link -> !link.pair() && inPiece(link.from()) && inPiece(link.to()))
                .toList();
    }

    private boolean inPiece(int hub) {
        int segment = buses.segment(buses.hubs().get(hub)).index();
        return pieces.stream().anyMatch(piece -> buses.segment(piece.get(0)).index() == segment);
    }

    private List<String> open(List<BusHub> piece) {
        List<String> open = new ArrayList<>();
        for (BusHub hub : piece) {
            HubPlugs.open(at, buses, hub).forEach(plug -> open.add(at.wiring().plugName(hub.unit(), plug)));
        }
        return open;
    }

    private String gap() {
        List<String> parts = new ArrayList<>();
        halves().forEach(link -> parts.add(link.lead().id() + " joins only one leg"));
        List<String> open = pieces.stream()
                .map(this::open)
                .filter(plugs -> !plugs.isEmpty())
                .map(plugs -> String.join(", ", plugs))
                .toList();
        if (!open.isEmpty()) {
            parts.add("open sockets " + String.join(" | ", open));
        }
        return String.join("; ", parts);
    }

    private String fix() {
        List<BusLink> halves = halves();
        if (!halves.isEmpty()) {
            return "make the pair whole in "
                    + halves.stream().map(link -> link.lead().id()).collect(Collectors.joining(", "));
        }
        List<String> first = open(pieces.get(0));
        List<String> second = open(pieces.get(1));
        return pieces.size() == 2 && first.size() == 1 && second.size() == 1
                ? "fit a lead from " + first.get(0) + " to " + second.get(0)
                : "join the pieces of " + bus + ", or correct the declared bus of the members that are not on it";
    }

    private void sketch(Draft draft) {
        List<String> first = open(pieces.get(0));
        List<String> second = open(pieces.get(1));
        if (halves().isEmpty() && pieces.size() == 2 && first.size() == 1 && second.size() == 1) {
            draft.sketch(new Sketch.Missing(Sketch.What.WIRE, first.get(0), second.get(0)));
        }
    }

    private void mark(Draft draft, BusHub hub) {
        BusSegment segment = buses.segment(hub);
        draft.cause(Termination.cause(buses, segment));
        HubPlugs.open(at, buses, hub).forEach(plug -> draft.cause(OpenPlugs.cause(at, hub.unit(), plug)));
        if (!segment.name().equals(bus)) {
            draft.cause(BusesBridged.cause(new TreeSet<>(List.of(segment.name(), bus))));
        }
        for (int wire : HubPlugs.wires(at, buses, hub)) {
            boolean paired = buses.links().stream()
                    .anyMatch(link -> link.pair()
                            && link.wires().contains(at.wiring().wires().get(wire)));
            if (!paired) {
                draft.cause(at.wiring().wires().get(wire).lead().id());
            }
        }
    }
}
