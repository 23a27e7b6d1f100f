package ringout.solve.bus;

import java.util.List;
import java.util.OptionalLong;

/**
 * How late each message of a bus can be: the time from when it is due to when its last bit is sent, at worst.
 *
 * <p>A frame under way is never broken off, so a message waits for the longest frame of lower priority (B) and then for all of
 * higher priority. All instances in the busy time of a priority are looked at, not only the first: the second can be the later
 * one, which the analysis of 1994 missed. With C the frame time, T the period, J the jitter, tau one bit:
 *
 * <pre>
 * busy time:   t = B + sum over equal or higher priority of ceil((t + J) / T) C
 * instance q:  w = B + q C + sum over higher priority of ceil((w + J + tau) / T) C
 * response:    R = max over q of J + w - q T + C
 * </pre>
 *
 * <p>Messages of equal priority count as higher to each other, and the frames of one message as messages of equal priority: the
 * answer is then the time of the last frame, or a little more. Queues of a sender that do not put the most urgent frame first,
 * and frames sent again after an error, are not in it. Running time: the busy time over the shortest frame, times the number
 * of messages, for each instance.
 *
 * <p>Source: Davis, Burns, Bril, Lukkien, "Controller Area Network (CAN) schedulability analysis: refuted, revisited and
 * revised", Real-Time Systems 35 (2007), 239-272.
 */
public final class ResponseTimes {
    private static final int MOST_ROUNDS = 1_000_000;
    private static final double FULL = 1;

    private final List<BusMessage> messages;

    /** Looks at the messages of one bus. */
    public ResponseTimes(List<BusMessage> messages) {
        this.messages = List.copyOf(messages);
    }

    /** Part of the time that messages as urgent as this one or more take, at worst; 1 is all of it. */
    public double load(int index) {
        int priority = messages.get(index).priority();
        return messages.stream()
                .filter(message -> message.priority() <= priority)
                .mapToDouble(message -> (double) message.frames() * message.frameTicks() / message.periodTicks())
                .sum();
    }

    /** The longest response of the message of a number, in ticks; nothing when it can wait for ever. */
    public OptionalLong of(int index) {
        BusMessage message = messages.get(index);
        if (load(index) >= FULL) {
            return OptionalLong.empty();
        }
        long blocking = blocking(message);
        OptionalLong busy = settle(blocking + message.frameTicks(), t -> blocking + sent(message, t));
        if (busy.isEmpty()) {
            return busy;
        }
        long instances = ceilDiv(busy.getAsLong() + message.jitterTicks(), message.periodTicks());
        if (instances > MOST_ROUNDS) {
            return OptionalLong.empty();
        }
        long worst = 0;
        for (long q = 0; q < instances; q++) {
            long before = blocking + q * message.frameTicks();
            OptionalLong wait = settle(before, w -> before + ahead(index, w));
            if (wait.isEmpty()) {
                return wait;
            }
            long response = message.jitterTicks() + wait.getAsLong() - q * message.periodTicks() + message.frameTicks();
            worst = Math.max(worst, response);
        }
        return OptionalLong.of(worst);
    }

    /** The longest frame of lower priority. */
    private long blocking(BusMessage message) {
        long longest = 0;
        for (BusMessage other : messages) {
            longest = other.priority() > message.priority() ? Math.max(longest, other.frameTicks()) : longest;
        }
        return longest;
    }

    /** What is sent of equal and higher priority in a time, the message itself included. */
    private long sent(BusMessage message, long time) {
        long sum = 0;
        for (BusMessage other : messages) {
            if (other.priority() <= message.priority()) {
                sum += ceilDiv(time + other.jitterTicks(), other.periodTicks()) * other.frames() * other.frameTicks();
            }
        }
        return sum;
    }

    /** What goes before one frame of the message: others as urgent or more, and its own other frames. */
    private long ahead(int index, long wait) {
        int priority = messages.get(index).priority();
        long sum = 0;
        for (int i = 0; i < messages.size(); i++) {
            BusMessage other = messages.get(i);
            int frames = i == index ? other.frames() - 1 : other.frames();
            if (other.priority() <= priority && frames > 0) {
                long until = wait + other.jitterTicks() + BusMessage.BIT;
                sum += ceilDiv(until, other.periodTicks()) * frames * other.frameTicks();
            }
        }
        return sum;
    }

    /** One step of a recurrence in ticks. */
    private interface Step {
        long next(long time);
    }

    private static OptionalLong settle(long start, Step step) {
        long time = start;
        for (int round = 0; round < MOST_ROUNDS; round++) {
            long next = step.next(time);
            if (next == time) {
                return OptionalLong.of(time);
            }
            time = next;
        }
        return OptionalLong.empty();
    }

    private static long ceilDiv(long a, long b) {
        return -Math.floorDiv(-a, b);
    }
}
