package ringout.check.power;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ringout.check.form.CheckInfo;
import ringout.check.form.Gaps;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.check.form.Weighing;
import ringout.finding.Severity;
import ringout.graph.Gap;
import ringout.graph.Part;
import ringout.graph.power.PowerSource;
import ringout.model.Airframe;
import ringout.model.Datum;
import ringout.model.Origin;
import ringout.model.PartRating;
import ringout.solve.power.Endurance;
import ringout.solve.power.LoadCase;

/**
 * Packs that do not last for the planned mission and its reserve.
 *
 * <p>Why it matters: the reserve is what brings the aircraft home when the wind turns, a landing place is taken or a pack is older
 * than thought.
 *
 * <p>Formula: endurance in min = 60 x capacity in Ah x nominal voltage x usable part / power of all consumers at their average in
 * W, the losses of regulators included. Usable are 80 %, less 1 % for each degree of the packs below 20 degC (20 % at 0 degC),
 * times the health of each pack. What the mission leaves of it must reach the reserve asked for; where none is, 20 % of the
 * endurance and 3 min at least. Packs that empty together count together.
 *
 * <p>Does not see: losses inside packs and leads (told in the finding), wind, climb, a tank that gets lighter; cells below 0 degC,
 * which give still less than this rule says.
 *
 * <p>Reference: common practice, no source.
 */
@CheckInfo(
        code = "P30",
        name = "reserve-too-short",
        severity = Severity.S3,
        since = "0.1",
        solves = true,
        needs = {
            "planned mission time",
            "capacity and nominal voltage of each pack",
            "health of each pack, and lowest temperature of the packs, where they decide",
            "average current or power of each load",
            "efficiency of each regulator"
        })
public final class ReserveTooShort implements Weighing {
    static final String MISSION = "planned mission time";
    static final String CAPACITY = "capacity or nominal voltage of the cells";
    static final String RESERVE = "reserve asked for after the mission";
    static final String HEALTH = "health";
    static final String COLDEST = "lowest temperature of the packs in flight";
    private static final double MOVE = 0.2;

    @Override
    public void look(Situation at, Outcomes out) {
        Datum<Double> mission = at.aircraft().airframe().missionMin();
        List<PackGroup> groups = at.bench() || mission.isNotApplicable() ? List.of() : PackGroup.all(at);
        if (groups.isEmpty()) {
            return;
        }
        Gaps gaps = new Gaps();
        if (mission.isMissing()) {
            gaps.add(MISSION, "the aircraft");
        } else {
            LoadGaps missing = LoadGaps.of(at);
            Flowing.of(at, LoadCase.AVERAGE, gaps)
                    .ifPresent(flow -> groups.forEach(group -> judge(at, out, gaps, missing, flow, group)));
        }
        gaps.tell(out, PowerData::way);
    }

    private static void judge(Situation at, Outcomes out, Gaps gaps, LoadGaps missing, Flowing flow, PackGroup group) {
        List<Gap> open = missing(at, missing, group);
        Optional<Endurance> endurance = PackEndurance.of(at, flow.flow(), group);
        if (endurance.isEmpty()) {
            gaps.add(open);
            return;
        }
        Reserve reserve = Reserve.of(at, endurance.get());
        // A load or an efficiency that nobody tells only shortens it: what is too short without it is too short.
        boolean guessed = group.packs().stream().anyMatch(missing::guessed);
        if (reserve.isShort(1) && !guessed) {
            double rests = flow.assumedPart(group.loads(), LoadGaps::averageFigures);
            double better = (assumed(at, group) ? 1 + MOVE : 1) / (1 - MOVE * rests);
            out.finding(ReserveDraft.of(at, group, reserve, !reserve.isShort(better)));
        } else if (!open.isEmpty() || guessed) {
            gaps.add(open);
        } else {
            unsure(at, out, gaps, flow, group, reserve);
        }
    }

    private static List<Gap> missing(Situation at, LoadGaps missing, PackGroup group) {
        List<Gap> open = new ArrayList<>();
        for (PowerSource pack : group.packs()) {
            String name = at.directory().name(pack.unit());
            open.addAll(missing.average(pack));
            if (!rating(at, pack).capacityAh().isKnown()
                    || pack.volts().nominal().isEmpty()) {
                open.add(new Gap(CAPACITY, name));
            }
            if (at.directory().unit(pack.unit()).healthPercent() instanceof Datum.Unknown) {
                open.add(new Gap(HEALTH, name));
            }
        }
        if (at.aircraft().airframe().missionReserveMin() instanceof Datum.Unknown) {
            open.add(new Gap(RESERVE, "the aircraft"));
        }
        if (at.aircraft().airframe().coldestC() instanceof Datum.Unknown) {
            open.add(new Gap(COLDEST, "the aircraft"));
        }
        return open.stream().distinct().toList();
    }

    /** What is good, but would not be with a pack of 80 % health, at 0 degC, or with an assumed figure moved by 20 %. */
    private static void unsure(Situation at, Outcomes out, Gaps gaps, Flowing flow, PackGroup group, Reserve reserve) {
        Airframe airframe = at.aircraft().airframe();
        List<Gap> open = new ArrayList<>();
        for (PowerSource pack : group.packs()) {
            if (at.directory().unit(pack.unit()).healthPercent().isMissing() && reserve.isShort(1 - MOVE)) {
                open.add(new Gap(HEALTH, at.directory().name(pack.unit())));
            }
        }
        if (airframe.coldestC().isMissing() && reserve.isShort(1 - MOVE)) {
            open.add(new Gap(COLDEST, "the aircraft"));
        }
        double rests = flow.assumedPart(group.loads(), LoadGaps::averageFigures);
        double worse = (assumed(at, group) ? 1 - MOVE : 1) / (1 + MOVE * rests);
        if (reserve.isShort(worse)) {
            open.add(new Gap(PowerData.DECIDES, group.name(at)));
        }
        gaps.add(open);
        if (open.isEmpty()) {
            out.looked();
        }
    }

    private static boolean assumed(Situation at, PackGroup group) {
        return group.packs().stream()
                .anyMatch(pack -> rating(at, pack).capacityAh().source() == Origin.ASSUMED
                        || at.directory().unit(pack.unit()).healthPercent().source() == Origin.ASSUMED);
    }

    static PartRating rating(Situation at, PowerSource pack) {
        return ((Part.Inner) at.wiring().parts().get(pack.part()).origin())
                .part()
                .rating();
    }
}
