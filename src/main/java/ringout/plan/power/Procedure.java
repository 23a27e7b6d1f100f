package ringout.plan.power;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.IntPredicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import ringout.graph.Circuit;
import ringout.graph.order.BuildPlan;
import ringout.graph.order.PlanStep;
import ringout.graph.order.StepKind;
import ringout.model.UnitKind;

/** What the written procedure says of the first power-up. */
final class Procedure {
    private static final Pattern VOLTS = Pattern.compile("(\\d+(?:[.,]\\d+)?)\\s*v(?:olt)?s?\\b");
    private static final Pattern LIMIT = Pattern.compile("limit\\s+(\\d+(?:[.,]\\d+)?)\\s*a\\b");

    private final Circuit circuit;
    private final List<PlanStep> steps;

    Procedure(Circuit circuit) {
        this.circuit = circuit;
        this.steps = BuildPlan.of(circuit).steps(StepKind.ENERGISE);
    }

    /** {@return the step that powers one of these units} */
    Optional<PlanStep> powering(List<Integer> units) {
        return steps.stream()
                .filter(step -> units.stream().anyMatch(unit -> BuildPlan.names(step, unit)))
                .findFirst();
    }

    /** {@return the first step that powers anything, when it is not the packs or the motors} */
    Optional<PlanStep> first() {
        return steps.stream()
                .findFirst()
                .filter(step -> !names(step, UnitKind.PACK) && !names(step, UnitKind.SPEED_CONTROLLER));
    }

    /** {@return the step that powers units of a kind} */
    Optional<PlanStep> powering(UnitKind kind) {
        return steps.stream().filter(step -> names(step, kind)).findFirst();
    }

    private boolean names(PlanStep step, UnitKind kind) {
        IntPredicate named =
                unit -> circuit.wiring().directory().type(unit).kind().is(kind);
        int units = circuit.wiring().directory().count();
        for (int unit = 0; unit < units; unit++) {
            if (named.test(unit) && BuildPlan.names(step, unit)) {
                return true;
            }
        }
        return false;
    }

    /** {@return the volts a step sets a supply to} */
    static OptionalDouble volts(Optional<PlanStep> step) {
        return find(step, VOLTS);
    }

    /** {@return the current limit a step sets a supply to} */
    static OptionalDouble limit(Optional<PlanStep> step) {
        return find(step, LIMIT);
    }

    private static OptionalDouble find(Optional<PlanStep> step, Pattern wanted) {
        String words = step.map(one ->
                        one.step().attribute().or("") + " " + one.step().says().or(""))
                .orElse("")
                .toLowerCase(Locale.ROOT);
        Matcher found = wanted.matcher(words);
        return found.find()
                ? OptionalDouble.of(Double.parseDouble(found.group(1).replace(',', '.')))
                : OptionalDouble.empty();
    }
}
