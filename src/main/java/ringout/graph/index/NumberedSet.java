package ringout.graph.index;

import java.util.AbstractSet;
import java.util.Iterator;
import java.util.NoSuchElementException;
import java.util.function.IntPredicate;
import org.jspecify.annotations.Nullable;

/** A read-only set of the things whose numbers below a bound satisfy a condition, ascending by number. */
final class NumberedSet<T> extends AbstractSet<T> {
    private final Numbering<T> numbering;
    private final int bound;
    private final IntPredicate present;
    private final int size;

    NumberedSet(Numbering<T> numbering, int bound, IntPredicate present, int size) {
        this.numbering = numbering;
        this.bound = bound;
        this.present = present;
        this.size = size;
    }

    @Override
    public int size() {
        return size;
    }

    @Override
    public boolean contains(@Nullable Object thing) {
        int number = thing == null ? -1 : numbering.number(thing);
        return number >= 0 && present.test(number);
    }

    @Override
    public Iterator<T> iterator() {
        return new Iterator<>() {
            private int next = advance(0);

            private int advance(int from) {
                int number = from;
                while (number < bound && !present.test(number)) {
                    number++;
                }
                return number;
            }

            @Override
            public boolean hasNext() {
                return next < bound;
            }

            @Override
            public T next() {
                if (!hasNext()) {
                    throw new NoSuchElementException();
                }
                T thing = numbering.thing(next);
                next = advance(next + 1);
                return thing;
            }
        };
    }
}
