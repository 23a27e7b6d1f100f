package ringout.check.power;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import ringout.check.form.Figures;
import ringout.check.form.Situation;
import ringout.finding.Draft;
import ringout.finding.Severity;
import ringout.graph.Part;
import ringout.graph.Trail;
import ringout.graph.power.PowerGraph;
import ringout.graph.power.PowerSource;
import ringout.model.Datum;
import ringout.model.InnerPart;
import ringout.model.PinRole;
import ringout.model.Rail;

/** Writes the finding that the input of a regulator gets too much or too little. */
final class InputDraft {
    private InputDraft() {}

    /** What the type says of the input of a regulator. */
    static Optional<Rail> limits(Situation at, PowerSource source, InnerPart spec) {
        return at.directory().type(source.unit()).rails().stream()
                .filter(rail -> rail.name().equals(spec.from()))
                .findFirst();
    }

    static Draft high(Situation at, PowerSource source, Part part, Verdict verdict, Datum<Double> most) {
        return draft(
                        at,
                        source,
                        part,
                        Severity.S1,
                        "regulator input too high: " + source.name() + " gets up to " + Figures.of(verdict.value())
                                + " V from " + packs(at, part) + ", stands " + Figures.of(verdict.limit()) + " V")
                .sum("full packs at rest " + Figures.of(verdict.value()) + " V, input stands "
                        + Figures.of(verdict.limit()) + " V")
                .judged(verdict.value(), verdict.limit(), "V", data(at, source))
                .input(most)
                .onAssumption(verdict.turns())
                .why("it burns at the first full pack, and may pass its input on to everything behind it")
                .meter("lead off " + pin(at, source, part) + ", packs full: " + Figures.of(verdict.limit())
                        + " V at most when right, " + Figures.of(verdict.value()) + " V now")
                .fix("fit a regulator for " + Figures.of(verdict.value()) + " V and more in place of "
                        + at.directory().name(source.unit()) + ", or feed it from a lower rail");
    }

    static Draft low(Situation at, PowerSource source, Part part, Verdict verdict, InputNeed need) {
        double gets = verdict.limit();
        return draft(
                        at,
                        source,
                        part,
                        Severity.S2,
                        "regulator input too low: " + source.name() + " gets down to " + Figures.of(gets) + " V from "
                                + packs(at, part) + ", needs " + Figures.of(verdict.value()) + " V")
                .sum("needs " + need.words() + " = " + Figures.of(verdict.value()) + " V; gets " + Figures.of(gets)
                        + " V with empty packs and all loads at their peak, leads and contacts included")
                .judged(gets, verdict.value(), "V", data(at, source))
                .onAssumption(verdict.turns())
                .why("its output sinks with its input, and everything behind it restarts when the packs get empty")
                .meter("packs nearly empty, loads on: volts at " + pin(at, source, part) + ", "
                        + Figures.of(verdict.value()) + " V at least when right")
                .fix("fit a regulator with a lower dropout in place of "
                        + at.directory().name(source.unit())
                        + ", feed it from a higher rail, or land at a higher pack voltage");
    }

    private static Draft draft(Situation at, PowerSource source, Part part, Severity severity, String title) {
        Draft draft = Draft.of(severity, title)
                .about(source.name())
                .seen(at.directory().unit(source.unit()))
                .path(PowerGraph.of(at.circuit()).tree().trailTo(part.from()).orElse(Trail.NONE))
                .explains("P18");
        List<Integer> inputs = inputs(at, source, part);
        Supplies.leadsAt(at, inputs).forEach(draft::at);
        return inputs.isEmpty() ? draft.cause(at.directory().name(source.unit()) + "/input") : draft;
    }

    private static String packs(Situation at, Part part) {
        return PowerGraph.of(at.circuit()).feeding(part.from()).stream()
                .map(feeding -> Supplies.stack(at, feeding))
                .collect(Collectors.joining(" and "));
    }

    private static String data(Situation at, PowerSource source) {
        return "data of " + at.directory().unit(source.unit()).type();
    }

    private static List<Integer> inputs(Situation at, PowerSource source, Part part) {
        List<Integer> pins = new ArrayList<>();
        for (int pin = at.wiring().firstPin(source.unit()); pin < at.wiring().endPin(source.unit()); pin++) {
            boolean supply = PowerGraph.isSupply(at.wiring().pin(pin).role().or(PinRole.NONE));
            if (supply && at.circuit().nets().same(pin, part.from()) && Supplies.wired(at, pin)) {
                pins.add(pin);
            }
        }
        return pins;
    }

    private static String pin(Situation at, PowerSource source, Part part) {
        List<Integer> pins = inputs(at, source, part);
        return pins.isEmpty() ? source.name() : at.wiring().name(pins.get(0));
    }
}
