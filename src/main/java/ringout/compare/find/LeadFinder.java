package ringout.compare.find;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import ringout.compare.difference.Difference;
import ringout.compare.difference.Kind;
import ringout.compare.difference.Touched;
import ringout.compare.match.Cable;
import ringout.compare.match.Match;
import ringout.graph.Wire;

/** Differences of what joins what: leads new, gone, moved, exchanged, crossed, and conductors of them. */
final class LeadFinder {
    private final Scene scene;
    private final Match match;
    private final List<Difference> found = new ArrayList<>();
    private final List<Moved> moved = new ArrayList<>();

    LeadFinder(Scene scene) {
        this.scene = scene;
        this.match = scene.match();
    }

    /** Units that are there in one aircraft only take their leads with them. */
    List<Difference> find() {
        NetEffects nets = new NetEffects(scene);
        LeadMake make = new LeadMake(scene);
        for (Match.Pair pair : match.pairs()) {
            if (make.plainly(pair)) {
                continue;
            }
            Ways ways = Ways.of(match, pair);
            if (!pair.joinsSame()) {
                joins(pair, ways);
            }
            found.addAll(make.of(pair, ways));
        }
        found.addAll(Exchanges.of(moved));
        match.gone().stream().filter(cable -> !leavesWithUnit(cable)).forEach(this::gone);
        match.added().stream().filter(cable -> !comesWithUnit(cable)).forEach(this::added);
        return found.stream()
                .map(difference -> difference.kind().ofConnections() ? nets.on(difference) : difference)
                .toList();
    }

    private boolean leavesWithUnit(Cable cable) {
        return cable.wires().stream()
                .anyMatch(wire -> match.unit(match.base().unitOf(wire.fromPin())) < 0
                        || match.unit(match.base().unitOf(wire.toPin())) < 0);
    }

    private boolean comesWithUnit(Cable cable) {
        return cable.wires().stream()
                .anyMatch(wire -> match.unitBack(match.other().unitOf(wire.fromPin())) < 0
                        || match.unitBack(match.other().unitOf(wire.toPin())) < 0);
    }

    private void gone(Cable cable) {
        found.add(new Difference(
                Kind.LEAD_GONE,
                cable.id(),
                cable.id(),
                cable.row().from() + " to " + cable.row().to(),
                "",
                List.of(),
                List.of(Scene.place(cable)),
                List.of(),
                Set.of(cable.id()),
                touched(List.of(cable), List.of(), cable.wires(), List.of())));
    }

    private void added(Cable cable) {
        found.add(new Difference(
                Kind.LEAD_NEW,
                cable.id(),
                cable.id(),
                "",
                cable.row().from() + " to " + cable.row().to(),
                List.of(),
                List.of(),
                List.of(Scene.place(cable)),
                Set.of(cable.id()),
                touched(List.of(), List.of(cable), List.of(), cable.wires())));
    }

    private void joins(Match.Pair pair, Ways ways) {
        Set<String> plugs = ends(pair.base(), true);
        Set<String> plugsThere = ends(pair.other(), false);
        if (!plugs.equals(plugsThere)) {
            moved.add(new Moved(pair, ways, plugs, plugsThere));
        } else if (ways.added().isEmpty()) {
            add(pair, ways, Kind.CONDUCTOR_GONE);
        } else if (ways.gone().isEmpty()) {
            add(pair, ways, Kind.CONDUCTOR_NEW);
        } else {
            add(pair, ways, crossed(ways) ? Kind.CROSSED : Kind.REWIRED);
        }
    }

    /** The plugs a lead ends at, by their names in the base; what it says when it ends at none. */
    private Set<String> ends(Cable cable, boolean here) {
        Set<String> ends = new TreeSet<>();
        for (Wire wire : cable.wires()) {
            ends.add(here ? scene.plugHere(wire.fromPin()) : scene.plugThere(wire.fromPin()));
            ends.add(here ? scene.plugHere(wire.toPin()) : scene.plugThere(wire.toPin()));
        }
        if (cable.wires().isEmpty()) {
            ends.add(cable.row().from().text());
            ends.add(cable.row().to().text());
        }
        return ends;
    }

    /** The same contacts at both ends, joined otherwise. */
    private boolean crossed(Ways ways) {
        Set<Integer> here = new HashSet<>();
        ways.gone().forEach(wire -> here.addAll(List.of(wire.fromPin(), wire.toPin())));
        Set<Integer> there = new HashSet<>();
        ways.added().forEach(wire -> {
            there.add(match.pinBack(wire.fromPin()));
            there.add(match.pinBack(wire.toPin()));
        });
        return ways.gone().size() == ways.added().size() && here.equals(there);
    }

    private void add(Match.Pair pair, Ways ways, Kind kind) {
        String before = ways.gone().stream()
                .map(wire ->
                        pins(match.base().name(wire.fromPin()), match.base().name(wire.toPin())))
                .sorted()
                .collect(Collectors.joining(", "));
        String after = ways.added().stream()
                .map(wire -> ways.reversed()
                        ? pins(scene.there(wire.toPin()), scene.there(wire.fromPin()))
                        : pins(scene.there(wire.fromPin()), scene.there(wire.toPin())))
                .sorted()
                .collect(Collectors.joining(", "));
        found.add(new Difference(
                kind,
                pair.base().id(),
                pair.base().id(),
                before,
                after,
                List.of(),
                List.of(Scene.place(pair.base())),
                List.of(Scene.place(pair.other())),
                Set.of(pair.base().id()),
                touched(List.of(pair.base()), List.of(pair.other()), ways.gone(), ways.added())));
    }

    private static String pins(String from, String to) {
        return from + " to " + to;
    }

    /** A lead with an end at another plug. */
    record Moved(Match.Pair pair, Ways ways, Set<String> plugs, Set<String> plugsThere) {
        Set<String> left() {
            Set<String> left = new TreeSet<>(plugs);
            left.removeAll(plugsThere);
            return left;
        }

        Set<String> taken() {
            Set<String> taken = new TreeSet<>(plugsThere);
            taken.removeAll(plugs);
            return taken;
        }
    }

    static Touched touched(List<Cable> here, List<Cable> there, List<Wire> before, List<Wire> after) {
        return new Touched(before, after, Set.of(), Set.of(), ids(here), ids(there));
    }

    private static Set<String> ids(List<Cable> cables) {
        return cables.stream().map(Cable::id).collect(Collectors.toCollection(TreeSet::new));
    }
}
