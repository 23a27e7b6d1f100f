package ringout.check.topology;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import ringout.check.form.Situation;
import ringout.finding.Draft;
import ringout.finding.Sketch;
import ringout.graph.TypeLayout;
import ringout.graph.signal.NetRoles;
import ringout.model.PinRole;

/**
 * Two open plugs that one lead would join with every pin at home: most likely the two ends of a lead that is missing.
 *
 * @param unitA a unit
 * @param plugA number of its plug
 * @param unitB another unit
 * @param plugB number of its plug
 */
record Mates(int unitA, int plugA, int unitB, int plugB) {
    private static final long SENDS = NetRoles.DRIVERS | NetRoles.bits(PinRole.SUPPLY_OUT, PinRole.SUPPLY_THROUGH);
    private static final long TAKES = NetRoles.RECEIVERS | NetRoles.bits(PinRole.SUPPLY_IN, PinRole.SUPPLY_THROUGH);
    private static final long BOTH =
            NetRoles.bits(PinRole.CAN_H, PinRole.CAN_L, PinRole.SCL, PinRole.SDA, PinRole.PHASE, PinRole.PAIR_P);

    /** Two plugs, if they fit each other; the one first by name comes first. */
    static Optional<Mates> of(Situation at, int unitA, int plugA, int unitB, int plugB) {
        if (!fit(at, unitA, plugA, unitB, plugB)) {
            return Optional.empty();
        }
        boolean turn = at.wiring().plugName(unitA, plugA).compareTo(at.wiring().plugName(unitB, plugB)) > 0;
        return Optional.of(turn ? new Mates(unitB, plugB, unitA, plugA) : new Mates(unitA, plugA, unitB, plugB));
    }

    /** Open plugs of two units that fit each other. */
    static List<Mates> between(Situation at, int unitA, int unitB) {
        List<Mates> found = new ArrayList<>();
        for (int a = 0; a < at.directory().type(unitA).plugs().size(); a++) {
            for (int b = 0; b < at.directory().type(unitB).plugs().size(); b++) {
                if (!OpenPlugs.wired(at, unitA, a) && !OpenPlugs.wired(at, unitB, b)) {
                    of(at, unitA, a, unitB, b).ifPresent(found::add);
                }
            }
        }
        return found;
    }

    /** Required open plugs of other units that fit an open plug of this one. */
    static List<Mates> required(Situation at, int unit) {
        List<Mates> found = new ArrayList<>();
        for (int other = 0; other < at.aircraft().units().size(); other++) {
            if (other != unit && at.circuit().aboard(other)) {
                for (List<Integer> group : RequiredPlugs.of(at, other).groups()) {
                    int plug = group.get(0);
                    for (int own = 0; own < at.directory().type(unit).plugs().size(); own++) {
                        if (group.size() == 1 && !OpenPlugs.wired(at, other, plug)) {
                            of(at, unit, own, other, plug).ifPresent(found::add);
                        }
                    }
                }
            }
        }
        return found;
    }

    private static boolean fit(Situation at, int unitA, int plugA, int unitB, int plugB) {
        TypeLayout a = at.directory().layout(unitA);
        TypeLayout b = at.directory().layout(unitB);
        if (a.endPin(plugA) - a.firstPin(plugA) != b.endPin(plugB) - b.firstPin(plugB)) {
            return false;
        }
        return straight(a, plugA, b, plugB) || paired(roles(a, plugA), roles(b, plugB));
    }

    private static boolean straight(TypeLayout a, int plugA, TypeLayout b, int plugB) {
        boolean signal = false;
        for (int pin = a.firstPin(plugA); pin < a.endPin(plugA); pin++) {
            int other = b.pin(plugB, a.pin(pin).number());
            PinRole here = a.pin(pin).role().or(PinRole.NONE);
            PinRole there = other < 0 ? PinRole.NONE : b.pin(other).role().or(PinRole.NONE);
            if (other < 0 || RolesThatMeet.verdict(here, there) != RolesThatMeet.Verdict.FINE) {
                return false;
            }
            signal |= passes(here, there);
        }
        return signal;
    }

    private static List<PinRole> roles(TypeLayout layout, int plug) {
        List<PinRole> roles = new ArrayList<>();
        for (int pin = layout.firstPin(plug); pin < layout.endPin(plug); pin++) {
            roles.add(layout.pin(pin).role().or(PinRole.NONE));
        }
        return roles;
    }

    /** Whether every contact has its counterpart on the other plug, in whatever order: makers number as they like. */
    private static boolean paired(List<PinRole> here, List<PinRole> there) {
        List<PinRole> rest = new ArrayList<>(there);
        boolean signal = false;
        for (PinRole role : here) {
            Optional<PinRole> other =
                    rest.stream().filter(one -> counterparts(role, one)).findFirst();
            if (other.isEmpty()) {
                return false;
            }
            rest.remove(other.get());
            signal |= passes(role, other.get());
        }
        return signal;
    }

    private static boolean counterparts(PinRole a, PinRole b) {
        boolean same = a == b && (a == PinRole.ZERO_V || a == PinRole.NONE);
        return same || (passes(a, b) && RolesThatMeet.verdict(a, b) == RolesThatMeet.Verdict.FINE);
    }

    private static boolean passes(PinRole a, PinRole b) {
        long x = NetRoles.bits(a);
        long y = NetRoles.bits(b);
        return ((x & SENDS) != 0 && (y & TAKES) != 0)
                || ((x & TAKES) != 0 && (y & SENDS) != 0)
                || (a == b && (x & BOTH) != 0)
                || (serial(a) && serial(b));
    }

    /** Serial plugs with equal names are joined by a crossed lead. */
    private static boolean serial(PinRole role) {
        return role == PinRole.SERIAL_IN || role == PinRole.SERIAL_OUT;
    }

    /** The two plugs as ends of a lead. */
    String words(Situation at) {
        return "from " + at.wiring().plugName(unitA, plugA) + " to "
                + at.wiring().plugName(unitB, plugB);
    }

    /** The plug at the other unit. */
    String other(Situation at, int unit) {
        return unit == unitA ? at.wiring().plugName(unitB, plugB) : at.wiring().plugName(unitA, plugA);
    }

    /** The tokens of both plugs as open. */
    List<String> causes(Situation at) {
        return Stream.of(OpenPlugs.cause(at, unitA, plugA), OpenPlugs.cause(at, unitB, plugB))
                .toList();
    }

    /** Gives a finding both tokens, and a drawing the missing lead. */
    void show(Situation at, Draft draft) {
        causes(at).forEach(draft::cause);
        draft.sketch(new Sketch.Missing(
                Sketch.What.WIRE,
                at.wiring().plugName(unitA, plugA),
                at.wiring().plugName(unitB, plugB)));
    }
}
