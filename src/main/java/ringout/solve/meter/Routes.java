package ringout.solve.meter;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.PriorityQueue;
import java.util.Set;
import ringout.graph.Trail;
import ringout.graph.Trail.Kind;
import ringout.graph.Wiring;
import ringout.model.Lead;
import ringout.solve.MeterElement;

/**
 * The ways the meter's current takes from point to point: the current is split into ways, the one that carries most first
 * (the way with the widest narrowest place), until little is left.
 */
final class Routes {
    private static final int MOST = 6;
    private static final double LEAST_SHARE = 0.01;

    private final Probed probed;
    private final Wiring wiring;
    private final List<Island.Member> members;
    private final double[] left;
    private final Map<Integer, List<Integer>> out = new HashMap<>();
    private final List<Route> routes = new ArrayList<>();

    Routes(Probed probed) {
        this.probed = probed;
        this.wiring = probed.wiring();
        this.members = probed.connected() ? probed.island().members() : List.of();
        this.left = new double[members.size()];
        probed.current().ifPresent(this::split);
    }

    private void split(Island.Current current) {
        for (int m = 0; m < left.length; m++) {
            left[m] = current.in(m);
            out.computeIfAbsent(tail(m), key -> new ArrayList<>()).add(m);
        }
        for (int i = 0; i < MOST; i++) {
            List<Integer> way = widest();
            double share =
                    way.stream().mapToDouble(m -> Math.abs(left[m])).min().orElse(0);
            if (share < LEAST_SHARE) {
                return;
            }
            routes.add(route(share, way));
            way.forEach(m -> left[m] -= Math.copySign(share, left[m]));
        }
    }

    private int tail(int member) {
        MeterElement element = members.get(member).element();
        return left[member] >= 0 ? element.a() : element.b();
    }

    private record Reached(int vertex, double width) {}

    /** Members of the way along the current whose smallest part is largest; empty when there is none. */
    private List<Integer> widest() {
        Map<Integer, Double> best = new HashMap<>();
        Map<Integer, Integer> by = new HashMap<>();
        PriorityQueue<Reached> open = new PriorityQueue<>(
                Comparator.comparingDouble(Reached::width).reversed().thenComparingInt(Reached::vertex));
        best.put(probed.a(), 1.0);
        open.add(new Reached(probed.a(), 1));
        while (!open.isEmpty()) {
            Reached at = open.remove();
            if (at.vertex() == probed.b()) {
                return back(by);
            }
            if (at.width() < best.getOrDefault(at.vertex(), 0.0)) {
                continue;
            }
            for (int m : out.getOrDefault(at.vertex(), List.of())) {
                double width = Math.min(at.width(), Math.abs(left[m]));
                int next = members.get(m).element().other(at.vertex());
                if (width > Probed.NO_CURRENT && width > best.getOrDefault(next, 0.0)) {
                    best.put(next, width);
                    by.put(next, m);
                    open.add(new Reached(next, width));
                }
            }
        }
        return List.of();
    }

    private List<Integer> back(Map<Integer, Integer> by) {
        List<Integer> way = new ArrayList<>();
        int vertex = probed.b();
        while (vertex != probed.a()) {
            Integer member = by.get(vertex);
            if (member == null) {
                return List.of();
            }
            way.add(0, member);
            vertex = members.get(member).element().other(vertex);
        }
        return way;
    }

    private Route route(double share, List<Integer> way) {
        List<Trail.Step> steps = new ArrayList<>();
        Set<Lead> rows = new LinkedHashSet<>();
        int vertex = probed.a();
        steps.add(new Trail.Step(Kind.PIN, wiring.name(vertex)));
        for (int m : way) {
            MeterElement element = members.get(m).element();
            step(element.piece(), steps, rows);
            vertex = element.other(vertex);
            if (wiring.isPin(vertex) || vertex == probed.b()) {
                steps.add(new Trail.Step(Kind.PIN, wiring.name(vertex)));
            }
        }
        return new Route(share, new Trail(List.copyOf(steps)), List.copyOf(rows));
    }

    private void step(MeterElement.Piece piece, List<Trail.Step> steps, Set<Lead> rows) {
        if (piece instanceof MeterElement.OfWire of) {
            steps.add(new Trail.Step(Kind.LEAD, of.wire().lead().id()));
            rows.add(of.wire().lead());
        } else {
            part(piece, steps);
        }
    }

    private void part(MeterElement.Piece piece, List<Trail.Step> steps) {
        String name = name(piece);
        if (!name.isEmpty()) {
            steps.add(new Trail.Step(Kind.PART, name));
        }
    }

    private String name(MeterElement.Piece piece) {
        if (piece instanceof MeterElement.OfPart of) {
            return PartNames.of(wiring, of.part());
        }
        return piece instanceof MeterElement.OfInput of
                ? "node input of " + wiring.directory().name(of.unit())
                : "";
    }

    /** The ways found, the one that carries most first. */
    List<Route> all() {
        return routes;
    }

    /** What carries the rest: parts and node inputs by name. */
    List<String> restThrough() {
        Set<String> through = new LinkedHashSet<>();
        for (int m = 0; m < left.length; m++) {
            String name = name(members.get(m).element().piece());
            if (Math.abs(left[m]) > Probed.NO_CURRENT && !name.isEmpty()) {
                through.add(name);
            }
        }
        return through.stream().sorted().toList();
    }

    /** The part of the current that is in no way found. */
    double rest() {
        double found = routes.stream().mapToDouble(Route::share).sum();
        return probed.connected() && probed.a() != probed.b() ? Math.max(0, 1 - found) : 0;
    }
}
