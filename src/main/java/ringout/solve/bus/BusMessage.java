package ringout.solve.bus;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * A message on a bus in the bus's own time. The tick is a millionth of the time of one bit, so that the usual periods and rates
 * are whole numbers of ticks: an answer of the analysis can hang on one tick.
 *
 * @param name what it is called
 * @param priority 0 is sent first; messages of equal priority may each come before the other
 * @param frameBits bits of one of its frames, as many stuff bits as there can be
 * @param frames frames it goes in, at least one, all ready at once
 * @param periodTicks shortest time between two of it, in ticks
 * @param jitterTicks how much later than its period says it can be ready, in ticks
 */
public record BusMessage(String name, int priority, int frameBits, int frames, long periodTicks, long jitterTicks) {
    /** Ticks in the time of one bit. */
    public static final long BIT = 1_000_000;

    /** Longer than any period of use, and short enough to add many of: more than a day at 1 Mbit/s. */
    private static final BigDecimal LONGEST = BigDecimal.valueOf(100_000_000_000_000_000L);

    /** Checks that there are frames and a time between them. */
    public BusMessage {
        if (frameBits <= 0 || frames <= 0 || periodTicks <= 0 || jitterTicks < 0) {
            throw new IllegalArgumentException("no frames, no period or a negative jitter: " + name);
        }
    }

    /** A message given in milliseconds, on a bus of a rate in kbit/s; what is no whole tick is rounded to the bad side. */
    public static BusMessage of(
            String name, int priority, int bytes, boolean extended, double periodMs, double jitterMs, double rateKbit) {
        return new BusMessage(
                name,
                priority,
                Frames.worstBits(bytes, extended),
                Frames.of(bytes),
                Math.max(1, ticks(periodMs, rateKbit, RoundingMode.FLOOR)),
                ticks(jitterMs, rateKbit, RoundingMode.CEILING));
    }

    /** Ticks in some milliseconds: a millisecond at 1 kbit/s is one bit. */
    private static long ticks(double ms, double rateKbit, RoundingMode round) {
        return BigDecimal.valueOf(ms)
                .multiply(BigDecimal.valueOf(rateKbit))
                .multiply(BigDecimal.valueOf(BIT))
                .setScale(0, round)
                .min(LONGEST)
                .longValueExact();
    }

    /** Milliseconds in some ticks on a bus of a rate in kbit/s. */
    public static double ms(long ticks, double rateKbit) {
        return ticks / (BIT * rateKbit);
    }

    /** Time of one of its frames, in ticks. */
    long frameTicks() {
        return frameBits * BIT;
    }
}
