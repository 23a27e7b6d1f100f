package ringout.check.installation;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import ringout.check.form.InstallationThresholds;
import ringout.check.form.Situation;
import ringout.graph.Wire;
import ringout.graph.route.Box;
import ringout.graph.route.Way;
import ringout.graph.signal.NetRoles;
import ringout.model.Beside;
import ringout.model.Datum;
import ringout.model.Lead;
import ringout.model.Origin;
import ringout.model.PinRole;

/**
 * A signal lead and a power lead side by side.
 *
 * @param signal the signal lead
 * @param power the power lead
 * @param lengthMm how long they run together
 * @param gapMm distance between them
 * @param words where the two numbers come from
 */
record Neighbours(Lead signal, Lead power, Datum<Double> lengthMm, Datum<Double> gapMm, String words) {
    private static final long SIGNALS = NetRoles.DRIVERS
            | NetRoles.RECEIVERS
            | NetRoles.bits(
                    PinRole.CAN_H, PinRole.CAN_L, PinRole.SCL, PinRole.SDA, PinRole.PAIR_P, PinRole.PAIR_N, PinRole.RF);
    private static final long POWER =
            NetRoles.SUPPLIES | NetRoles.bits(PinRole.ZERO_V, PinRole.PACK_MINUS, PinRole.PHASE);

    /** What leads of an aircraft carry, by the number of their row; worked out when asked. */
    private record Kinds(Situation at, Map<Integer, Boolean> signals) {
        private boolean signal(int row) {
            return signals.computeIfAbsent(row, key -> (roles(key) & SIGNALS) != 0);
        }

        private boolean power(int row) {
            return !signal(row) && (roles(row) & POWER) != 0;
        }

        private long roles(int row) {
            long roles = 0;
            for (Wire wire : RowWires.of(at, row)) {
                roles |= at.wiring().role(wire.fromPin()).map(NetRoles::bits).orElse(0L)
                        | at.wiring().role(wire.toPin()).map(NetRoles::bits).orElse(0L);
            }
            return roles;
        }
    }

    /** The way of a lead, with the box around it. */
    private record Run(int row, Way way, Box box) {
        private static Run of(int row, Lead lead) {
            Way way = Way.of(lead);
            return new Run(row, way, way.box());
        }
    }

    /** All pairs that a row tells of, or that the points of both ways tell of. */
    static List<Neighbours> all(Situation at) {
        List<Neighbours> all = new ArrayList<>();
        Set<List<Integer>> told = new HashSet<>();
        Kinds kinds = new Kinds(at, new HashMap<>());
        listed(at, kinds, all, told);
        located(at, kinds, all, told);
        return all;
    }

    private static void listed(Situation at, Kinds kinds, List<Neighbours> all, Set<List<Integer>> told) {
        List<Lead> leads = at.aircraft().leads();
        if (leads.stream().allMatch(lead -> lead.beside().isEmpty())) {
            return;
        }
        Map<String, Integer> rows = new HashMap<>();
        for (int row = 0; row < leads.size(); row++) {
            rows.putIfAbsent(leads.get(row).id(), row);
        }
        for (int row = 0; row < leads.size(); row++) {
            for (Beside beside : leads.get(row).beside()) {
                Integer other = rows.get(beside.lead());
                if (other != null && told.add(key(row, other))) {
                    add(at, kinds, all, row, other, beside.lengthMm(), beside.gapMm(), "as listed");
                }
            }
        }
    }

    private static List<Integer> key(int a, int b) {
        return List.of(Math.min(a, b), Math.max(a, b));
    }

    /** Pairs of leads with at least two points each, of which one is known to carry much. */
    private static void located(Situation at, Kinds kinds, List<Neighbours> all, Set<List<Integer>> told) {
        List<Lead> leads = at.aircraft().leads();
        List<Run> signals = new ArrayList<>();
        List<Run> powers = new ArrayList<>();
        for (int row = 0; row < leads.size(); row++) {
            if (leads.get(row).route().size() > 1) {
                if (kinds.signal(row)) {
                    signals.add(Run.of(row, leads.get(row)));
                } else if (amps(leads.get(row))
                        > at.limit(InstallationThresholds.PARALLEL_CURRENT).value()) {
                    powers.add(Run.of(row, leads.get(row)));
                }
            }
        }
        double near = at.limit(InstallationThresholds.PARALLEL_GAP).value();
        for (Run signal : signals) {
            for (Run power : powers) {
                if (signal.box().near(power.box(), near) && !told.contains(key(signal.row(), power.row()))) {
                    Datum<Double> length =
                            new Datum.Known<>(signal.way().besideMm(power.way(), near), Origin.CALCULATED, "");
                    Datum<Double> gap = new Datum.Known<>(near, Origin.CALCULATED, "");
                    add(at, kinds, all, signal.row(), power.row(), length, gap, "along the points of both ways");
                }
            }
        }
    }

    private static void add(
            Situation at,
            Kinds kinds,
            List<Neighbours> all,
            int row,
            int other,
            Datum<Double> length,
            Datum<Double> gap,
            String words) {
        List<Lead> leads = at.aircraft().leads();
        if (kinds.signal(row) && kinds.power(other)) {
            all.add(new Neighbours(leads.get(row), leads.get(other), length, gap, words));
        } else if (kinds.signal(other) && kinds.power(row)) {
            all.add(new Neighbours(leads.get(other), leads.get(row), length, gap, words));
        }
    }

    /** Whether a current of the power lead is listed. */
    boolean currentKnown() {
        return power.averageA().isKnown() || power.peakA().isKnown();
    }

    /** The higher current the power lead is listed with, in A. */
    double amps() {
        return amps(power);
    }

    private static double amps(Lead lead) {
        return Math.max(lead.averageA().or(0.0), lead.peakA().or(0.0));
    }
}
