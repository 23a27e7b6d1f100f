package ringout.check.power;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import ringout.check.form.CheckInfo;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.check.form.Sound;
import ringout.check.form.Threshold;
import ringout.check.form.Thresholds;
import ringout.finding.Severity;

/**
 * A loop of 0V wires that encloses a large area, or runs along a lead of high current.
 *
 * <p>Why it matters: changing current nearby induces a voltage round the loop; analog video and sensors show it first.
 *
 * <p>Condition: of loops of leads whose route is given, the area of units and route points is above the limit, or one lies more than
 * 100 mm along a lead of more than 20 A and at most 20 mm away. Only the three worst are told, by area times that current: on
 * an aircraft with a common board every signal lead closes a loop.
 *
 * <p>Does not see: loops over leads without a route; neighbours not listed; loops made of several
 * independent ones; how fast the current changes.
 *
 * <p>Reference: common practice, no source.
 */
@CheckInfo(
        code = "P12",
        name = "zero-loop",
        severity = Severity.S4,
        since = "0.2",
        needs = {"routes of leads", "positions of units", "leads beside each other"})
public final class ZeroLoop implements Sound {
    private static final int WORST = 3;

    @Override
    public void look(Situation at, Outcomes out) {
        Threshold area = at.limit(Thresholds.LOOP_AREA);
        Threshold beside = at.limit(Thresholds.LOOP_BESIDE);
        ZeroRings found = new ZeroRings(at, beside);
        if (!found.rings().isEmpty()) {
            told(out, found, area, beside);
        } else if (!found.unplaced().isEmpty()) {
            out.cannotTell(
                    "position of " + String.join(", ", found.unplaced()) + " in a 0V loop",
                    "measure it from the hub",
                    2,
                    found.unplaced().toArray(new String[0]));
        } else if (!found.unrouted().isEmpty()) {
            out.cannotTell(
                    "route of the other leads with a 0V wire", "write down the points where they bend", 10, "0V loops");
        }
    }

    private static void told(Outcomes out, ZeroRings found, Threshold area, Threshold beside) {
        Set<String> untold = new TreeSet<>();
        List<ZeroRing> wrong = new ArrayList<>();
        for (ZeroRing ring : found.rings()) {
            if (ring.areaCm2() > area.value() || ring.near().isPresent()) {
                wrong.add(ring);
            } else if (found.untold(ring).isEmpty()) {
                out.looked();
            } else {
                untold.addAll(found.untold(ring));
            }
        }
        wrong.stream()
                .sorted(Comparator.comparingDouble(ZeroRing::weight).reversed())
                .limit(WORST)
                .forEach(ring -> out.finding(ring.draft(area, beside)));
        if (!untold.isEmpty()) {
            out.cannotTell(
                    String.join(", ", untold),
                    "look where they run, and clamp a meter around the power lead",
                    5,
                    "0V loops");
        }
    }
}
