package ringout.draw.style;

import java.util.ArrayList;
import java.util.List;
import ringout.draw.ink.Ink;
import ringout.draw.ink.Paint;
import ringout.draw.ink.Patch;
import ringout.draw.ink.Pen;
import ringout.draw.ink.Stroke;
import ringout.draw.ink.Tag;
import ringout.draw.paper.Area;
import ringout.draw.paper.Point;
import ringout.draw.scene.Fitting;
import ringout.draw.scene.Presence;

/** The sign of a fitting in its cell. */
public final class FittingInk {
    private static final double WIDTH = 4;
    private static final double HEIGHT = 1.7;

    private FittingInk() {}

    /** {@return the sign about a middle} */
    public static List<Ink> draw(Fitting fitting, Point middle) {
        boolean missing = fitting.presence() == Presence.MISSING;
        Pen pen = missing ? Pen.dashed(Palette.BLACK, Lines.STRONG, 1.0, 0.6) : Pen.solid(Palette.BLACK, Lines.STRONG);
        Area body = new Area(middle.x() - WIDTH / 2, middle.y() - HEIGHT / 2, WIDTH, HEIGHT);
        List<Ink> ink = new ArrayList<>();
        boolean solid = fitting.symbol() == Fitting.Symbol.TERMINATOR_ON && !missing;
        Paint fill = Paint.of(solid ? Palette.BLACK : Palette.WHITE);
        switch (fitting.symbol()) {
            case TERMINATOR_ON, TERMINATOR_OFF -> ink.add(Patch.rectangle("sign", body, fill, pen));
            case FUSE -> {
                ink.add(Patch.rectangle("sign", body, fill, pen));
                Point left = new Point(body.x() - 0.7, middle.y());
                ink.add(new Stroke(Tag.of("sign"), List.of(left, left.plus(WIDTH + 1.4, 0)), pen));
            }
            case LABEL ->
                ink.add(Patch.polygon(
                        "sign",
                        List.of(
                                new Point(body.x(), middle.y()),
                                new Point(body.x() + 1, body.y()),
                                new Point(body.right(), body.y()),
                                new Point(body.right(), body.bottom()),
                                new Point(body.x() + 1, body.bottom())),
                        fill,
                        pen));
        }
        return ink;
    }
}
