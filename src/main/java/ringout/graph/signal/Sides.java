package ringout.graph.signal;

import java.util.Locale;
import java.util.Map;

/**
 * Where on the aircraft words say something is: left or right, front or rear, upper or lower. On each axis 0 when nothing is said.
 *
 * @param x 1 front, -1 rear
 * @param y 1 right, -1 left
 * @param z 1 upper, -1 lower
 */
public record Sides(int x, int y, int z) {
    private static final Map<String, Sides> WORDS = Map.ofEntries(
            Map.entry("front", new Sides(1, 0, 0)),
            Map.entry("fore", new Sides(1, 0, 0)),
            Map.entry("forward", new Sides(1, 0, 0)),
            Map.entry("nose", new Sides(1, 0, 0)),
            Map.entry("rear", new Sides(-1, 0, 0)),
            Map.entry("aft", new Sides(-1, 0, 0)),
            Map.entry("back", new Sides(-1, 0, 0)),
            Map.entry("tail", new Sides(-1, 0, 0)),
            Map.entry("right", new Sides(0, 1, 0)),
            Map.entry("left", new Sides(0, -1, 0)),
            Map.entry("upper", new Sides(0, 0, 1)),
            Map.entry("top", new Sides(0, 0, 1)),
            Map.entry("lower", new Sides(0, 0, -1)),
            Map.entry("bottom", new Sides(0, 0, -1)));

    /** What some words say. */
    public static Sides of(String words) {
        int x = 0;
        int y = 0;
        int z = 0;
        for (String word : words.toLowerCase(Locale.ROOT).split("[^a-z]+", -1)) {
            Sides side = WORDS.getOrDefault(word, new Sides(0, 0, 0));
            x = side.x() == 0 ? x : side.x();
            y = side.y() == 0 ? y : side.y();
            z = side.z() == 0 ? z : side.z();
        }
        return new Sides(x, y, z);
    }

    /** Whether they say anything. */
    public boolean said() {
        return x != 0 || y != 0 || z != 0;
    }

    /** Whether two speak of opposite sides of an axis. */
    public boolean contradicts(Sides other) {
        return x * other.x < 0 || y * other.y < 0 || z * other.z < 0;
    }
}
