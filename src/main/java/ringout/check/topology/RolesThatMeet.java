package ringout.check.topology;

import static ringout.model.PinRole.*;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import ringout.graph.signal.NetRoles;
import ringout.model.PinRole;

/**
 * Which pin roles may meet on one net (common practice, no source). Passive points, contacts without connection and equal
 * roles always may; some meetings depend on a further datum.
 *
 * <p>What other checks judge is allowed here: H on L (T12), supply on 0V (P02), transmit on transmit (S07), two outputs (S01).
 */
final class RolesThatMeet {
    /** What is known of two roles on one net. */
    enum Verdict {
        /** They may meet. */
        FINE,
        /** It depends on the setting of an output: it may trigger a logic input when it is not a motor or servo output. */
        SETTING,
        /** It depends on what the input stands: a sense or logic input may be tied to a rail it is made for. */
        LEVEL,
        /** They may not. */
        WRONG
    }

    private static final Set<PinRole> SUPPLY = EnumSet.of(SUPPLY_IN, SUPPLY_OUT, SUPPLY_THROUGH, PACK_PLUS);
    private static final Set<PinRole> ZERO = EnumSet.of(ZERO_V, PACK_MINUS, SHIELD);
    private static final Map<PinRole, Set<PinRole>> FINE = new EnumMap<>(PinRole.class);

    static {
        all(EnumSet.of(SUPPLY_IN, SUPPLY_OUT, SUPPLY_THROUGH, PACK_PLUS, PACK_MINUS, ZERO_V));
        all(ZERO);
        all(EnumSet.of(CAN_H, CAN_L));
        all(EnumSet.of(SERIAL_OUT, SERIAL_IN));
        all(EnumSet.of(PULSE_OUT, PULSE_IN));
        all(EnumSet.of(SENSE_OUT, SENSE_IN));
        all(EnumSet.of(LOGIC_OUT, LOGIC_IN));
        all(EnumSet.of(VIDEO_OUT, VIDEO_IN));
        all(EnumSet.of(LOGIC_IN, ZERO_V));
        both(COIL, EnumSet.of(SUPPLY_IN, SUPPLY_OUT, SUPPLY_THROUGH, PACK_PLUS, ZERO_V, PACK_MINUS, LOGIC_OUT));
    }

    /** Each role as a set of one, and the set of roles it may not meet without more. */
    private record Clash(long role, long others) {}

    private static final List<Clash> CLASHES = clashes();

    private RolesThatMeet() {}

    private static List<Clash> clashes() {
        List<Clash> found = new ArrayList<>();
        for (PinRole role : PinRole.values()) {
            long set = 0;
            for (PinRole other : PinRole.values()) {
                set |= verdict(role, other) == Verdict.FINE ? 0 : NetRoles.bits(other);
            }
            if (set != 0) {
                found.add(new Clash(NetRoles.bits(role), set));
            }
        }
        return List.copyOf(found);
    }

    /** Whether all roles of a set, as {@link NetRoles#set} gives it, may meet. */
    static boolean agree(long set) {
        if ((set & (set - 1)) == 0) {
            return true;
        }
        for (Clash clash : CLASHES) {
            if ((set & clash.role()) != 0 && (set & clash.others()) != 0) {
                return false;
            }
        }
        return true;
    }

    private static void all(Set<PinRole> roles) {
        roles.forEach(role -> both(role, roles));
    }

    private static void both(PinRole role, Set<PinRole> others) {
        FINE.computeIfAbsent(role, key -> EnumSet.noneOf(PinRole.class)).addAll(others);
        others.forEach(other -> FINE.computeIfAbsent(other, key -> EnumSet.noneOf(PinRole.class))
                .add(role));
    }

    /** Whether two roles may meet. */
    static Verdict verdict(PinRole a, PinRole b) {
        boolean open = a == PASSIVE || b == PASSIVE || a == NONE || b == NONE || a == b;
        if (open || FINE.getOrDefault(a, Set.of()).contains(b)) {
            return Verdict.FINE;
        }
        if ((a == PULSE_OUT && b == LOGIC_IN) || (a == LOGIC_IN && b == PULSE_OUT)) {
            return Verdict.SETTING;
        }
        boolean input = a == SENSE_IN || a == LOGIC_IN || b == SENSE_IN || b == LOGIC_IN;
        return input && (supply(a) || supply(b)) ? Verdict.LEVEL : Verdict.WRONG;
    }

    /** Whether a role brings a supply. */
    static boolean supply(PinRole role) {
        return SUPPLY.contains(role);
    }
}
