package ringout.finding;

import java.util.List;

/**
 * A check that lacked a datum. Never a pass.
 *
 * @param code code of the check
 * @param name name of the check
 * @param objects what it could not decide about
 * @param missing the datum, in trade words
 * @param how the cheapest way to get it
 * @param minutes how long that takes
 * @param states states of the aircraft it holds in
 */
public record CannotTell(
        String code, String name, List<String> objects, String missing, String how, int minutes, List<String> states) {
    /** The same in other states. */
    public CannotTell in(List<String> others) {
        return new CannotTell(code, name, objects, missing, how, minutes, List.copyOf(others));
    }
}
