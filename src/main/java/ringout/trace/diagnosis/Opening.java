package ringout.trace.diagnosis;

/**
 * A cover, lid or pod that has to come off; paid for once, since it stays off until the work is done.
 *
 * @param name as on the aircraft
 * @param minutes off and on again, with what that costs in re-proof
 */
public record Opening(String name, double minutes) {
    /** Refuses a negative time. */
    public Opening {
        if (!(minutes >= 0)) {
            throw new IllegalArgumentException("minutes of opening " + name + " are " + minutes);
        }
    }
}
