package ringout.check.power;

import java.util.stream.Collectors;
import ringout.check.form.Figures;
import ringout.check.form.Situation;
import ringout.check.form.Thresholds;
import ringout.finding.Draft;
import ringout.finding.Severity;
import ringout.graph.power.PowerSource;
import ringout.model.Datum;
import ringout.solve.power.Endurance;

/** Writes the finding that packs do not last for the mission and its reserve. */
final class ReserveDraft {
    private ReserveDraft() {}

    static Draft of(Situation at, PackGroup group, Reserve reserve, boolean onAssumption) {
        Endurance endurance = reserve.endurance();
        double minutes = endurance.minutes();
        double left = reserve.left(minutes);
        double needs = reserve.needs(minutes);
        String name = group.name(at);
        String rule = reserve.isAsked()
                ? "as listed"
                : "the larger of " + Figures.of(reserve.share().value()) + " % and "
                        + Figures.of(reserve.leastMin().value()) + " min";
        String lasts = name + (group.packs().size() > 1 ? " last " : " lasts ") + Figures.of(minutes)
                + " min, the mission of " + Figures.of(reserve.missionMin()) + " min ";
        Draft draft = Draft.of(
                        Severity.S3,
                        "reserve too short: " + lasts
                                + (left > 0
                                        ? "leaves " + Figures.of(left) + " of " + Figures.of(needs) + " min"
                                        : "is longer"))
                .about(group.names(at))
                .sum(energy(at, group) + " = " + Figures.of(endurance.usableWh()) + " Wh; 60 x "
                        + Figures.of(endurance.usableWh()) + " Wh / " + Figures.of(endurance.consumersW()) + " W = "
                        + Figures.of(minutes) + " min (" + Figures.of(endurance.minutesWithLosses())
                        + " min with the losses in packs and leads); less " + Figures.of(reserve.missionMin())
                        + " min leaves " + Figures.of(left) + " min, reserve " + Figures.of(needs) + " min " + rule)
                .judged(
                        left,
                        needs,
                        "min",
                        reserve.isAsked()
                                ? "reserve of the list"
                                : reserve.share().source())
                .onAssumption(onAssumption)
                .why("nothing is left for wind, a second approach or an older pack")
                .meter("charge after a mission: " + charge(group, at, endurance, reserve)
                        + " Ah into each pack at most when right")
                .fix("plan " + Figures.of(Math.max(0, mission(reserve, minutes)))
                        + " min at most, take larger packs, or take load off")
                .cause("endurance of " + name);
        for (PowerSource pack : group.packs()) {
            draft.seen(at.directory().unit(pack.unit()));
            draft.input(ReserveTooShort.rating(at, pack).capacityAh());
            draft.input(at.directory().unit(pack.unit()).healthPercent());
        }
        group.loads().forEach(load -> LoadGaps.averageFigures(load).forEach(draft::input));
        return draft;
    }

    /** The longest mission that leaves the reserve. */
    private static double mission(Reserve reserve, double minutes) {
        return minutes - reserve.needs(minutes);
    }

    private static String energy(Situation at, PackGroup group) {
        String packs = group.packs().stream()
                .map(pack ->
                        Figures.of(ReserveTooShort.rating(at, pack).capacityAh().or(0.0)) + " Ah x "
                                + Figures.of(pack.volts().nominal()) + " V" + health(at, pack))
                .collect(Collectors.joining(" + "));
        String sum = group.packs().size() > 1 ? "(" + packs + ")" : packs;
        Datum<Double> coldest = at.aircraft().airframe().coldestC();
        double cold = Reserve.cold(at);
        String temperature =
                cold < 1 ? " x " + Figures.of(100 * cold) + " % at " + Figures.of(coldest.or(0.0)) + " degC" : "";
        return sum + " x " + Figures.of(at.limit(Thresholds.PACK_USABLE).value()) + " %" + temperature;
    }

    private static String health(Situation at, PowerSource pack) {
        Datum<Double> health = at.directory().unit(pack.unit()).healthPercent();
        return health.isKnown() && health.or(100.0) != 100 ? " x " + Figures.of(health.or(100.0)) + " % health" : "";
    }

    /** What a mission that leaves the reserve may take out of the first pack in Ah. */
    private static String charge(PackGroup group, Situation at, Endurance endurance, Reserve reserve) {
        PowerSource pack = group.packs().get(0);
        double minutes = endurance.minutes();
        double usable = ReserveTooShort.rating(at, pack).capacityAh().or(0.0)
                * at.limit(Thresholds.PACK_USABLE).value()
                / 100
                * Reserve.cold(at)
                * at.directory().unit(pack.unit()).healthPercent().or(100.0)
                / 100;
        return Figures.of(usable * Math.max(0, mission(reserve, minutes)) / minutes);
    }
}
