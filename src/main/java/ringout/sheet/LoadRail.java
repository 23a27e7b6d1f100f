package ringout.sheet;

import java.util.List;
import java.util.OptionalDouble;

/**
 * One rail: what feeds it and what takes from it.
 *
 * @param name of its source, or of the packs that empty together
 * @param packs whether packs feed it
 * @param fedBy names of the rails above; empty for packs
 * @param outputs the packs, or the one regulator or output
 * @param takers what takes from it with no regulator between, in the order of the units
 */
public record LoadRail(String name, boolean packs, List<String> fedBy, List<Output> outputs, List<Taker> takers) {
    /** Keeps unmodifiable copies. */
    public LoadRail {
        fedBy = List.copyOf(fedBy);
        outputs = List.copyOf(outputs);
        takers = List.copyOf(takers);
    }

    /** {@return what all takers take at their average in A; more than the outputs give where they share takers} */
    public double averageA() {
        return takers.stream().mapToDouble(Taker::averageA).sum();
    }

    /** {@return what all takers take at their peak in A, as far as it can be told} */
    public OptionalDouble peakA() {
        return takers.stream().allMatch(taker -> taker.peakA().isPresent())
                ? OptionalDouble.of(
                        takers.stream().mapToDouble(t -> t.peakA().orElse(0)).sum())
                : OptionalDouble.empty();
    }
}
