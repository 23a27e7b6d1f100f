package ringout.check.power;

import java.util.Optional;
import java.util.OptionalDouble;
import ringout.check.form.Figures;
import ringout.check.form.Situation;
import ringout.graph.Part;
import ringout.graph.power.PowerGraph;
import ringout.graph.power.PowerSource;
import ringout.graph.power.Volts;
import ringout.model.Datum;
import ringout.model.InnerPart;
import ringout.model.Origin;
import ringout.model.Rail;

/**
 * The least a regulator needs at its input to hold its output.
 *
 * @param volts in V
 * @param words how it comes about: {@code 5 V + 2 V dropout}
 * @param assumed whether it rests on an assumed figure
 */
record InputNeed(double volts, String words, boolean assumed) {
    /** Output plus dropout; without a dropout the lowest input voltage, unless that is under the output of a step-down type. */
    static Optional<InputNeed> of(Situation at, PowerSource source, Part part, InnerPart spec) {
        Datum<Double> set = spec.rating().outputV();
        OptionalDouble output =
                set.isKnown() ? OptionalDouble.of(set.or(0.0)) : source.volts().nominal();
        Datum<Double> dropout = spec.rating().dropoutV();
        if (output.isPresent() && dropout.isKnown()) {
            double needs = output.getAsDouble() + dropout.or(0.0);
            boolean assumed = set.source() == Origin.ASSUMED || dropout.source() == Origin.ASSUMED;
            String words = Figures.of(output) + " V + " + Figures.of(dropout.or(0.0)) + " V dropout";
            return Optional.of(new InputNeed(needs, words, assumed));
        }
        Datum<Double> least =
                InputDraft.limits(at, source, spec).map(Rail::minV).orElse(Datum.notAsked());
        boolean tells = dropout.isNotApplicable()
                || output.isEmpty()
                || least.or(0.0) > output.getAsDouble()
                || stepsUp(at, source, part, output.getAsDouble());
        return least.isKnown() && tells
                ? Optional.of(new InputNeed(
                        least.or(0.0), "lowest input voltage of the type", least.source() == Origin.ASSUMED))
                : Optional.empty();
    }

    private static boolean stepsUp(Situation at, PowerSource source, Part part, double output) {
        return PowerGraph.of(at.circuit())
                .between(part.from(), source.minus())
                .map(Volts::nominal)
                .filter(OptionalDouble::isPresent)
                .map(in -> in.getAsDouble() < output)
                .orElse(false);
    }
}
