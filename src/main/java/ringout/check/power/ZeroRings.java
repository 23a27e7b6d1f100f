package ringout.check.power;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import ringout.check.form.Situation;
import ringout.check.form.Threshold;
import ringout.check.form.Thresholds;
import ringout.graph.Wire;
import ringout.graph.Wiring;
import ringout.graph.index.CycleBasis;
import ringout.graph.index.IndexGraphBuilder;
import ringout.graph.index.Walk;
import ringout.model.Beside;
import ringout.model.Datum;
import ringout.model.Lead;
import ringout.model.LeadKind;
import ringout.model.PinRole;
import ringout.model.RoutePoint;
import ringout.model.Unit;

/** Finds the independent loops of 0V wires over leads whose route is given. */
final class ZeroRings {
    private static final double MM2_IN_CM2 = 100;

    private final Situation at;
    private final Wiring wiring;
    private final Threshold stretch;
    private final Threshold high;
    private final Threshold close;
    private final Map<Integer, Integer> vertices = new HashMap<>();
    private final List<Integer> units = new ArrayList<>();
    private final List<Wire> edges = new ArrayList<>();
    private final IndexGraphBuilder builder = new IndexGraphBuilder(0);
    private final Map<String, List<ZeroRing.Near>> near = new HashMap<>();
    private final Map<String, Set<String>> untold = new HashMap<>();
    private final List<ZeroRing> rings = new ArrayList<>();
    private final List<String> unplaced = new ArrayList<>();
    private final List<String> unrouted = new ArrayList<>();

    ZeroRings(Situation at, Threshold stretch) {
        this.at = at;
        this.wiring = at.wiring();
        this.stretch = stretch;
        this.high = at.limit(Thresholds.PAIR_BESIDE_CURRENT);
        this.close = at.limit(Thresholds.LOOP_NEAR);
        collect();
        if (!edges.isEmpty()) {
            neighbours();
            CycleBasis basis = CycleBasis.of(builder.undirected());
            for (int i = 0; i < basis.dimension(); i++) {
                ring(basis.cycle(i));
            }
        }
    }

    /** Loops whose area is known. */
    List<ZeroRing> rings() {
        return rings;
    }

    /** Units of loops without a position. */
    List<String> unplaced() {
        return unplaced.stream().distinct().sorted().toList();
    }

    /** Leads with a 0V wire and no route; of no interest where no lead has a route. */
    List<String> unrouted() {
        return edges.isEmpty() ? List.of() : unrouted;
    }

    private void collect() {
        Set<String> seen = new HashSet<>();
        for (Wire wire : wiring.wires()) {
            if (!at.circuit().mated(wire) || !(zero(wire.fromPin()) || zero(wire.toPin()))) {
                continue;
            }
            if (wire.lead().route().isEmpty()) {
                unrouted.add(wire.lead().id());
                continue;
            }
            int a = vertex(wire.fromPin());
            int b = vertex(wire.toPin());
            if (a != b && seen.add(wire.leadIndex() + " " + a + " " + b)) {
                builder.addEdge(a, b);
                edges.add(wire);
            }
        }
    }

    private boolean zero(int pin) {
        return wiring.is(pin, PinRole.ZERO_V) || wiring.is(pin, PinRole.PACK_MINUS);
    }

    /** The point inside its unit a pin belongs to, or the pin itself; a joint is one point. */
    private int vertex(int pin) {
        int unit = wiring.unitOf(pin);
        int point = wiring.directory().layout(unit).pointOf(wiring.localPin(pin));
        return vertices.computeIfAbsent(point < 0 ? pin : wiring.firstPoint(unit) + point, key -> {
            units.add(unit);
            return builder.addVertex();
        });
    }

    /** Stretches along power leads, told in the row of either lead. */
    private void neighbours() {
        Map<String, Lead> byId = new HashMap<>();
        at.aircraft().leads().forEach(lead -> byId.putIfAbsent(lead.id(), lead));
        for (Lead lead : at.aircraft().leads()) {
            for (Beside beside : lead.beside()) {
                Lead other = byId.get(beside.lead());
                boolean far = (beside.lengthMm().isKnown() && beside.lengthMm().or(0.0) <= stretch.value())
                        || (beside.gapMm().isKnown() && beside.gapMm().or(0.0) > close.value());
                if (other != null && !far) {
                    note(lead, other, beside);
                    note(other, lead, beside);
                }
            }
        }
    }

