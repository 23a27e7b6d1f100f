package ringout.draw.bus;

import java.util.List;
import ringout.draw.letter.Lettering;

/**
 * Heights of lettering on a bus diagram, mm: large enough for arm's length where there is room.
 *
 * @param title of the members' names
 * @param main of addresses, terminators, leads
 * @param table of the readings
 */
record Sizes(double title, double main, double table) {
    /** {@return the sizes to try, largest first} */
    static List<Sizes> all() {
        return List.of(
                new Sizes(Lettering.LARGE, Lettering.MEDIUM, Lettering.MEDIUM),
                new Sizes(Lettering.LARGE, Lettering.MEDIUM, Lettering.SMALL),
                new Sizes(Lettering.MEDIUM, Lettering.SMALL, Lettering.SMALL));
    }

    /** {@return the height of a line of the title} */
    double titleLine() {
        return title * 1.75 + 0.8;
    }
}
