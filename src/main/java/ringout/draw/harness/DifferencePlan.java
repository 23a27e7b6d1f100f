package ringout.draw.harness;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import ringout.compare.difference.Difference;
import ringout.compare.difference.Kind;
import ringout.compare.fleet.Tail;
import ringout.compare.fleet.Trend;
import ringout.compare.judge.Judged;
import ringout.draw.difference.BothAircraft;
import ringout.draw.scene.BadgeKind;
import ringout.draw.scene.Presence;
import ringout.finding.Severity;
import ringout.graph.Wire;
import ringout.graph.Wiring;
import ringout.model.Lead;

/** Which differences are drawn, on what, and how what they touch looks. */
final class DifferencePlan {
    /**
     * A difference to be drawn.
     *
     * @param number its number in the list of differences
     * @param kind the shape of its badge
     * @param code the check whose finding comes with it; may be empty
     * @param words what differs
     * @param rows rows of the list of both that it touches
     * @param units units it touches by themselves
     * @param conductors those of its conductors that are new, told by row and contacts; empty when it is about whole leads
     * @param terminator whether it is about the terminator of these units
     */
    record Shown(
            int number,
            BadgeKind kind,
            String code,
            String words,
            Set<Integer> rows,
            Set<String> conductors,
            Set<String> units,
            boolean terminator) {}

    private final Wiring wiring;
    private final Wiring now;
    private final BothAircraft both;
    private final List<Shown> shown = new ArrayList<>();
    private final Set<Integer> touchedRows = new HashSet<>();
    private final Set<Integer> changedRows = new HashSet<>();
    private final Set<String> added = new HashSet<>();
    private final Set<String> newUnits = new HashSet<>();
    private final Set<String> units = new TreeSet<>();

    DifferencePlan(Wiring wiring, BothAircraft both, Tail tail) {
        this.wiring = wiring;
        this.both = both;
        this.now = tail.judgement().differences().match().other();
        int number = 0;
        for (Judged judged : tail.judgement().all()) {
            if (!judged.ofRecord()) {
                number++;
                show(number, judged);
            }
        }
        for (Trend trend : tail.trends()) {
            if (trend.over()) {
                number++;
                show(number, trend);
            }
        }
    }

    private void show(int number, Judged judged) {
        Difference difference = judged.difference();
        Set<Integer> rows = rows(difference);
        Set<String> own = new TreeSet<>(difference.touched().unitsThere());
        if (difference.kind() == Kind.UNIT_GONE) {
            own.addAll(difference.touched().units());
        }
        if (difference.kind() == Kind.UNIT_NEW) {
            newUnits.addAll(difference.touched().unitsThere());
        }
        if (rows.isEmpty() && own.isEmpty()) {
            return;
        }
        Set<String> conductors = new TreeSet<>();
        difference.touched().after().forEach(wire -> conductors.add(now(wire)));
        added.addAll(conductors);
        touchedRows.addAll(rows);
        if (!difference.kind().ofConnections()) {
            changedRows.addAll(rows);
        }
        units.addAll(own);
        String code = judged.appear().isEmpty() ? "" : judged.appear().get(0).code();
        shown.add(new Shown(
                number,
                badge(judged.severity()),
                code,
                (judged.severity() == Severity.S5 ? "note (S5): " : "") + difference.what() + ": "
                        + difference.change(),
                rows,
                conductors,
                own,
                difference.kind() == Kind.TERMINATOR));
    }

    private void show(int number, Trend trend) {
        String name = trend.where().strip().split("[\\s,;]+", -1)[0];
        Optional<String> unit = wiring.aircraft().units().stream()
                .map(one -> one.ref())
                .filter(ref -> name.startsWith(ref))
                .findFirst();
        unit.ifPresent(ref -> {
            units.add(ref);
            shown.add(new Shown(
                    number,
                    badge(trend.severity()),
                    "",
                    "reading " + trend.where() + " is outside its limit",
                    Set.of(),
                    Set.of(),
                    Set.of(ref),
                    false));
        });
    }

    /** A conductor of the aircraft as it is now, told by its row in the list of both and its contacts. */
    private String now(Wire wire) {
        return both.rows().get(wire.leadIndex()) + " " + now.name(wire.fromPin()) + " " + now.name(wire.toPin());
    }

    private String drawn(Wire wire) {
        return wire.leadIndex() + " " + wiring.name(wire.fromPin()) + " " + wiring.name(wire.toPin());
    }

    private Set<Integer> rows(Difference difference) {
        Set<Integer> rows = new TreeSet<>();
        difference.touched().after().forEach(wire -> rows.add(both.rows().get(wire.leadIndex())));
        List<Lead> leads = both.aircraft().leads();
        for (int row = 0; row < leads.size(); row++) {
            String id = leads.get(row).id();
            boolean gone = both.goneRows().contains(row);
            boolean whole = difference.touched().after().isEmpty()
                    && difference.touched().leadsThere().contains(id);
            boolean left = !difference.touched().before().isEmpty()
                    && difference.touched().leads().contains(id);
            if (gone ? left : whole) {
                rows.add(row);
            }
        }
        return rows;
    }

    private static BadgeKind badge(Severity severity) {
        return severity == Severity.S5 ? BadgeKind.S4 : BadgeKind.valueOf(severity.name());
    }

    List<Shown> shown() {
        return shown;
    }

    /** Units that differ by themselves. */
    Set<String> units() {
        return units;
    }

    boolean touchesRow(int row) {
        return touchedRows.contains(row);
    }

    /** Whether a difference is about a conductor. */
    boolean about(Shown one, Wire wire) {
        boolean gone = both.goneRows().contains(wire.leadIndex());
        return one.rows().contains(wire.leadIndex())
                && (gone || one.conductors().isEmpty() || one.conductors().contains(drawn(wire)));
    }

    Presence wire(Wire wire) {
        if (both.goneRows().contains(wire.leadIndex())) {
            return Presence.REMOVED;
        }
        if (added.contains(drawn(wire))) {
            return Presence.ADDED;
        }
        return changedRows.contains(wire.leadIndex()) ? Presence.FITTED : Presence.AS_BEFORE;
    }

    Presence unit(String name) {
        if (both.goneUnits().contains(name)) {
            return Presence.REMOVED;
        }
        if (newUnits.contains(name)) {
            return Presence.ADDED;
        }
        return units.contains(name) ? Presence.FITTED : Presence.AS_BEFORE;
    }
}
