package ringout.solve.bus;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

/** Frame lengths as published. */
class FramesTest {
    /** Davis, Burns, Bril, Lukkien 2007, equation 1; the table of the short form, 55 to 135 bits, is from memory. */
    @Test
    void mostBitsOfAFrame() {
        int[] shortForm = {55, 65, 75, 85, 95, 105, 115, 125, 135};
        int[] longForm = {80, 90, 100, 110, 120, 130, 140, 150, 160};
        for (int bytes = 0; bytes <= 8; bytes++) {
            assertEquals(shortForm[bytes], Frames.worstBits(bytes, false));
            assertEquals(longForm[bytes], Frames.worstBits(bytes, true));
        }
    }

    /** ISO 11898-1: 44 bits of frame and 3 between frames with a short identifier, 20 more with a long one. */
    @Test
    void bitsWithoutStuffing() {
        assertEquals(111, Frames.plainBits(8, false));
        assertEquals(131, Frames.plainBits(8, true));
        assertEquals(47, Frames.plainBits(0, false));
    }

    /** DroneCAN specification: 7 bytes a frame and 2 bytes of checksum once a message does not fit in one frame. */
    @Test
    void longMessagesGoInSeveralFrames() {
        assertEquals(1, Frames.of(8));
        assertEquals(2, Frames.of(9));
        assertEquals(2, Frames.of(12));
        assertEquals(3, Frames.of(13));
        assertEquals(10, Frames.of(64));
        assertEquals(131, Frames.plainBits(64, true));
    }
}
