package ringout.plan.task;

import java.util.List;
import ringout.check.build.HiddenSpots;

/**
 * A plug or joint a lid hides, and what proves it before.
 *
 * @param spot where it is, and the first lid that hides it
 * @param leads leads on it
 * @param screwed whether a screw holds it
 * @param checks tasks that prove it
 * @param photos tasks that photograph it
 */
public record HiddenJoint(
        HiddenSpots.Spot spot, List<String> leads, boolean screwed, List<Integer> checks, List<Integer> photos) {}
