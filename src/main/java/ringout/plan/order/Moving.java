package ringout.plan.order;

/**
 * What it costs to change the place of work.
 *
 * @param walk minutes to lay the tools aside and begin in another zone
 * @param turn minutes to turn the aircraft over, safely
 */
public record Moving(double walk, double turn) {
    /** Half a minute to another zone; three minutes to turn it over (two to four are usual). Judgement. */
    public static final Moving USUAL = new Moving(0.5, 3);

    /** Counts set-ups: one for every change of zone, one for every turn. */
    public static final Moving COUNTED = new Moving(1, 1);

    /** {@return minutes from one place to another} */
    double minutes(Place from, Place to) {
        return (from.zone() == to.zone() ? 0 : walk) + (from.side() == to.side() ? 0 : turn);
    }
}
