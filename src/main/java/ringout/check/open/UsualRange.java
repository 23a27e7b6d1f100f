package ringout.check.open;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import ringout.model.Awg;
import ringout.model.Datum;
import ringout.model.InnerPart;
import ringout.model.PartKind;
import ringout.model.PartRating;
import ringout.model.Plug;
import ringout.model.Rail;
import ringout.model.RuleSet;
import ringout.model.UnitType;

/**
 * Ends of what a datum usually is when nobody gave it: common practice, no source. They are wide on purpose: a verdict that is
 * the same at both ends needs no measurement.
 */
final class UsualRange {
    /** Any lead of the aircraft this is for, in mm. */
    static final List<Datum<?>> LENGTH_MM = of(20.0, 10_000.0);

    /** From the thinnest signal wire to the thickest pack lead. */
    static final List<Datum<?>> SIZE = of(new Awg(30), new Awg(4));

    /** PVC, and silicone. */
    static final List<Datum<?>> INSULATION_C = of(105.0, 200.0);

    static final List<Datum<?>> EITHER = of(true, false);
    static final List<Datum<?>> RULES = of(RuleSet.SHORT_LEAD, RuleSet.AIRCRAFT_CHART);

    /** Half of a joint is counted at each conductor; a crimped splice or a screwed stud, in milliohm. */
    static final List<Datum<?>> JOINT_MILLIOHM = of(0.0, 2.0);

    /** Step-down and step-up regulators at work. */
    static final List<Datum<?>> EFFICIENCY = of(0.7, 0.97);

    /** What a regulator takes for itself, in A. */
    static final List<Datum<?>> QUIESCENT_A = of(0.0, 0.2);

    static final List<Datum<?>> DROPOUT_V = of(0.0, 2.0);

    /** Fuses, links, switches and sense resistors, in milliohm. */
    static final List<Datum<?>> LINK_MILLIOHM = of(0.0, 100.0);

    /** Lithium cells of all chemistries, in V. */
    static final List<Datum<?>> CELL_V = of(3.2, 3.85);

    static final List<Datum<?>> PARALLEL = of(1, 4);

    /** A load of an event that draws nothing more: the other end, its peak, is what is taken without a figure. */
    static final List<Datum<?>> NOTHING = of(0.0);

    private static final double POWER_CONTACT_A = 5;
    private static final double[] POWER_CONTACT = {0.05, 10};
    private static final double[] SIGNAL_CONTACT = {1, 50};
    private static final double[] CELL_MILLIOHM = {0.3, 10};
    private static final double[] CELL_MILLIOHM_AH = {10, 60};
    private static final double SET = 0.05;

    private UsualRange() {}

    private static List<Datum<?>> of(Object... ends) {
        return Stream.of(ends).<Datum<?>>map(Datum::of).toList();
    }

    /** One mated contact in milliohm: all good, all worn, and the large ones worn beside small ones that are good. */
    static List<Datum<?>> contactMilliohm(Plug plug) {
        boolean power = plug.contactRatingA().or(0.0) >= POWER_CONTACT_A;
        double[] range = power ? POWER_CONTACT : SIGNAL_CONTACT;
        return of(range[0], range[1], power ? range[1] : range[0]);
    }

    /** One cell in milliohm: the larger the cell, the less. */
    static List<Datum<?>> cellMilliohm(PartRating rating) {
        double ah = rating.capacityAh().or(0.0);
        return ah > 0 ? of(CELL_MILLIOHM_AH[0] / ah, CELL_MILLIOHM_AH[1] / ah) : of(CELL_MILLIOHM[0], CELL_MILLIOHM[1]);
    }

    /** What a regulator is set to in V: near the voltage of its rail; nothing when that is not given either. */
    static List<Datum<?>> outputV(UnitType type, InnerPart part) {
        return type.rails().stream()
                .filter(rail -> rail.name().equals(part.to()))
                .map(Rail::nominalV)
                .filter(Datum::isKnown)
                .findFirst()
                .map(volts -> of(volts.or(0.0) * (1 - SET), volts.or(0.0) * (1 + SET)))
                .orElse(List.of());
    }

    /** Whether a part is a small resistance in the way of a current. */
    static boolean isLink(InnerPart part) {
        return part.kind()
                .known()
                .filter(Set.of(PartKind.FUSE, PartKind.LINK, PartKind.SWITCH, PartKind.SENSE_RESISTOR)::contains)
                .isPresent();
    }

    /** Rails of which a load of an event may be meant; nothing when there is only one. */
    static List<Datum<?>> rails(List<String> rails) {
        List<Datum<?>> all = new ArrayList<>();
        rails.stream().distinct().sorted().forEach(rail -> all.add(Datum.of(rail)));
        return all.size() > 1 ? all : List.of();
    }
}
