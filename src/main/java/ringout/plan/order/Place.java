package ringout.plan.order;

/**
 * Where a task is done.
 *
 * @param zone number of the zone; {@link #ANYWHERE} for a task done wherever one stands
 * @param side how the aircraft must lie
 */
public record Place(int zone, Side side) {
    /** A task without a zone: a signature, a reading over the radio. */
    public static final int ANYWHERE = -1;

    /** At no zone yet, the aircraft on its legs. */
    public static final Place START = new Place(-2, Side.UPRIGHT);

    /** {@return where one stands when a task of this place is begun coming from there} */
    Place from(Place now) {
        return new Place(zone == ANYWHERE ? now.zone : zone, side.from(now.side));
    }
}
