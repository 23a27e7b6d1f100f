package ringout.solve.power;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import ringout.graph.Part;
import ringout.graph.Wiring;
import ringout.model.PartRating;

/**
 * How long the packs last at one operating point, held all the time.
 *
 * <p>Common practice, no source: capacity times nominal voltage times the part that may be used, over the power of all
 * consumers. Losses in packs and leads are told apart, since figures of the trade leave them out.
 *
 * @param usableWh energy that may be taken from the packs in Wh
 * @param consumersW power of loads and regulators in W, losses in packs and leads apart
 * @param drawnW power drawn from the cells in W, all losses included
 */
public record Endurance(double usableWh, double consumersW, double drawnW) {
    private static final double MINUTES = 60;

    /**
     * {@return the endurance at an operating point; empty when a pack does not tell capacity or nominal voltage, or
     * nothing is drawn}
     *
     * @param usable part of the capacity that may be used, 0 to 1
     */
    public static Optional<Endurance> of(PowerFlow flow, double usable) {
        return of(flow.circuit().wiring(), flow.packs(), pack -> usable, flow.loads(), flow.regulators());
    }

    /**
     * {@return the endurance of some packs that feed some loads; empty when a pack does not tell capacity or nominal
     * voltage, or nothing is drawn}
     *
     * @param usable part of the capacity of a pack that may be used, 0 to 1
     * @param loads what they feed
     * @param regulators regulators between
     */
    public static Optional<Endurance> of(
            Wiring wiring,
            List<PackFigure> packs,
            ToDoubleFunction<PackFigure> usable,
            List<LoadFigure> loads,
            List<RegulatorFigure> regulators) {
        double wattHours = 0;
        double drawn = 0;
        for (PackFigure pack : packs) {
            OptionalDouble capacity = capacity(wiring, pack);
            OptionalDouble nominal = pack.source().volts().nominal();
            if (capacity.isEmpty() || nominal.isEmpty()) {
                return Optional.empty();
            }
            wattHours += capacity.getAsDouble() * nominal.getAsDouble() * usable.applyAsDouble(pack);
            drawn += pack.openVolts() * pack.amps();
        }
        double consumers = loads.stream().mapToDouble(LoadFigure::watts).sum()
                + regulators.stream().mapToDouble(RegulatorFigure::heat).sum();
        return consumers > 0 ? Optional.of(new Endurance(wattHours, consumers, drawn)) : Optional.empty();
    }

    private static OptionalDouble capacity(Wiring wiring, PackFigure pack) {
        if (pack.source().part() < 0
                || !(wiring.parts().get(pack.source().part()).origin() instanceof Part.Inner inner)) {
            return OptionalDouble.empty();
        }
        PartRating rating = inner.part().rating();
        return rating.capacityAh().isKnown()
                ? OptionalDouble.of(rating.capacityAh().or(0.0))
                : OptionalDouble.empty();
    }

    /** {@return minutes without losses in packs and leads} */
    public double minutes() {
        return MINUTES * usableWh / consumersW;
    }

    /** {@return minutes with all losses} */
    public double minutesWithLosses() {
        return MINUTES * usableWh / drawnW;
    }
}
