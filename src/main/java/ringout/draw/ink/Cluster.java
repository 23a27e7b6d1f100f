package ringout.draw.ink;

import java.util.List;

/**
 * Ink that belongs together.
 *
 * @param tag what it stands for
 * @param parts from the lowest to the uppermost
 */
public record Cluster(Tag tag, List<Ink> parts) implements Ink {
    /** Keeps an unmodifiable copy of the parts. */
    public Cluster {
        parts = List.copyOf(parts);
    }
}
