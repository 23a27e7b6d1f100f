package ringout.check;

import java.util.List;
import java.util.Set;
import ringout.model.PinRole;

/** What a contact may be so that a wire to another contact is right. */
final class Suiting {
    /** Roles that are the two legs of one port. */
    static final List<Set<PinRole>> PAIRS = List.of(
            Set.of(PinRole.CAN_H, PinRole.CAN_L),
            Set.of(PinRole.SCL, PinRole.SDA),
            Set.of(PinRole.PAIR_P, PinRole.PAIR_N));

    private Suiting() {}

    /** The roles that suit a wire to a contact of a role, the likeliest first. */
    static List<PinRole> of(PinRole partner) {
        return switch (partner) {
            case SUPPLY_OUT -> List.of(PinRole.SUPPLY_IN, PinRole.SUPPLY_THROUGH);
            case SUPPLY_IN -> List.of(PinRole.SUPPLY_OUT, PinRole.SUPPLY_THROUGH, PinRole.PACK_PLUS);
            case SUPPLY_THROUGH ->
                List.of(PinRole.SUPPLY_THROUGH, PinRole.SUPPLY_IN, PinRole.SUPPLY_OUT, PinRole.PACK_PLUS);
            case PACK_PLUS -> List.of(PinRole.SUPPLY_THROUGH, PinRole.SUPPLY_IN, PinRole.PACK_PLUS, PinRole.PACK_MINUS);
            case ZERO_V -> List.of(PinRole.ZERO_V, PinRole.PACK_MINUS);
            case PACK_MINUS -> List.of(PinRole.ZERO_V, PinRole.PACK_MINUS, PinRole.PACK_PLUS);
            case SERIAL_OUT -> List.of(PinRole.SERIAL_IN);
            case SERIAL_IN -> List.of(PinRole.SERIAL_OUT);
            case PULSE_OUT -> List.of(PinRole.PULSE_IN);
            case PULSE_IN -> List.of(PinRole.PULSE_OUT);
            case SENSE_OUT -> List.of(PinRole.SENSE_IN);
            case SENSE_IN -> List.of(PinRole.SENSE_OUT);
            case LOGIC_OUT -> List.of(PinRole.LOGIC_IN);
            case LOGIC_IN -> List.of(PinRole.LOGIC_OUT);
            case VIDEO_OUT -> List.of(PinRole.VIDEO_IN);
            case VIDEO_IN -> List.of(PinRole.VIDEO_OUT);
            case PHASE -> List.of(PinRole.COIL, PinRole.PHASE);
            case COIL -> List.of(PinRole.PHASE, PinRole.COIL);
            case CAN_H, CAN_L, SCL, SDA, PAIR_P, PAIR_N, RF, SHIELD, NONE -> List.of(partner);
            case PASSIVE -> List.of();
        };
    }
}
