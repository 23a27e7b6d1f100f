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
    public record Pair(String from, String to) {}

    @Override
    public String toString() {
        return pairs.stream().map(pair -> pair.from() + ">" + pair.to()).collect(Collectors.joining(" "));
    }
}
