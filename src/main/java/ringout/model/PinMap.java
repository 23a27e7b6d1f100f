package ringout.model;

import java.util.List;
import java.util.stream.Collectors;

/**
 * Which pin of the {@code from} plug goes to which pin of the {@code to} plug.
 *
 * @param pairs pairs in the order written
 */
public record PinMap(List<Pair> pairs) {
    /**
     * One conductor.
     *
     * @param from pin at the from end, number or name
     * @param to pin at the to end, number or name
     */
    public record Pair(String from, String to) {
        /** As written: {@code 2>3}; with blanks behind a name that ends in a dash, which would make an arrow. */
        @Override
        public String toString() {
            return from + (from.endsWith("-") ? " > " : ">") + to;
        }
    }

    @Override
    public String toString() {
        return pairs.stream().map(Pair::toString).collect(Collectors.joining(" "));
    }
}
