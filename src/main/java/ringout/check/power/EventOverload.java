package ringout.check.power;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import ringout.check.form.CheckInfo;
import ringout.check.form.Gaps;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.check.form.Thresholds;
import ringout.check.form.Weighing;
import ringout.finding.Severity;
import ringout.graph.Gap;
import ringout.graph.power.Consumer;
import ringout.graph.power.PlacedLoad;
import ringout.graph.power.PowerGraph;
import ringout.graph.power.PowerSource;
import ringout.graph.power.SourceReach;
import ringout.model.Datum;
import ringout.model.Event;
import ringout.model.EventLoad;
import ringout.model.Origin;
import ringout.model.Rail;
import ringout.solve.power.LoadCase;
import ringout.solve.power.LoadFigure;
import ringout.solve.power.OperatingPoint;
import ringout.solve.power.PackCharge;

/**
 * A declared event in which loads that peak together overload a supply or starve a unit.
 *
 * <p>Why it matters: each load alone is fine and every bench test passes; gear up, gimbal start and the link at full power together
 * pull the rail down, at the moment when nobody has a hand free.
 *
 * <p>Formula: operating point with empty packs, the loads of the event as it says, all others at their average; current of each
 * output in A against its peak rating, or its continuous rating when the event lasts longer than 10 s; voltage of each unit in V
 * against the least it takes. Only what the event makes worse counts: a unit that is starved at average loads has its own finding.
 *
 * <p>Does not see: events that nobody declares; peaks of loads that no event names (P19, P29).
 *
 * <p>Reference: maker's data of outputs and units; common practice, no source.
 */
@CheckInfo(
        code = "P31",
        name = "event-overloads-supply",
        severity = Severity.S2,
        since = "0.1",
        solves = true,
        needs = {
            "current of each load of an event, and how long it lasts",
            "average current of all other loads",
            "continuous and peak rating of each regulator output",
            "supply range of each unit",
            "voltage of an empty cell",
            "resistance of a cell",
            "size and length of supply leads"
        })
public final class EventOverload implements Weighing {
    static final String LASTS = "time of the event";
    private static final double NOTICED = 0.01;
    private static final LoadCase QUIET = LoadCase.AVERAGE.with(PackCharge.EMPTY);

    @Override
    public void look(Situation at, Outcomes out) {
        List<Event> events = at.aircraft().events().stream()
                .filter(event -> aboard(at, event))
                .toList();
        if (events.isEmpty()) {
            return;
        }
        Gaps gaps = new Gaps();
        gaps.add(empties(at));
        Optional<Flowing> quiet = Flowing.of(at, QUIET, gaps);
        LoadGaps missing = LoadGaps.of(at);
        for (Event event : events) {
            LoadCase of = QUIET.during(event);
            if (at.operatingPoint(of) instanceof OperatingPoint.Collapse collapse && quiet.isPresent()) {
                out.finding(EventDraft.collapse(at, event, collapse));
            } else if (quiet.isPresent()) {
                Flowing.of(at, of, gaps)
                        .ifPresent(flow -> judge(
                                at,
                                out,
                                gaps,
                                missing,
                                new Happening(event, PeakCase.named(event), quiet.get(), flow)));
            }
        }
        gaps.tell(out, PowerData::way);
    }

    /**
     * An event going on.
     *
     * @param event the event
     * @param named its loads by unit
     * @param before what flows without it
     * @param during what flows while it lasts
     */
    record Happening(Event event, Map<String, EventLoad> named, Flowing before, Flowing during) {
        /** How long it lasts in s; empty when one of its loads does not tell. */
        OptionalDouble seconds() {
            boolean told =
                    event.loads().stream().allMatch(load -> load.seconds().isKnown());
            return told
                    ? event.loads().stream()
                            .mapToDouble(load -> load.seconds().or(0.0))
                            .max()
                    : OptionalDouble.empty();
        }
    }

    private static boolean aboard(Situation at, Event event) {
        Map<String, EventLoad> named = PeakCase.named(event);
        return PowerGraph.of(at.circuit()).loads().stream()
                .anyMatch(load -> at.circuit().aboard(load.unit())
                        && PeakCase.spoken(at, named, load).isPresent());
    }

    /** Packs of which nobody tells the voltage when empty, or the resistance. */
    static List<Gap> empties(Situation at) {
        Set<Gap> open = new LinkedHashSet<>();
        for (PowerSource source : PowerGraph.of(at.circuit()).sources()) {
            if (source.kind() == PowerSource.Kind.PACK
                    && PowerGraph.of(at.circuit()).works(source)) {
                source.missing().stream()
                        .filter(gap -> !gap.datum().contains("full"))
                        .forEach(open::add);
                if (!source.milliohm().isKnown()) {
                    open.add(new Gap(PowerData.PACK_OHM, at.directory().name(source.unit())));
                }
            }
        }
        return List.copyOf(open);
    }

