package ringout.check.power;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import ringout.check.form.Figures;
import ringout.check.form.Situation;
import ringout.finding.Draft;
import ringout.finding.Severity;
import ringout.graph.Trail;
import ringout.graph.power.PlacedLoad;
import ringout.graph.power.PowerGraph;
import ringout.graph.power.PowerSource;
import ringout.model.Datum;
import ringout.model.Event;
import ringout.model.Rail;
import ringout.solve.power.LoadFigure;
import ringout.solve.power.OperatingPoint;

/** Writes the finding that a declared event overloads a supply or starves a unit. */
final class EventDraft {
    private static final int NAMED = 5;

    /**
     * A unit that gets too little during an event.
     *
     * @param figure what it gets
     * @param least what it takes at least
     */
    record Starved(LoadFigure figure, Datum<Double> least) {
        double lacks() {
            return least.or(0.0) - figure.volts();
        }
    }

    private EventDraft() {}

    static Draft output(
            Situation at, EventOverload.Happening happening, PowerSource source, Verdict verdict, boolean lasting) {
        String name = happening.event().name();
        String amps = Figures.of(verdict.value()) + " A";
        String rated = Figures.of(verdict.limit()) + " A" + (lasting ? " continuous" : " peak");
        Severity severity = EventOverload.critical(at, source) ? Severity.S2 : Severity.S3;
        return Draft.of(
                        severity,
                        "event overloads a supply: during " + name + " " + source.name() + " has to give " + amps
                                + ", rated for " + rated)
                .about(name, source.name())
                .at(at.directory().unit(source.unit()), "output")
                .path(PowerGraph.of(at.circuit()).tree().trailTo(source.plus()).orElse(Trail.NONE))
                .sum(happening.during().shares(source) + " = " + amps + " during " + name + seconds(happening) + ", "
                        + Figures.of(happening.before().amps(source)) + " A without it; rated for " + rated)
                .judged(
                        verdict.value(),
                        verdict.limit(),
                        "A",
                        "data of " + at.directory().unit(source.unit()).type())
                .input(source.rail().map(Rail::continuousA).orElse(Datum.notAsked()))
                .input(source.rail().map(Rail::peakA).orElse(Datum.notAsked()))
                .onAssumption(verdict.turns())
                .why("it limits its current or shuts down just then: everything on its rail restarts together")
                .meter("clamp a meter around its output while " + name + " goes on, peak hold: "
                        + Figures.of(verdict.limit()) + " A at most when right")
                .fix("move a load of " + name + " to another supply, let its loads start one after the other, or fit a "
                        + "type for " + amps + " in place of " + at.directory().name(source.unit()));
    }

    private static String seconds(EventOverload.Happening happening) {
        OptionalDouble seconds = happening.seconds();
        return seconds.isPresent() ? " (" + Figures.of(seconds) + " s)" : "";
    }

    static Draft starved(Situation at, EventOverload.Happening happening, List<Starved> starved) {
        Starved worst = starved.get(0);
        for (Starved one : starved) {
            worst = one.lacks() > worst.lacks() ? one : worst;
        }
        String event = happening.event().name();
        List<String> names =
                starved.stream().map(one -> name(at, one.figure().load())).toList();
        boolean critical = starved.stream()
                .anyMatch(one -> at.flightCritical(
                        at.directory().name(one.figure().load().unit())));
        PlacedLoad load = worst.figure().load();
        String gets = Figures.of(worst.figure().volts()) + " V";
        String needs = Figures.of(worst.least().or(0.0)) + " V";
        double before = happening.before().load(load).map(LoadFigure::volts).orElse(0.0);
        Draft draft = Draft.of(
                        critical ? Severity.S2 : Severity.S3,
                        "event starves a unit: during " + event + " " + name(at, load) + " gets " + gets
                                + ", takes " + needs + " at least"
                                + (names.size() > 1 ? ", and " + (names.size() - 1) + " more" : ""))
                .about(event)
                .about(names)
                .path(PowerGraph.of(at.circuit()).tree().trailTo(load.plus()).orElse(Trail.NONE))
                .sum(starved.stream()
                                .limit(NAMED)
                                .map(one -> name(at, one.figure().load()) + " "
                                        + Figures.of(one.figure().volts()) + " of "
                                        + Figures.of(one.least().or(0.0)) + " V")
                                .collect(Collectors.joining(", "))
                        + " with empty packs during " + event + "; " + name(at, load) + " " + Figures.of(before)
                        + " V without it")
                .judged(
                        worst.figure().volts(),
                        worst.least().or(0.0),
                        "V",
                        "data of " + at.directory().unit(load.unit()).type())
                .input(worst.least())
                .why("it stops or restarts just then")
                .meter("packs nearly empty, volts at " + name(at, load) + " while " + event + " goes on: " + needs
                        + " at least when right")
                .fix("let the loads of " + event + " start one after the other, shorten or thicken the leads they share"
                        + " with " + name(at, load) + ", or land at a higher pack voltage");
        for (Starved one : starved) {
            draft.seen(at.directory().unit(one.figure().load().unit()))
                    .cause(name(at, one.figure().load()) + "/low");
        }
        return draft;
    }

    static Draft collapse(Situation at, Event event, OperatingPoint.Collapse collapse) {
        String part = Figures.of(100 * collapse.margin());
        Draft draft = Draft.of(
                        Severity.S2,
                        "event collapses the voltage: during " + event.name() + " packs and leads carry only " + part
                                + " % of what the loads ask, " + collapse.limiting() + " gives way first")
                .about(event.name())
                .sum("no operating point with empty packs; all loads scaled together: " + part + " % can be carried")
                .judged(100 * collapse.margin(), 100, "%", "operating point of constant-power loads")
                .why("the voltage runs down until regulators and controllers stop, all at once")
                .meter("do not try it in flight: log the pack voltage on the stand while the loads of " + event.name()
                        + " come one by one")
                .fix("take loads out of " + event.name() + ", or packs and leads of lower resistance")
                .cause(collapse.limiting() + "/low");
        if (collapse.unit() >= 0) {
            draft.seen(at.directory().unit(collapse.unit()));
        }
        return draft;
    }

    /** Name of a load: its unit, and its rail when the unit has several. */
    private static String name(Situation at, PlacedLoad load) {
        String unit = at.directory().name(load.unit());
        boolean several = PowerGraph.of(at.circuit()).loads().stream()
                .anyMatch(other -> other.unit() == load.unit() && !other.rail().equals(load.rail()));
        return several ? unit + " rail " + load.rail() : unit;
    }
}
