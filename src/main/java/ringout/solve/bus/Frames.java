package ringout.solve.bus;

/**
 * Bits of a classic CAN data frame, the three bits between frames included. A message of more than 8 bytes goes in frames of 7
 * bytes each and carries 2 bytes of checksum (DroneCAN specification, CAN bus transport layer).
 *
 * <p>Source: ISO 11898-1 (fields of a frame); most stuff bits there can be: Davis, Burns, Bril, Lukkien, Real-Time Systems 35
 * (2007), equation 1: with g bits open to stuffing besides the data, 34 with a short and 54 with a long identifier,
 * {@code 8s + g + 13 + floor((g + 8s - 1) / 4)}.
 */
public final class Frames {
    private static final int LONGEST = 8;
    private static final int OF_MANY = 7;
    private static final int CHECKSUM = 2;
    private static final int BITS = 8;
    private static final int SHORT_OPEN = 34;
    private static final int LONG_OPEN = 54;
    private static final int REST = 13;
    private static final int EQUAL_BITS = 4;

    private Frames() {}

    /** Frames a message of some data bytes goes in. */
    public static int of(int bytes) {
        return bytes <= LONGEST ? 1 : (bytes + CHECKSUM + OF_MANY - 1) / OF_MANY;
    }

    /** Bits of one frame of a message without stuff bits: 67 + 8s with a long identifier, 47 + 8s with a short one. */
    public static int plainBits(int bytes, boolean extended) {
        return open(extended) + REST + BITS * data(bytes);
    }

    /** Bits of one frame of a message with as many stuff bits as there can be: 80 + 10s or 55 + 10s. */
    public static int worstBits(int bytes, boolean extended) {
        return plainBits(bytes, extended) + (open(extended) + BITS * data(bytes) - 1) / EQUAL_BITS;
    }

    private static int open(boolean extended) {
        return extended ? LONG_OPEN : SHORT_OPEN;
    }

    private static int data(int bytes) {
        return Math.min(bytes, LONGEST);
    }
}