    private static void judge(Situation at, Outcomes out, Gaps gaps, LoadGaps missing, Happening happening) {
        List<Gap> open = new ArrayList<>(unsaid(at, happening.named()));
        boolean found = false;
        for (PowerSource source : PowerGraph.of(at.circuit()).sources()) {
            boolean raised =
                    happening.during().amps(source) > happening.before().amps(source) * (1 + NOTICED);
            if (raised && source.kind() != PowerSource.Kind.PACK) {
                found |= output(at, out, open, missing, happening, source);
            }
        }
        found |= starved(at, out, open, happening);
        if (!open.isEmpty()) {
            gaps.add(open.stream().distinct().toList());
        } else if (!found) {
            out.looked();
        }
    }

    /** Loads of the event that take their peak, which nobody tells. */
    private static List<Gap> unsaid(Situation at, Map<String, EventLoad> named) {
        Set<Gap> open = new LinkedHashSet<>();
        for (PlacedLoad load : PowerGraph.of(at.circuit()).loads()) {
            boolean peaks = PeakCase.spoken(at, named, load)
                    .filter(said -> !said.amps().isKnown()
                            && !said.watts().isKnown()
                            && said.peak().or(true))
                    .isPresent();
            if (peaks && load.load().peakA().isMissing() && at.circuit().aboard(load.unit())) {
                open.add(new Gap(PowerData.PEAK, at.directory().name(load.unit())));
            }
        }
        return List.copyOf(open);
    }

    /** Whether an output is overloaded and that is told. */
    private static boolean output(
            Situation at, Outcomes out, List<Gap> open, LoadGaps missing, Happening happening, PowerSource source) {
        double amps = happening.during().amps(source);
        Datum<Double> continuous = source.rail().map(Rail::continuousA).orElse(Datum.notAsked());
        Datum<Double> peak = source.rail().map(Rail::peakA).orElse(Datum.notAsked());
        double derating = at.directory().unit(source.unit()).derating().or(1.0);
        OptionalDouble seconds = happening.seconds();
        boolean lasting = seconds.isPresent()
                && seconds.getAsDouble()
                        > at.limit(Thresholds.REGULATOR_PEAK_TIME).value();
        Datum<Double> rating = lasting || !peak.isKnown() ? continuous : peak;
        double rests =
                happening.during().assumedPart(SourceReach.of(at.circuit()).loads(source), LoadGaps::averageFigures);
        Verdict verdict = new Verdict(
                amps, rating.or(Double.POSITIVE_INFINITY) * derating, rests, rating.source() == Origin.ASSUMED);
        boolean unrated = !lasting && !peak.isKnown();
        if (verdict.exceeds() && !missing.guessed(source) && !unrated) {
            out.finding(EventDraft.output(at, happening, source, verdict, lasting));
            return true;
        }
        if (rating.isMissing() || (verdict.exceeds() && unrated)) {
            String datum =
                    lasting || !continuous.isKnown() ? RegulatorOverloaded.CONTINUOUS : RegulatorOverloaded.PEAK_RATING;
            open.add(new Gap(datum, source.name()));
        } else if (seconds.isEmpty() && amps > continuous.or(0.0) * derating) {
            open.add(new Gap(LASTS, happening.event().name()));
        } else if (verdict.turns()) {
            open.add(new Gap(PowerData.DECIDES, source.name()));
        }
        open.addAll(missing.average(source));
        return false;
    }

    /** Whether units are starved by the event and that is told. */
    private static boolean starved(Situation at, Outcomes out, List<Gap> open, Happening happening) {
        List<EventDraft.Starved> starved = new ArrayList<>();
        boolean unsized = happening.during().unsized();
        for (LoadFigure figure : happening.during().flow().loads()) {
            PlacedLoad load = figure.load();
            double before = happening.before().load(load).map(LoadFigure::volts).orElse(0.0);
            Datum<Double> least = load.limits().map(Rail::minV).orElse(Datum.notAsked());
            boolean falls = before - figure.volts() > NOTICED * before;
            if (falls && least.isMissing()) {
                open.add(new Gap(PowerData.SUPPLY_RANGE, at.directory().name(load.unit())));
            }
            if (least.isKnown() && figure.volts() < least.or(0.0) && before >= least.or(0.0)) {
                SupplyWay way = SupplyWay.of(at, load.plus(), load.zero());
                if (figure.volts() + way.guessedVolts(happening.during().flow()) < least.or(0.0)) {
                    starved.add(new EventDraft.Starved(figure, least));
                } else {
                    open.addAll(way.guessedContacts());
                }
            } else if (unsized
                    && (falls || PeakCase.spoken(at, happening.named(), load).isPresent())) {
                open.addAll(SupplyWay.of(at, load.plus(), load.zero()).unsized());
            }
        }
        if (!starved.isEmpty()) {
            out.finding(EventDraft.starved(at, happening, starved));
        }
        return !starved.isEmpty();
    }

    /** Whether flight depends on what a source feeds. */
    static boolean critical(Situation at, PowerSource source) {
        for (Consumer consumer : SourceReach.of(at.circuit()).consumers(source)) {
            if (at.flightCritical(at.directory().name(consumer.unit()))) {
                return true;
            }
        }
        return false;
    }
}
