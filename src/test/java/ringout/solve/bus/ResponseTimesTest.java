package ringout.solve.bus;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;

/** Response times against the published example and against a bus that is played through frame by frame. */
class ResponseTimesTest {
    private static final double RATE = 125;

    private static BusMessage published(String name, int priority, double periodMs) {
        return BusMessage.of(name, priority, 7, false, periodMs, 0, RATE);
    }

    private static double ms(OptionalLong ticks) {
        return BusMessage.ms(ticks.orElseThrow(), RATE);
    }

    /**
     * The example that refutes the analysis of 1994: 125 kbit/s, 7 bytes, short identifier, so 125 bits or 1 ms each. Davis,
     * Burns, Bril, Lukkien, Real-Time Systems 35 (2007); the table is from memory, its figures were worked out again by hand.
     */
    @Test
    void theSecondInstanceIsTheLateOne() {
        ResponseTimes times =
                new ResponseTimes(List.of(published("A", 1, 2.5), published("B", 2, 3.5), published("C", 3, 3.5)));
        assertEquals(2.0, ms(times.of(0)));
        assertEquals(3.0, ms(times.of(1)));
        assertEquals(3.5, ms(times.of(2)));
        assertEquals(0.9714, times.load(2), 5e-5);
    }

    /** What the analysis of 1994 says of the same example: the first instance alone, 3.0 ms, within the deadline of 3.25 ms. */
    @Test
    void theFirstInstanceAloneWouldSeemInTime() {
        ResponseTimes long1 =
                new ResponseTimes(List.of(published("A", 1, 2.5), published("B", 2, 3.5), published("C", 3, 350)));
        assertEquals(3.0, ms(long1.of(2)));
    }

    /** First rows of the SAE benchmark at 125 kbit/s: 1, 2 and 1 bytes behind 1.04 ms; the figures are from memory. */
    @Test
    void waitsForTheLongestFrameOfLowerPriority() {
        int[] bits = {63, 73, 63};
        List<BusMessage> list = new ArrayList<>();
        for (int i = 0; i < bits.length; i++) {
            list.add(new BusMessage("row " + i, i, bits[i], 1, 5000L * 125 * BusMessage.BIT / 1000, 0));
        }
        list.add(new BusMessage("others", 9, 130, 1, 100_000L * 125 * BusMessage.BIT / 1000, 0));
        ResponseTimes times = new ResponseTimes(list);
        assertEquals(1.544, ms(times.of(0)), 1e-9);
        assertEquals(2.128, ms(times.of(1)), 1e-9);
        assertEquals(2.632, ms(times.of(2)), 1e-9);
    }

    @Test
    void waitsForEverOnAFullBus() {
        BusMessage half = new BusMessage("half", 1, 100, 1, 200 * BusMessage.BIT, 0);
        BusMessage rest = new BusMessage("rest", 2, 100, 1, 200 * BusMessage.BIT, 0);
        ResponseTimes times = new ResponseTimes(List.of(half, rest));
        assertTrue(times.of(0).isPresent());
        assertEquals(OptionalLong.empty(), times.of(1));
    }

    @Test
    void jitterAndFramesOfOneMessageCount() {
        // 3 frames of 160 bits behind a jitter of 50 bits, alone on the bus
        BusMessage message = BusMessage.of("picture", 1, 19, true, 10, 0.05, 1000);
        assertEquals(3, message.frames());
        assertEquals(
                0.53, BusMessage.ms(new ResponseTimes(List.of(message)).of(0).orElseThrow(), 1000), 1e-9);
    }

    @Test
    void whatIsNoWholeTickIsRoundedToTheBadSide() {
        BusMessage message = BusMessage.of("odd", 1, 8, true, 1.0 / 3, 1.0 / 3, 1000);
        assertTrue(message.periodTicks() <= message.jitterTicks());
        assertEquals(
                100_000_000_000_000_000L,
                BusMessage.of("rare", 1, 8, true, 1e15, 0, 1000).periodTicks());
    }

    /** All at once behind the longest frame is the worst case there is, and it happens. */
    @Property(tries = 300)
    void isReachedWhenAllIsDueAtOnce(@ForAll long seed) {
        Random random = new Random(seed);
        List<BusMessage> set = set(random);
        ResponseTimes times = new ResponseTimes(set);
        for (int i = 0; i < set.size(); i++) {
            OptionalLong response = times.of(i);
            if (response.isPresent()) {
                assertEquals(response.getAsLong(), PlayedBus.worstCase(set, i), "message " + i + " of " + set);
            }
        }
    }

    /** Whatever the offsets, and however late each is ready within its jitter, no message comes later than computed. */
    @Property(tries = 300)
    void isNeverPassed(@ForAll long seed) {
        Random random = new Random(seed);
        List<BusMessage> set = set(random);
        ResponseTimes times = new ResponseTimes(set);
        PlayedBus bus = PlayedBus.anyCase(set, random);
        for (int i = 0; i < set.size(); i++) {
            OptionalLong response = times.of(i);
            if (response.isPresent()) {
                assertTrue(bus.longest(i) <= response.getAsLong(), "message " + i + " of " + set);
            }
        }
    }

    /** Up to six messages of different priority in whole bits, together between 20 and 98 % of the bus. */
    private static List<BusMessage> set(Random random) {
        int count = 1 + random.nextInt(6);
        double load = 0.2 + 0.78 * random.nextDouble();
        List<BusMessage> set = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            int bits = Frames.worstBits(random.nextInt(9), random.nextBoolean());
            long period = (long) Math.ceil(bits * count / load * (0.7 + 0.6 * random.nextDouble()));
            long jitter = random.nextInt(3) == 0 ? random.nextInt((int) period) : 0;
            set.add(new BusMessage("m" + i, i, bits, 1, period * BusMessage.BIT, jitter * BusMessage.BIT));
        }
        return set;
    }
}
