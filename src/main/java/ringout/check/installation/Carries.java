package ringout.check.installation;

import ringout.check.form.Situation;
import ringout.graph.Wire;
import ringout.model.PinRole;

/** What a conductor carries by the contacts at its ends, as far as its colour goes. */
enum Carries {
    /** A supply. */
    SUPPLY("supply"),
    /** 0V. */
    ZERO("0V"),
    /** H of a bus. */
    BUS_HIGH("bus H"),
    /** L of a bus. */
    BUS_LOW("bus L"),
    /** Anything else, and ends that do not agree: other checks tell of those. */
    OTHER("signal");

    private final String words;

    Carries(String words) {
        this.words = words;
    }

    /** The name in words. */
    String words() {
        return words;
    }

    /** What a conductor carries: both ends say so, or one, and the other is a joint or not known. */
    static Carries of(Situation at, Wire wire) {
        Carries from = of(at, wire.fromPin());
        Carries to = of(at, wire.toPin());
        if (from == to) {
            return from;
        }
        if (open(at, wire.fromPin())) {
            return to;
        }
        return open(at, wire.toPin()) ? from : OTHER;
    }

    private static boolean open(Situation at, int pin) {
        return at.wiring().is(pin, PinRole.PASSIVE) || at.wiring().role(pin).isEmpty();
    }

    private static Carries of(Situation at, int pin) {
        PinRole role = at.wiring().role(pin).orElse(PinRole.NONE);
        return switch (role) {
            case SUPPLY_IN, SUPPLY_OUT, SUPPLY_THROUGH, PACK_PLUS -> SUPPLY;
            case ZERO_V, PACK_MINUS -> ZERO;
            case CAN_H -> BUS_HIGH;
            case CAN_L -> BUS_LOW;
            default -> OTHER;
        };
    }
}
