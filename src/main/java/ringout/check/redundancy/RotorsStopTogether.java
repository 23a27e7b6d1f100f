package ringout.check.redundancy;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import ringout.check.form.Check;
import ringout.check.form.CheckInfo;
import ringout.check.form.Gaps;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.finding.Severity;
import ringout.graph.signal.MotorDrives;
import ringout.model.Airframe;
import ringout.solve.rotor.Hover;
import ringout.solve.rotor.Sharing;

/**
 * Rotors that stop together with one clamp, plug, lead or bus and leave no hover.
 *
 * <p>Why it matters: one loose screw or one bus takes neighbouring rotors; shared another way, at no cost, the rest could carry.
 *
 * <p>Formula: thrusts T of the rotors left with sum T = weight, no roll and no pitch moment about the centre of gravity, no yaw
 * moment where yaw must hold, s &lt;= T &lt;= Tmax - s; the margin is the largest s (a linear programme), at the worst declared
 * weight. A finding when another sharing over the same clamps or buses leaves more: a hover instead of none, or 10 % of the
 * thrust of a rotor instead of less. Sets of rotors without such a cure are one note.
 *
 * <p>Does not see: whether the controller manages it, the margin is static; propellers of unequal yaw moment for the same thrust.
 *
 * <p>Reference: statics of a rigid body; common practice of multirotors, no source.
 */
@CheckInfo(
        code = "R02",
        name = "rotors-stop-together",
        severity = Severity.S3,
        since = "0.3",
        needs = {"rotor table with bearing, distance, largest thrust and direction", "weight", "whether yaw must hold"})
public final class RotorsStopTogether implements Check {
    private static final int MOST_ROTORS = 48;
    private static final String STATIC = "static balance only, the controller must also manage it";

    @Override
    public void look(Situation at, Outcomes out) {
        Airframe airframe = at.aircraft().airframe();
        if (airframe.rotors().isEmpty()) {
            return;
        }
        Hover hover = new Hover(airframe, airframe.yawMustHold().or(true));
        if (MotorDrives.of(at.circuit()).stream()
                .noneMatch(drive -> drive.rotor().isPresent())) {
            return;
        }
        Gaps gaps = new Gaps();
        gaps.add(hover.missing());
        if (!gaps.isEmpty()) {
            gaps.tell(out, datum -> new Gaps.Way("take it from the design, the scale or the maker's thrust table", 5));
            return;
        }
        if (airframe.rotors().size() > MOST_ROTORS) {
            out.cannotTell(
                    "rotor table of one aircraft: " + airframe.rotors().size() + " rotors are more than " + MOST_ROTORS,
                    "split the list into aircraft",
                    10,
                    "rotors");
            return;
        }
        RotorsLost lost = new RotorsLost(at, hover);
        if (lost.all().isEmpty()) {
            return;
        }
        Map<BitSet, List<String>> sets = lost.sets();
        if (airframe.yawMustHold().isMissing() && differs(lost, new RotorsLost(at, new Hover(airframe, false)), sets)) {
            out.cannotTell("whether yaw must hold when rotors stop", "ask who tunes the controller", 5, "yaw");
            return;
        }
        out.looked();
        if (lost.left(new BitSet()) == RotorsLost.Left.NONE) {
            out.finding(StoppedRotors.never(lost));
            return;
        }
        for (Siblings family : Siblings.of(lost)) {
            StoppedRotors.of(lost, family, better(lost, family), STATIC).forEach((rotors, draft) -> {
                sets.remove(rotors);
                out.finding(draft);
            });
        }
        StoppedRotors.note(lost, sets, STATIC).ifPresent(out::finding);
    }

    /** Whether some loss leaves another hover when yaw is held than when it is given up. */
    private static boolean differs(RotorsLost held, RotorsLost free, Map<BitSet, List<String>> sets) {
        return held.left(new BitSet()) != free.left(new BitSet())
                || sets.keySet().stream().anyMatch(set -> held.left(set) != free.left(set));
    }

    /** A sharing that leaves a better hover than the worst of a family does now; nothing when there is none. */
    private static List<BitSet> better(RotorsLost lost, Siblings family) {
        RotorsLost.Left worst = family.shares().stream()
                .map(share -> lost.left(share.rotors()))
                .min(Comparator.naturalOrder())
                .orElse(RotorsLost.Left.ENOUGH);
        if (worst == RotorsLost.Left.ENOUGH) {
            return List.of();
        }
        BitSet all = new BitSet();
        family.shares().forEach(share -> all.or(share.rotors()));
        List<Integer> takes = new ArrayList<>();
        family.shares().forEach(share -> takes.add(share.takes()));
        if (takes.stream().mapToInt(Integer::intValue).sum() < all.cardinality()) {
            takes.clear();
            family.shares().forEach(share -> takes.add(share.rotors().cardinality()));
        }
        List<BitSet> best = Sharing.best(all, takes, lost::value);
        return best.stream().anyMatch(group -> lost.left(group).compareTo(worst) <= 0) ? List.of() : best;
    }
}
