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
import ringout.graph.Trail;
import ringout.graph.Wire;
import ringout.graph.Wiring;
import ringout.model.End;

/**
 * The rows within two plugs of what a finding is about: a lead goes from plug to plug, and a unit joins plugs that share a net.
 * Rows at fault come first, then those of the path, then those nearer to the fault.
 */
final class Neighbourhood {
    private static final int REACH = 2;

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
                rowsAtPlug
                        .computeIfAbsent(plug(pin), key -> new LinkedHashSet<>())
                        .add(wire.leadIndex());
            }
        }
    }

    private long plug(int pin) {
        return ((long) wiring.unitOf(pin) << 32) + wiring.plugIndex(pin);
    }

    /**
     * The numbers of the rows, ascending; none when the finding is about nothing with a wire.
     *
     * @param most conductors, but for one row at least
     */
    List<Integer> of(Finding finding, int most) {
        Map<Long, Integer> far = new LinkedHashMap<>();
        Deque<Long> open = new ArrayDeque<>();
        List<Integer> near = new ArrayList<>(faulty(finding));
        near.addAll(passed(finding));
        for (long seed : seeds(finding, near)) {
            far.putIfAbsent(seed, 0);
            open.add(seed);
        }
        while (!open.isEmpty()) {
            long plug = open.remove();
            near.addAll(rowsAtPlug.getOrDefault(plug, Set.of()));
            int steps = far.getOrDefault(plug, 0);
            for (long next : steps < REACH - 1 ? beside(plug) : Set.<Long>of()) {
                if (far.putIfAbsent(next, steps + 1) == null) {
                    open.add(next);
                }
            }
        }
        return first(near, most);
    }

    private List<Integer> first(List<Integer> near, int most) {
        Set<Integer> rows = new TreeSet<>();
        int count = 0;
        for (int row : new LinkedHashSet<>(near)) {
            if (rows.isEmpty() || count + conductors(row) <= most) {
                rows.add(row);
                count += conductors(row);
            }
        }
        return List.copyOf(rows);
    }

    private int conductors(int row) {
        return wiresOfRow.getOrDefault(row, List.of()).size();
    }

    /** The rows at fault, else those pointed to. */
    private List<Integer> faulty(Finding finding) {
        Set<String> at = new HashSet<>();
        finding.at().stream().map(Place::row).forEach(at::add);
        Set<String> caused = new HashSet<>(at);
        caused.retainAll(finding.causes());
        List<Integer> rows = rowsNamed(caused);
        return rows.isEmpty() ? rowsNamed(at) : rows;
    }

    private List<Integer> rowsNamed(Set<String> names) {
        List<Integer> rows = new ArrayList<>();
        wiresOfRow.forEach((row, wires) -> {
            String id = wires.get(0).lead().id();
            if (!id.isEmpty() && names.contains(id)) {
                rows.add(row);
            }
        });
        return rows;
    }

    private List<Integer> passed(Finding finding) {
        Set<String> leads = new HashSet<>();
        for (Trail.Step step : finding.evidence().path().steps()) {
            if (step.kind() == Trail.Kind.LEAD) {
                leads.add(step.name());
            }
        }
        return rowsNamed(leads);
    }

    /** Where the fault is: the ends of the rows at fault, and the plugs named; else those that join the units named. */
    private Set<Long> seeds(Finding finding, List<Integer> faulty) {
        Set<Long> seeds = new LinkedHashSet<>();
        for (int row : faulty) {
            seeds.addAll(ends(row));
        }
        Set<String> names = new LinkedHashSet<>(finding.objects());
        finding.at().stream().map(Place::row).forEach(names::add);
        names.forEach(name -> seeds.addAll(named(name)));
        if (seeds.isEmpty()) {
            Set<Integer> units = new HashSet<>();
            names.forEach(name -> wiring.directory().find(name).ifPresent(units::add));
            wiresOfRow.keySet().stream()
                    .map(this::ends)
                    .filter(ends -> ends.stream().allMatch(plug -> units.contains((int) (plug >> 32))))
                    .forEach(seeds::addAll);
            rowsAtPlug.keySet().stream()
                    .filter(plug -> seeds.isEmpty() && units.contains((int) (plug >> 32)))
                    .toList()
                    .forEach(seeds::add);
        }
        return seeds;
    }

    private Set<Long> ends(int row) {
        Set<Long> ends = new LinkedHashSet<>();
        for (Wire wire : wiresOfRow.getOrDefault(row, List.of())) {
            ends.add(plug(wire.fromPin()));
            ends.add(plug(wire.toPin()));
        }
        return ends;
    }

    /** The plug with a wire that a name stands for. */
    private Set<Long> named(String object) {
        Site site = wiring.directory().resolve(new End(object));
        Set<Long> plugs = new LinkedHashSet<>();
        if (site instanceof Site.OnPlug on) {
            plugs.add(((long) on.unit() << 32) + on.plug());
        } else if (site instanceof Site.OnPin on) {
            plugs.add(((long) on.unit() << 32) + on.plug());
        }
        plugs.retainAll(rowsAtPlug.keySet());
        return plugs;
    }

    /** The plugs one step on: at the far ends of its leads, and on the same unit where a net goes through. */
    private Set<Long> beside(long plug) {
        Set<Long> next = new LinkedHashSet<>();
        Set<Integer> nets = new HashSet<>();
        for (int row : rowsAtPlug.getOrDefault(plug, Set.of())) {
            next.addAll(ends(row));
            for (Wire wire : wiresOfRow.getOrDefault(row, List.of())) {
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