    private void note(Lead lead, Lead power, Beside beside) {
        double amps = Math.max(power.averageA().or(0.0), power.peakA().or(0.0));
        boolean unknown = power.peakA().isMissing() && power.kind().is(LeadKind.POWER);
        if (amps <= high.value() && unknown) {
            untold.computeIfAbsent(lead.id(), key -> new TreeSet<>()).add("peak current of " + power.id());
        } else if (amps > high.value()
                && (beside.lengthMm().isMissing() || beside.gapMm().isMissing())) {
            untold.computeIfAbsent(lead.id(), key -> new TreeSet<>())
                    .add("length and distance of " + lead.id() + " beside " + power.id());
        } else if (amps > high.value()) {
            near.computeIfAbsent(lead.id(), key -> new ArrayList<>())
                    .add(new ZeroRing.Near(
                            lead,
                            power.id(),
                            amps,
                            beside.lengthMm().or(0.0),
                            beside.gapMm().or(0.0)));
        }
    }

    /** What is not told about leads beside those of a loop. */
    Set<String> untold(ZeroRing ring) {
        Set<String> all = new TreeSet<>();
        ring.leads().forEach(lead -> all.addAll(untold.getOrDefault(lead.id(), Set.of())));
        return all;
    }

    private void ring(Walk walk) {
        List<double[]> corners = new ArrayList<>();
        List<Lead> leads = new ArrayList<>();
        List<String> names = new ArrayList<>();
        boolean placed = true;
        for (int i = 0; i < walk.edgeCount(); i++) {
            Wire wire = edges.get(walk.edge(i));
            int unit = units.get(walk.vertex(i));
            String name = at.directory().name(unit);
            names.add(name);
            leads.add(wire.lead());
            Optional<double[]> here = place(unit);
            if (here.isEmpty()) {
                unplaced.add(name);
            }
            here.ifPresent(corners::add);
            placed &= here.isPresent() && route(wire, vertex(wire.fromPin()) == walk.vertex(i), corners);
        }
        if (placed) {
            Set<String> own = new HashSet<>();
            leads.forEach(lead -> own.add(lead.id()));
            rings.add(new ZeroRing(
                    List.copyOf(leads),
                    List.copyOf(names),
                    area(corners) / MM2_IN_CM2,
                    leads.stream()
                            .flatMap(lead -> near.getOrDefault(lead.id(), List.of()).stream())
                            .filter(one -> !own.contains(one.power()))
                            .max(Comparator.comparingDouble(ZeroRing.Near::amps))));
        }
    }

    private Optional<double[]> place(int unit) {
        if (at.directory().isJoint(unit)) {
            return Optional.of(new double[0]);
        }
        Unit record = at.directory().unit(unit);
        return point(record.xMm(), record.yMm(), record.zMm());
    }

    private boolean route(Wire wire, boolean forward, List<double[]> corners) {
        List<RoutePoint> route = wire.lead().route();
        for (int i = 0; i < route.size(); i++) {
            RoutePoint passed = route.get(forward ? i : route.size() - 1 - i);
            Optional<double[]> point = point(passed.xMm(), passed.yMm(), passed.zMm());
            if (point.isEmpty()) {
                unplaced.add("a point of the route of " + wire.lead().id());
                return false;
            }
            corners.add(point.get());
        }
        return true;
    }

    private static Optional<double[]> point(Datum<Double> x, Datum<Double> y, Datum<Double> z) {
        return x.isKnown() && y.isKnown() && z.isKnown()
                ? Optional.of(new double[] {x.or(0.0), y.or(0.0), z.or(0.0)})
                : Optional.empty();
    }

    /** Half the length of the sum of cross products of the corners: the area the loop shows to a field along its normal. */
    private static double area(List<double[]> all) {
        List<double[]> corners = all.stream().filter(one -> one.length == 3).toList();
        double x = 0;
        double y = 0;
        double z = 0;
        for (int i = 0; i < corners.size(); i++) {
            double[] a = corners.get(i);
            double[] b = corners.get((i + 1) % corners.size());
            x += a[1] * b[2] - a[2] * b[1];
            y += a[2] * b[0] - a[0] * b[2];
            z += a[0] * b[1] - a[1] * b[0];
        }
        return Math.sqrt(x * x + y * y + z * z) / 2;
    }
}
