package ringout.solve.power;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import ringout.graph.power.Load;
import ringout.graph.power.PlacedLoad;
import ringout.model.Datum;
import ringout.model.EventLoad;
import ringout.model.LoadLaw;
import ringout.solve.dc.Draw;
import ringout.text.Ranges;

/**
 * What a load draws in a case. A figure in watts is a constant power, a figure in amperes a constant current, unless the
 * load's law says otherwise; a peak and an idle figure in amperes are meant as they are said.
 */
final class LoadDraw {
    private final LoadCase of;
    private final PlacedLoad placed;
    private final Load load;
    private final OptionalDouble nominal;
    private final List<String> missing = new ArrayList<>();
    private final Optional<Draw> drawn;

    private LoadDraw(LoadCase of, String unit, PlacedLoad placed, OptionalDouble nominal) {
        this.of = of;
        this.placed = placed;
        this.load = placed.load();
        this.nominal = nominal;
        drawn = drawn(unit);
    }

    /**
     * {@return what a load draws, as far as its data tell}
     *
     * @param nominal voltage its figures are meant at, if known
     */
    static LoadDraw of(LoadCase of, String unit, PlacedLoad placed, OptionalDouble nominal) {
        return new LoadDraw(of, unit, placed, nominal);
    }

    /** {@return the draw; empty when it is not known at all} */
    Optional<Draw> draw() {
        return drawn;
    }

    /** {@return data that were missing for it} */
    List<String> missing() {
        return List.copyOf(missing);
    }

    private Optional<Draw> drawn(String unit) {
        for (EventLoad happening : of.event().map(event -> event.loads()).orElse(List.of())) {
            if (names(happening, unit)) {
                return during(happening);
            }
        }
        LoadLevel level = of.peaking().contains(unit) ? LoadLevel.PEAK : of.level();
        return switch (level) {
            case IDLE -> idle();
            case AVERAGE -> average();
            case PEAK -> peak();
        };
    }

    private boolean names(EventLoad happening, String unit) {
        boolean same = Ranges.items(List.of(happening.unit())).stream().anyMatch(unit::equalsIgnoreCase);
        return same && (!happening.rail().isKnown() || happening.rail().is(placed.rail()));
    }

    private Optional<Draw> during(EventLoad happening) {
        if (happening.amps().isKnown()) {
            return Optional.of(current(happening.amps().or(0.0)));
        }
        if (happening.watts().isKnown()) {
            return Optional.of(new Draw.ConstantPower(happening.watts().or(0.0)));
        }
        return happening.peak().or(true) ? peak() : average();
    }

    private Optional<Draw> idle() {
        if (load.idleA().isKnown()) {
            return Optional.of(current(load.idleA().or(0.0)));
        }
        if (load.idleA().isMissing()) {
            missing.add("current at rest on " + placed.rail());
        }
        return load.idleA().isMissing() ? average() : Optional.of(current(0));
    }

    private Optional<Draw> average() {
        Datum<Double> amps = load.averageA();
        Datum<Double> watts = load.averageW();
        boolean power = watts.isKnown() && (!amps.isKnown() || load.law().is(LoadLaw.POWER));
        if (power) {
            return Optional.of(ofPower(watts.or(0.0)));
        }
        if (amps.isKnown()) {
            return Optional.of(ofCurrent(amps.or(0.0)));
        }
        if (amps.isMissing() && !watts.isNotApplicable()) {
            missing.add("average current on " + placed.rail());
            return Optional.empty();
        }
        return Optional.of(current(0));
    }

    private Draw ofPower(double watts) {
        boolean known = nominal.isPresent() && watts > 0;
        if (known && load.law().is(LoadLaw.RESISTANCE)) {
            return new Draw.Resistive(nominal.getAsDouble() * nominal.getAsDouble() / watts);
        }
        if (known && load.law().is(LoadLaw.CURRENT)) {
            return current(watts / nominal.getAsDouble());
        }
        return new Draw.ConstantPower(watts);
    }

    private Draw ofCurrent(double amps) {
        boolean known = nominal.isPresent() && amps > 0;
        if (known && load.law().is(LoadLaw.RESISTANCE)) {
            return new Draw.Resistive(nominal.getAsDouble() / amps);
        }
        if (known && load.law().is(LoadLaw.POWER)) {
            return new Draw.ConstantPower(nominal.getAsDouble() * amps);
        }
        return current(amps);
    }

    private Optional<Draw> peak() {
        if (!load.peakA().isKnown()) {
            if (load.peakA().isMissing()) {
                missing.add("peak current on " + placed.rail());
            }
            return average();
        }
        double average = load.average(nominal).orElse(0);
        return Optional.of(current(Math.max(load.peakA().or(0.0), average)));
    }

    private static Draw current(double amps) {
        return new Draw.ConstantCurrent(amps);
    }
}
