package ringout.check.power;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import ringout.check.form.Situation;
import ringout.check.form.Thresholds;
import ringout.graph.power.PlacedLoad;
import ringout.graph.power.PowerSource;
import ringout.graph.power.SourceReach;
import ringout.solve.power.Endurance;
import ringout.solve.power.LoadFigure;
import ringout.solve.power.PackFigure;
import ringout.solve.power.PowerFlow;
import ringout.solve.power.RegulatorFigure;

/**
 * How long packs that empty together last: usable part, cold and health of each as in {@link ReserveTooShort}.
 *
 * @param name their names: {@code BAT1 + BAT2}
 * @param packs the packs
 * @param loads what they feed, directly or through regulators
 * @param endurance how long they last; empty when capacity or nominal voltage is not known or nothing is drawn
 */
public record PackEndurance(
        String name, List<PowerSource> packs, List<PlacedLoad> loads, Optional<Endurance> endurance) {
    /** Keeps unmodifiable copies. */
    public PackEndurance {
        packs = List.copyOf(packs);
        loads = List.copyOf(loads);
    }

    /** {@return the packs of a situation in groups that empty together, at an operating point} */
    public static List<PackEndurance> all(Situation at, PowerFlow flow) {
        return PackGroup.all(at).stream()
                .map(group -> new PackEndurance(group.name(at), group.packs(), group.loads(), of(at, flow, group)))
                .toList();
    }

    static Optional<Endurance> of(Situation at, PowerFlow flow, PackGroup group) {
        List<PackFigure> packs = flow.packs().stream()
                .filter(figure -> group.packs().contains(figure.source()))
                .toList();
        Set<Integer> fed = new HashSet<>();
        group.loads().forEach(load -> fed.add(load.index()));
        List<LoadFigure> loads = flow.loads().stream()
                .filter(figure -> fed.contains(figure.load().index()))
                .toList();
        SourceReach reach = SourceReach.of(at.circuit());
        List<RegulatorFigure> regulators = flow.regulators().stream()
                .filter(regulator -> regulator.source().inputs().stream()
                        .flatMap(input -> reach.above(input).stream())
                        .anyMatch(group.packs()::contains))
                .toList();
        return Endurance.of(at.wiring(), packs, figure -> usable(at, figure), loads, regulators);
    }

    /** The part of the capacity of a pack that may be used, 0 to 1. */
    private static double usable(Situation at, PackFigure figure) {
        double health =
                at.directory().unit(figure.source().unit()).healthPercent().or(100.0);
        return at.limit(Thresholds.PACK_USABLE).value() / 100 * Reserve.cold(at) * health / 100;
    }
}
