package ringout.check.signal;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import ringout.check.form.Check;
import ringout.check.form.CheckInfo;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.check.form.Threshold;
import ringout.check.form.Thresholds;
import ringout.finding.Draft;
import ringout.finding.Severity;
import ringout.graph.Trail;
import ringout.graph.Wire;
import ringout.graph.signal.NetRoles;
import ringout.graph.signal.References;
import ringout.model.Lead;
import ringout.model.PinRole;
import ringout.model.shape.Scalars;

/**
 * A signal whose 0V does not run with it.
 *
 * <p>Why it matters: the units have a common 0V, but by another way; signal and return make a wide loop that takes up noise, and motor
 * current may share the way.
 *
 * <p>Condition: a lead carries a single-ended signal between two units, and no 0V conductor runs in the same lead or in a lead of the
 * same bundle between the same two units. S3 when the lead is longer than 300 mm, else S4.
 *
 * <p>Does not see: units without any common 0V (S04), differential pairs.
 *
 * <p>Reference: common practice, no source.
 */
@CheckInfo(
        code = "S05",
        name = "return-far-away",
        severity = Severity.S3,
        since = "0.1",
        needs = {"length of each signal lead"})
public final class ReturnFarAway implements Check {
    private static final long SIGNALS = NetRoles.DRIVERS | NetRoles.RECEIVERS | NetRoles.bits(PinRole.SCL, PinRole.SDA);

    /** Two units and what ties their leads together: a bundle, or one lead. */
    private record Way(int low, int high, boolean bundled, String name) {
        @Override
        public boolean equals(Object other) {
            return this == other
                    || (other instanceof Way that
                            && low == that.low
                            && high == that.high
                            && bundled == that.bundled
                            && name.equals(that.name));
        }

        @Override
        public int hashCode() {
            return 31 * (31 * low + high) + name.hashCode();
        }
    }

    @Override
    public void look(Situation at, Outcomes out) {
        Set<Way> returns = new HashSet<>();
        Map<Way, Map<String, Wire>> signals = new LinkedHashMap<>();
        NetRoles roles = NetRoles.of(at.circuit());
        for (Wire wire : at.wiring().wires()) {
            if (!at.circuit().mated(wire)) {
                continue;
            }
            Way way = way(at, wire);
            if (zero(at, roles, wire)) {
                returns.add(way);
            } else if (way.low() != way.high() && roles.any(at.circuit().nets().of(wire.fromPin()), SIGNALS)) {
                signals.computeIfAbsent(way, key -> new LinkedHashMap<>())
                        .putIfAbsent(wire.lead().id(), wire);
            }
        }
        Map<Way, List<Wire>> bare = new LinkedHashMap<>();
        signals.forEach((way, wires) -> {
            out.looked();
            if (!returns.contains(way)
                    && References.of(at.circuit()).same(zero(at, wires, true), zero(at, wires, false))) {
                bare.computeIfAbsent(new Way(way.low(), way.high(), false, ""), key -> new ArrayList<>())
                        .addAll(wires.values());
            }
        });
        bare.values().forEach(wires -> judge(at, out, wires));
    }

    private static int zero(Situation at, Map<String, Wire> wires, boolean from) {
        Wire wire = wires.values().iterator().next();
        int pin = from ? wire.fromPin() : wire.toPin();
        int zero = References.of(at.circuit()).zeroPin(pin);
        return zero < 0 ? pin : zero;
    }

    private static Way way(Situation at, Wire wire) {
        int a = at.wiring().unitOf(wire.fromPin());
        int b = at.wiring().unitOf(wire.toPin());
        boolean bundled = wire.lead().bundle().isKnown();
        String name = bundled ? wire.lead().bundle().or("") : wire.lead().id();
        return new Way(Math.min(a, b), Math.max(a, b), bundled, name);
    }

    private static boolean zero(Situation at, NetRoles roles, Wire wire) {
        return at.wiring().is(wire.fromPin(), PinRole.ZERO_V)
                || at.wiring().is(wire.toPin(), PinRole.ZERO_V)
                || roles.has(at.circuit().nets().of(wire.fromPin()), PinRole.ZERO_V);
    }

    private static void judge(Situation at, Outcomes out, List<Wire> wires) {
        Threshold limit = at.limit(Thresholds.SIGNAL_RETURN);
        double longest = wires.stream()
                .mapToDouble(wire -> wire.lengthMm().or(0.0))
                .max()
                .orElse(0);
        List<String> unknown = wires.stream()
                .filter(wire -> !wire.lengthMm().isKnown())
                .map(wire -> wire.lead().id())
                .toList();
        if (longest <= limit.value() && !unknown.isEmpty()) {
            out.cannotTell(
                    "length of " + String.join(", ", unknown),
                    "measure it plug to plug",
                    2,
                    unknown.toArray(new String[0]));
            return;
        }
        out.finding(draft(at, wires, longest, limit));
    }

    private static Draft draft(Situation at, List<Wire> wires, double longest, Threshold limit) {
        Wire first = wires.get(0);
        String from = at.directory().name(at.wiring().unitOf(first.fromPin()));
        String to = at.directory().name(at.wiring().unitOf(first.toPin()));
        String leads =
                String.join(", ", wires.stream().map(wire -> wire.lead().id()).toList());
        Draft draft = Draft.of(
                        longest > limit.value() ? Severity.S3 : Severity.S4,
                        "return far away: " + leads + " from " + from + " to " + to + " run without a 0V conductor")
                .about(from, to)
                .path(at.circuit().trail(first.fromPin(), first.toPin()).orElse(Trail.NONE))
                .sum("longest " + Scalars.number(longest) + " mm without its return, limit "
                        + Scalars.number(limit.value()) + " mm; 0V is joined by another way")
                .judged(longest, limit.value(), limit.unit(), limit.source())
                .input(first.lengthMm())
                .why("signal and return make a wide loop that takes up noise and may carry other return current")
                .fix("run a 0V conductor from " + from + " to " + to + " along " + leads);
        wires.forEach(wire -> draft.at(wire.lead()));
        onlyReturn(at, first.fromPin()).ifPresent(lead -> draft.cause(lead.id()));
        onlyReturn(at, first.toPin()).ifPresent(lead -> draft.cause(lead.id()));
        return draft;
    }

    /** The one lead that brings 0V to a unit, where there is only one: the return that went another way. */
    private static Optional<Lead> onlyReturn(Situation at, int pin) {
        Set<Lead> leads = new LinkedHashSet<>();
        int unit = at.wiring().unitOf(pin);
        for (int zero = at.wiring().firstPin(unit); zero < at.wiring().endPin(unit); zero++) {
            for (int w : at.wiring().is(zero, PinRole.ZERO_V) ? at.wiring().wiresAt(zero) : new int[0]) {
                leads.add(at.wiring().wires().get(w).lead());
            }
        }
        return leads.size() == 1 ? leads.stream().findFirst() : Optional.empty();
    }
}
