package ringout.draw.face;

import java.util.ArrayList;
import java.util.List;
import ringout.draw.ink.Ink;
import ringout.draw.ink.Paint;
import ringout.draw.ink.Patch;
import ringout.draw.ink.Pen;
import ringout.draw.paper.Area;
import ringout.draw.paper.Point;
import ringout.draw.style.LegendEntry;
import ringout.draw.style.LineInk;
import ringout.draw.style.Lines;
import ringout.draw.style.Palette;

/** Lines of the legend for faces. */
public final class FaceLegend {
    private FaceLegend() {}

    /** {@return the line of a view} */
    public static LegendEntry of(View view) {
        String words = view == View.WIRE_SIDE ? "wire side: seen from its wires" : "mating face: seen from the unit";
        return new LegendEntry(words, LegendEntry.LOW, p -> FaceInk.icon(view, p.plus(4, 0)));
    }

    /** {@return the line of the sign of a contact} */
    public static LegendEntry of(ContactSign sign) {
        return new LegendEntry(sign.words(), LegendEntry.LOW, p -> FaceInk.sign(sign, p.plus(10, 0)));
    }

    /** {@return the line of the mark of pin 1} */
    public static LegendEntry firstPin() {
        return new LegendEntry("side of the first pin", LegendEntry.LOW, p -> {
            Point tip = p.plus(10, 1);
            List<Point> corners = List.of(tip.plus(-1.4, -2.1), tip.plus(1.4, -2.1), tip);
            return List.of(Patch.polygon("", corners, Paint.of(Palette.BLACK), Pen.NONE));
        });
    }

    /** {@return the line of a contact without a wire} */
    public static LegendEntry empty() {
        return new LegendEntry("grey with a cross: no wire in it", LegendEntry.LOW, p -> {
            Area place = new Area(p.x() + 7, p.y() - 2, 6, 4);
            Pen edge = Pen.solid(Palette.BLACK, Lines.MEDIUM);
            List<Ink> ink = new ArrayList<>();
            ink.add(Patch.rectangle("", place, Paint.of(Palette.LIGHT_GREY), edge));
            ink.addAll(LineInk.cross(place.centre(), 0.8));
            return ink;
        });
    }
}
