package ringout.graph.index;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * A one-to-one relation between things and the numbers {@code 0 .. n-1} that stand for them in an {@link IndexGraph}.
 *
 * @param <T> the things
 */
public interface Numbering<T> {
    /** {@return the thing with a number} */
    T thing(int number);

    /** {@return the number of a thing, or -1 if it has none; any object may be asked for} */
    int number(Object thing);

    /** {@return the numbering of the numbers below a bound by themselves} */
    static Numbering<Integer> plain(int bound) {
        return new Numbering<>() {
            @Override
            public Integer thing(int number) {
                return number;
            }

            @Override
            public int number(Object thing) {
                return thing instanceof Integer number && number >= 0 && number < bound ? number : -1;
            }
        };
    }

    /**
     * {@return the numbering of a list by position} The list is copied.
     *
     * @throws IllegalArgumentException if two things are equal
     */
    static <T> Numbering<T> of(List<T> things) {
        List<T> byNumber = List.copyOf(things);
        Map<Object, Integer> numbers = new HashMap<>(2 * byNumber.size());
        for (T thing : byNumber) {
            Integer before = numbers.put(thing, numbers.size());
            if (before != null) {
                throw new IllegalArgumentException(thing + " is in the list twice");
            }
        }
        return new Numbering<>() {
            @Override
            public T thing(int number) {
                return byNumber.get(number);
            }

            @Override
            public int number(Object thing) {
                return numbers.getOrDefault(thing, -1);
            }
        };
    }
}
