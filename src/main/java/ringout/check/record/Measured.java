package ringout.check.record;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import ringout.check.form.Gaps;
import ringout.check.form.Situation;
import ringout.graph.Circuit;
import ringout.model.Datum;
import ringout.model.PlannedTest;
import ringout.model.Reading;
import ringout.solve.ProbePoint;
import ringout.solve.meter.OhmsQuestion;

/** Readings on record as the meter's two points in a circuit; the latest of each place counts. */
final class Measured {
    private static final List<String> OHMS = List.of("ohm", "ohms", "\u03c9", "\u2126");
    private static final List<String> VOLTS = List.of("v", "volt", "volts");

    /**
     * A reading between two points.
     *
     * @param row the reading
     * @param name its place in words
     * @param ohms whether it is a resistance and not a voltage
     * @param a vertex of the first point
     * @param b vertex of the second point
     * @param circuit the circuit in its state with what was pulled
     */
    record Spot(Reading row, String name, boolean ohms, int a, int b, Circuit circuit) {}

    private final Situation at;
    private final Gaps gaps;

    Measured(Situation at, Gaps gaps) {
        this.at = at;
        this.gaps = gaps;
    }

    /** The readings that belong to the state looked at. */
    List<Spot> all() {
        Map<String, Spot> latest = new LinkedHashMap<>();
        for (Reading row : at.aircraft().record().readings()) {
            spot(row).ifPresent(spot -> latest.merge(key(spot), spot, Measured::later));
        }
        return List.copyOf(latest.values());
    }

    private static String key(Spot spot) {
        return Math.min(spot.a(), spot.b()) + " " + Math.max(spot.a(), spot.b()) + " " + spot.ohms()
                + spot.row().pulled();
    }

    private static Spot later(Spot first, Spot again) {
        return again.row().date().or("").compareTo(first.row().date().or("")) >= 0 ? again : first;
    }

    private Optional<Spot> spot(Reading row) {
        String quantity = row.quantity().or("").strip().toLowerCase(Locale.ROOT);
        String name = "reading " + row.where();
        if (row.quantity().isMissing()) {
            gaps.add("quantity", name);
            return Optional.empty();
        }
        boolean ohms = OHMS.contains(quantity);
        if (!ohms && !VOLTS.contains(quantity)) {
            return Optional.empty();
        }
        Optional<PlannedTest> test = test(row.where());
        Datum<String> state = row.state().orElse(test.map(PlannedTest::state).orElse(Datum.notAsked()));
        if (state instanceof Datum.Unknown) {
            gaps.add("state of the aircraft", name);
            return Optional.empty();
        }
        if (!here(state)) {
            return Optional.empty();
        }
        List<Integer> points = points(test.map(PlannedTest::pins).orElseGet(() -> parts(row.where())));
        if (points.size() != 2) {
            gaps.add("two pins", name);
            return Optional.empty();
        }
        Circuit circuit = row.pulled().isEmpty()
                ? at.circuit()
                : Circuit.of(at.wiring(), OhmsQuestion.pulled(at.circuit().state(), row.pulled()));
        return Optional.of(new Spot(row, name, ohms, points.get(0), points.get(1), circuit));
    }

    /** The state a reading names, or the first one when it names none. */
    private boolean here(Datum<String> state) {
        List<String> states =
                Circuit.states(at.wiring()).stream().map(one -> one.name()).toList();
        return state.or(states.get(0)).equals(at.state());
    }

    /** The planned test whose id stands in the place of the pins. */
    private Optional<PlannedTest> test(String where) {
        return at.aircraft().record().tests().stream()
                .filter(test -> test.id().equalsIgnoreCase(where.strip()))
                .findFirst();
    }

    private static List<String> parts(String where) {
        return List.of(where.strip().split("\\s+to\\s+|\\s*[,;]\\s*|\\s+", -1));
    }

    /** The vertices of names; fewer when one of them is no point. */
    private List<Integer> points(List<String> names) {
        List<Integer> points = new ArrayList<>();
        names.forEach(name -> ProbePoint.find(at.wiring(), name).ifPresent(points::add));
        return points;
    }

    /** Whether a planned test measures between the points of a reading. */
    boolean covers(Spot spot, PlannedTest test) {
        List<Integer> points = points(test.pins());
        return points.size() == 2 && points.contains(spot.a()) && points.contains(spot.b());
    }
}
