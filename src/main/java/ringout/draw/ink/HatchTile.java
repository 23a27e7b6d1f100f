package ringout.draw.ink;

import java.util.List;

/**
 * The tile that a hatching repeats.
 *
 * @param hatch which
 * @param size edge of the square tile, mm
 * @param ground colour below, as {@code #rrggbb}
 * @param ink what is drawn in the tile, from its upper left corner
 */
public record HatchTile(Hatch hatch, double size, String ground, List<Ink> ink) {
    /** Keeps an unmodifiable copy of the ink. */
    public HatchTile {
        ink = List.copyOf(ink);
    }
}
