package ringout.synthetic;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.SplittableRandom;

/** Seeded chance: the same seed gives the same aircraft. */
final class Dice {
    private final SplittableRandom random;

    Dice(long seed) {
        this(new SplittableRandom(seed));
    }

    private Dice(SplittableRandom random) {
        this.random = random;
    }

    /** Dice of their own, so that what one part draws does not move the others. */
    Dice split() {
        return new Dice(random.split());
    }

    int below(int bound) {
        return random.nextInt(bound);
    }

    int between(int least, int most) {
        return random.nextInt(least, most + 1);
    }

    boolean chance(double probability) {
        return random.nextDouble() < probability;
    }

    <T> T pick(List<T> from) {
        return from.get(below(from.size()));
    }

    <T> List<T> shuffled(List<T> items) {
        List<T> copy = new ArrayList<>(items);
        for (int i = copy.size() - 1; i > 0; i--) {
            Collections.swap(copy, i, below(i + 1));
        }
        return copy;
    }
}
