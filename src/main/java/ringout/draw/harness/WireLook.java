package ringout.draw.harness;

import java.util.Optional;
import ringout.draw.scene.Fuse;
import ringout.draw.scene.WireKind;
import ringout.graph.Circuit;
import ringout.graph.Part;
import ringout.graph.Wire;
import ringout.graph.Wiring;
import ringout.graph.signal.NetRoles;
import ringout.graph.wire.WireColour;
import ringout.model.FuseEnd;
import ringout.model.PinRole;
import ringout.model.shape.Scalars;

/** How a conductor looks: its kind by what its net carries, its size, its colour letters. */
final class WireLook {
    private static final long RETURN = NetRoles.bits(PinRole.ZERO_V, PinRole.PACK_MINUS);
    private static final long BUS = NetRoles.bits(PinRole.CAN_H, PinRole.CAN_L);
    private static final long PULSE = NetRoles.bits(PinRole.PULSE_OUT, PinRole.PULSE_IN);
    private static final long SERIAL = NetRoles.bits(PinRole.SERIAL_OUT, PinRole.SERIAL_IN);
    private static final long I2C = NetRoles.bits(PinRole.SCL, PinRole.SDA);
    private static final long FAST =
            NetRoles.bits(PinRole.VIDEO_OUT, PinRole.VIDEO_IN, PinRole.PAIR_P, PinRole.PAIR_N, PinRole.RF);
    private static final long PHASE = NetRoles.bits(PinRole.PHASE, PinRole.COIL);

    private final Circuit circuit;
    private final NetRoles roles;

    WireLook(Circuit circuit) {
        this.circuit = circuit;
        this.roles = NetRoles.of(circuit);
    }

    WireKind kind(Wire wire) {
        int net = circuit.nets().of(wire.fromPin());
        if (roles.any(net, RETURN) && !roles.any(net, NetRoles.SUPPLIES)) {
            return WireKind.RETURN;
        }
        if (roles.any(net, NetRoles.SUPPLIES)) {
            return WireKind.SUPPLY;
        }
        if (roles.any(net, BUS)) {
            return WireKind.BUS;
        }
        if (roles.any(net, PULSE)) {
            return WireKind.PULSE;
        }
        if (roles.any(net, SERIAL)) {
            return WireKind.SERIAL;
        }
        if (roles.any(net, I2C)) {
            return WireKind.I2C;
        }
        if (roles.any(net, FAST)) {
            return WireKind.VIDEO;
        }
        return roles.any(net, PHASE) ? WireKind.PHASE : WireKind.OTHER;
    }

    /** The size as printed: gauge, or mm2. */
    String size(Wire wire) {
        if (wire.awg().isKnown()) {
            return wire.awg().known().map(Object::toString).orElse("");
        }
        return wire.areaMm2().known().map(area -> Scalars.number(area) + " mm2").orElse("");
    }

    /** Colour letters: of the conductor itself, else of its pin in the colours of the lead ({@code 1=RD 2=BK}). */
    String colour(Wire wire) {
        return WireColour.of(circuit.wiring(), wire);
    }

    /** The fuse of a conductor; at the end it starts from, unless the row says otherwise. */
    Optional<Fuse> fuse(Wire wire) {
        for (Part part : circuit.wiring().parts()) {
            if (part.origin() instanceof Part.LeadFuse fuse && fuse.wire() == wire.index()) {
                boolean atStart = !wire.lead().fuseAt().is(FuseEnd.TO);
                return Optional.of(new Fuse(Scalars.number(fuse.ratingA()) + " A", atStart));
            }
        }
        return Optional.empty();
    }

    /** Name of the net: its first pin. */
    String net(Wire wire) {
        Wiring wiring = circuit.wiring();
        return wiring.name(circuit.nets().member(circuit.nets().of(wire.fromPin()), 0));
    }
}
