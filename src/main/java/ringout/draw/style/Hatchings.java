package ringout.draw.style;

import java.util.List;
import ringout.draw.ink.Hatch;
import ringout.draw.ink.HatchTile;
import ringout.draw.ink.Paint;
import ringout.draw.ink.Patch;
import ringout.draw.ink.Pen;
import ringout.draw.ink.Stroke;
import ringout.draw.ink.Tag;
import ringout.draw.paper.Area;
import ringout.draw.paper.Point;
import ringout.draw.scene.BadgeKind;

/** The hatchings of casings and of waived badges. */
public final class Hatchings {
    private static final double TILE = 1.6;
    private static final double FINE = 1.2;

    private Hatchings() {}

    /** {@return all of them} */
    public static List<HatchTile> all() {
        Pen pen = Pen.solid(Palette.DEEP_RED, 0.3);
        Pen orange = Pen.solid(Palette.BLACK, 0.35);
        Pen grey = Pen.solid("#8c8c8c", 0.15);
        return List.of(
                new HatchTile(Hatch.CROSS, TILE, "#fbe3d6", List.of(rising(TILE, pen), falling(TILE, pen))),
                new HatchTile(Hatch.DIAGONAL, TILE, "#fbe7b8", List.of(rising(TILE, orange))),
                new HatchTile(Hatch.DOTS, TILE, "#d9eefa", List.of(dot(TILE))),
                new HatchTile(Hatch.WAIVED, FINE, Palette.WHITE, List.of(falling(FINE, grey))));
    }

    /** {@return the hatching of a casing} */
    public static Hatch of(BadgeKind kind) {
        return switch (kind) {
            case S1 -> Hatch.CROSS;
            case S2 -> Hatch.DIAGONAL;
            case S3 -> Hatch.DOTS;
            case S4, CANNOT_TELL -> throw new IllegalArgumentException(kind + " has no casing");
        };
    }

    /** Beyond the tile at both ends, so that the line has no gap where tiles meet. */
    private static Stroke rising(double tile, Pen pen) {
        return new Stroke(Tag.NONE, List.of(new Point(-0.2, tile + 0.2), new Point(tile + 0.2, -0.2)), pen);
    }

    private static Stroke falling(double tile, Pen pen) {
        return new Stroke(Tag.NONE, List.of(new Point(-0.2, -0.2), new Point(tile + 0.2, tile + 0.2)), pen);
    }

    private static Patch dot(double tile) {
        double r = 0.38;
        Area area = new Area(tile / 2 - r, tile / 2 - r, 2 * r, 2 * r);
        return Patch.ellipse("", area, Paint.of(Palette.BLACK), Pen.NONE);
    }
}
