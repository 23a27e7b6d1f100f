package ringout.draw.harness;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import ringout.finding.Finding;
import ringout.finding.Place;
import ringout.graph.Circuit;
import ringout.graph.Site;
import ringout.graph.Wire;
import ringout.graph.Wiring;
import ringout.model.End;

/**
 * The rows within two plugs of what a finding is about: a lead goes from plug to plug, and a unit joins plugs that share a net.
 * Rows nearer to the fault come first, and there are only as many as can be looked through at once.
 */
final class Neighbourhood {
    private static final int REACH = 2;
    private static final int MOST = 40;

    private final Circuit circuit;
    private final Wiring wiring;
    private final Map<Integer, List<Wire>> wiresOfRow = new LinkedHashMap<>();
    private final Map<Long, Set<Integer>> rowsAtPlug = new LinkedHashMap<>();

    Neighbourhood(Circuit circuit) {
        this.circuit = circuit;
        this.wiring = circuit.wiring();
        for (Wire wire : wiring.wires()) {
            wiresOfRow
                    .computeIfAbsent(wire.leadIndex(), key -> new ArrayList<>())
                    .add(wire);
            for (int pin : List.of(wire.fromPin(), wire.toPin())) {
                rowsAtPlug.computeIfAbsent(plug(pin), key -> new LinkedHashSet<>()).add(wire.leadIndex());
            }
        }
    }

    private long plug(int pin) {
        return ((long) wiring.unitOf(pin) << 32) + wiring.plugIndex(pin);
    }

    /** The numbers of the rows, ascending; none when the finding is about nothing with a wire. */
    List<Integer> of(Finding finding) {
        Map<Long, Integer> far = new LinkedHashMap<>();
        Deque<Long> open = new ArrayDeque<>();
        Set<Integer> rows = new LinkedHashSet<>();
        for (long seed : seeds(finding, rows)) {
            far.putIfAbsent(seed, 0);
            open.add(seed);
        }
        while (!open.isEmpty()) {
            long plug = open.remove();
            int steps = far.getOrDefault(plug, 0);
            if (steps == REACH) {
                continue;
            }
            for (int row : rowsAtPlug.getOrDefault(plug, Set.of())) {
                add(rows, row);
            }
            for (long next : beside(plug, rows)) {
                if (far.putIfAbsent(next, steps + 1) == null) {
                    open.add(next);
                }
            }
        }
        return List.copyOf(new TreeSet<>(rows));
    }

    private void add(Set<Integer> rows, int row) {
        int conductors = rows.stream().mapToInt(r -> conductors(r)).sum();
        if (conductors + conductors(row) <= MOST) {
            rows.add(row);
        }
    }

    private int conductors(int row) {
        return wiresOfRow.getOrDefault(row, List.of()).size();
    }

    /** Where the fault is: the ends of the rows at fault or pointed to, else the plugs of the units named. */
    private Set<Long> seeds(Finding finding, Set<Integer> rows) {
        Set<String> at = new HashSet<>();
        finding.at().stream().map(Place::row).forEach(at::add);
        Set<String> caused = new HashSet<>(at);
        caused.retainAll(finding.causes());
        Set<String> wanted = caused.isEmpty() ? at : caused;
        Set<Long> seeds = new LinkedHashSet<>();
        wiresOfRow.forEach((row, wires) -> {
            String id = wires.get(0).lead().id();
            if (!id.isEmpty() && wanted.contains(id)) {
                add(rows, row);
                wires.forEach(wire -> {
                    seeds.add(plug(wire.fromPin()));
                    seeds.add(plug(wire.toPin()));
                });
            }
        });
        finding.objects().forEach(object -> seeds.addAll(named(object, seeds.isEmpty())));
        return seeds;
    }

    /** The plug a name stands for; of a unit, all its plugs with a wire, if nothing nearer is known. */
    private Set<Long> named(String object, boolean units) {
        Site site = wiring.directory().resolve(new End(object));
        Set<Long> plugs = new LinkedHashSet<>();
        if (site instanceof Site.OnPlug on) {
            plugs.add(((long) on.unit() << 32) + on.plug());
        } else if (site instanceof Site.OnPin on) {
            plugs.add(((long) on.unit() << 32) + on.plug());
        } else if (units) {
            wiring.directory().find(object).ifPresent(unit -> rowsAtPlug.keySet().stream()
                    .filter(plug -> plug >> 32 == unit)
                    .forEach(plugs::add));
        }
        plugs.retainAll(rowsAtPlug.keySet());
        return plugs;
    }

    /** The plugs one step on: at the far ends of its leads, and on the same unit where a net goes through. */
    private Set<Long> beside(long plug, Set<Integer> rows) {
        Set<Long> next = new LinkedHashSet<>();
        Set<Integer> nets = new HashSet<>();
        for (int row : rowsAtPlug.getOrDefault(plug, Set.of())) {
            for (Wire wire : rows.contains(row) ? wiresOfRow.getOrDefault(row, List.of()) : List.<Wire>of()) {
                next.add(plug(wire.fromPin()));
                next.add(plug(wire.toPin()));
                nets.add(circuit.nets().of(wire.fromPin()));
                nets.add(circuit.nets().of(wire.toPin()));
            }
        }
        int unit = (int) (plug >> 32);
        for (long other : rowsAtPlug.keySet()) {
            if (other >> 32 == unit && shares(other, nets)) {
                next.add(other);
            }
        }
        return next;
    }

    private boolean shares(long plug, Set<Integer> nets) {
        for (int row : rowsAtPlug.getOrDefault(plug, Set.of())) {
            for (Wire wire : wiresOfRow.getOrDefault(row, List.of())) {
                for (int pin : List.of(wire.fromPin(), wire.toPin())) {
                    if (plug(pin) == plug && nets.contains(circuit.nets().of(pin))) {
                        return true;
                    }
                }
            }
        }
        return false;
    }
}
