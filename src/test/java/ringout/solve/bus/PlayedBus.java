package ringout.solve.bus;

import java.util.List;
import java.util.Random;

/**
 * A bus played through frame by frame: whenever it is free, the most urgent frame that is ready is sent to its end. Another way to
 * the same figures, without any recurrence.
 */
final class PlayedBus {
    private static final int PLAYED = 60;

    /** When the instances of the messages are due and ready; a time of {@link Long#MAX_VALUE} is never. */
    private interface Releases {
        long due(int message, int instance);

        long ready(int message, int instance);
    }

    private final List<BusMessage> set;
    private final Releases releases;
    private final int[] sent;
    private final long[] longest;

    private PlayedBus(List<BusMessage> set, Releases releases) {
        this.set = set;
        this.releases = releases;
        this.sent = new int[set.size()];
        this.longest = new long[set.size()];
    }

    /** The longest response of one message when all that is as urgent is ready at 0, and then as often as can be. */
    static long worstCase(List<BusMessage> set, int of) {
        int least = set.get(of).priority();
        long blocking = set.stream()
                .filter(message -> message.priority() > least)
                .mapToLong(BusMessage::frameTicks)
                .max()
                .orElse(0);
        PlayedBus bus = new PlayedBus(set, new Releases() {
            @Override
            public long due(int message, int instance) {
                return instance * set.get(message).periodTicks()
                        - set.get(message).jitterTicks();
            }

            @Override
            public long ready(int message, int instance) {
                return set.get(message).priority() > least ? Long.MAX_VALUE : Math.max(0, due(message, instance));
            }
        });
        long time = blocking;
        for (int next = bus.next(time); next >= 0; next = bus.next(time)) {
            time = bus.send(next, time);
        }
        return bus.longest[of];
    }

    /** Longest responses with random offsets, each instance ready at random within its jitter. */
    static PlayedBus anyCase(List<BusMessage> set, Random random) {
        long[][] due = new long[set.size()][PLAYED + 1];
        long[][] ready = new long[set.size()][PLAYED + 1];
        for (int i = 0; i < set.size(); i++) {
            BusMessage message = set.get(i);
            long first = (long) (random.nextDouble() * message.periodTicks());
            for (int k = 0; k < PLAYED; k++) {
                double part = random.nextBoolean() ? 1 : random.nextDouble();
                due[i][k] = first + k * message.periodTicks();
                ready[i][k] = due[i][k] + (long) (part * message.jitterTicks());
            }
            ready[i][PLAYED] = Long.MAX_VALUE;
        }
        PlayedBus bus = new PlayedBus(set, new Releases() {
            @Override
            public long due(int message, int instance) {
                return due[message][instance];
            }

            @Override
            public long ready(int message, int instance) {
                return ready[message][instance];
            }
        });
        bus.playAll();
        return bus;
    }

    private void playAll() {
        long time = 0;
        while (true) {
            int next = next(time);
            if (next >= 0) {
                time = send(next, time);
                continue;
            }
            long soonest = Long.MAX_VALUE;
            for (int i = 0; i < sent.length; i++) {
                soonest = Math.min(soonest, releases.ready(i, sent[i]));
            }
            if (soonest == Long.MAX_VALUE) {
                return;
            }
            time = soonest;
        }
    }

    /** The most urgent message that is ready; -1 when none is. */
    private int next(long time) {
        int best = -1;
        for (int i = 0; i < sent.length; i++) {
            boolean ready = releases.ready(i, sent[i]) <= time;
            best = ready && (best < 0 || set.get(i).priority() < set.get(best).priority()) ? i : best;
        }
        return best;
    }

    private long send(int message, long time) {
        long end = time + set.get(message).frameTicks();
        longest[message] = Math.max(longest[message], end - releases.due(message, sent[message]));
        sent[message]++;
        return end;
    }

    long longest(int message) {
        return longest[message];
    }
}
