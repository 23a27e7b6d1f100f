package ringout.draw.card;

import java.util.List;
import ringout.draw.ink.Ink;
import ringout.draw.ink.StyledSheet.Promise;
import ringout.draw.paper.Point;
import ringout.draw.scene.FindingLine;
import ringout.draw.style.LegendEntry;

/** A small drawing that shares a sheet with others. */
public interface Card {
    /** {@return the name it is found by, such as that of a lead} */
    String name();

    /** {@return how wide it is, mm} */
    double width();

    /** {@return how high it is, mm} */
    double height();

    /** {@return its ink, with its upper left corner at a point} */
    List<Ink> draw(Point corner);

    /** {@return the wires that must be found on it} */
    List<Promise> promised();

    /** {@return what it shows that a legend must explain; equal words are explained once a sheet} */
    List<LegendEntry> legend();

    /** {@return the findings that have a badge on it} */
    List<FindingLine> findings();
}
