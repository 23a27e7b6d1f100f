package ringout.graph.signal;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntConsumer;
import ringout.graph.Circuit;
import ringout.graph.Nets;
import ringout.graph.Wiring;
import ringout.model.NamedFrom;
import ringout.model.PinRole;

/**
 * Which roles meet on each net of a circuit, as a set of bits, so that a check looks only at the nets that concern it. Only
 * pins of units aboard count; a pin that no conductor reaches is a net of its own unless its unit joins it inside. A serial pin
 * that its maker names from the other unit's side ("RX: connect to RX") counts as what it does, not as what it is called.
 */
public final class NetRoles {
    /** Roles that drive a signal. */
    public static final long DRIVERS =
            bits(PinRole.SERIAL_OUT, PinRole.PULSE_OUT, PinRole.SENSE_OUT, PinRole.LOGIC_OUT, PinRole.VIDEO_OUT);

    /** Roles that listen to a signal. */
    public static final long RECEIVERS =
            bits(PinRole.SERIAL_IN, PinRole.PULSE_IN, PinRole.SENSE_IN, PinRole.LOGIC_IN, PinRole.VIDEO_IN);

    /** Roles of a supply. */
    public static final long SUPPLIES =
            bits(PinRole.SUPPLY_IN, PinRole.SUPPLY_OUT, PinRole.SUPPLY_THROUGH, PinRole.PACK_PLUS);

    private static final int UNKNOWN = 63;

    private final Circuit circuit;
    private final long[] roleOfPin;
    private final long[] roles;
    private final int[] drivers;

    private NetRoles(Circuit circuit) {
        this.circuit = circuit;
        Wiring wiring = circuit.wiring();
        this.roleOfPin = new long[wiring.pinCount()];
        this.roles = new long[circuit.nets().count()];
        this.drivers = new int[roles.length];
        for (int pin = 0; pin < wiring.pinCount(); pin++) {
            if (circuit.aboard(wiring.unitOf(pin))) {
                int net = circuit.nets().of(pin);
                long bit = bit(wiring, pin);
                roleOfPin[pin] = bit;
                roles[net] |= bit;
                drivers[net] += (bit & DRIVERS) == 0 ? 0 : 1;
            }
        }
    }

    /** The roles of a circuit, found once. */
    public static NetRoles of(Circuit circuit) {
        return circuit.know(NetRoles.class, NetRoles::new);
    }

    /** What a pin does as its own unit means it: one named from the other side counts the other way round. */
    public static long bit(Wiring wiring, int pin) {
        boolean out = wiring.is(pin, PinRole.SERIAL_OUT);
        if (out || wiring.is(pin, PinRole.SERIAL_IN)) {
            boolean turned = wiring.pin(pin).namedFrom().is(NamedFrom.PEER);
            return bit(out != turned ? PinRole.SERIAL_OUT : PinRole.SERIAL_IN);
        }
        return wiring.role(pin).map(NetRoles::bit).orElse(1L << UNKNOWN);
    }

    @SuppressWarnings("EnumOrdinal") // a set of bits within one run; never stored
    private static long bit(PinRole role) {
        return 1L << role.ordinal();
    }

    /** The set of some roles. */
    public static long bits(PinRole... roles) {
        long set = 0;
        for (PinRole role : roles) {
            set |= bit(role);
        }
        return set;
    }

    /** Whether a net has a pin of any of the roles. */
    public boolean any(int net, long of) {
        return (roles[net] & of) != 0;
    }

    /** Whether a net has a pin of a role. */
    public boolean has(int net, PinRole role) {
        return (roles[net] & bit(role)) != 0;
    }

    /** The set of roles on a net, as {@link #bits} makes it. */
    public long set(int net) {
        return roles[net];
    }

    /** Whether a net has a pin whose role is not known. */
    public boolean unknown(int net) {
        return (roles[net] & 1L << UNKNOWN) != 0;
    }

    /** The wired pins of a net whose role is not known, ascending. */
    public List<Integer> unknownPins(int net) {
        return unknown(net) ? pins(net, 1L << UNKNOWN) : List.of();
    }

    /** Number of driving pins on a net. */
    public int drivers(int net) {
        return drivers[net];
    }

    /** Calls for every net that has a pin of any of the roles, ascending. */
    public void each(long of, IntConsumer action) {
        for (int net = 0; net < roles.length; net++) {
            if ((roles[net] & of) != 0) {
                action.accept(net);
            }
        }
    }

    /** The pins of a net that have any of the roles, ascending, units aboard only. */
    public List<Integer> pins(int net, long of) {
        List<Integer> found = new ArrayList<>();
        Nets nets = circuit.nets();
        for (int i = 0; i < nets.size(net); i++) {
            int pin = nets.member(net, i);
            if (pin >= roleOfPin.length) {
                break;
            }
            if ((roleOfPin[pin] & of) != 0) {
                found.add(pin);
            }
        }
        return found;
    }
}
