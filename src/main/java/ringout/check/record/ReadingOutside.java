package ringout.check.record;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import ringout.check.form.Check;
import ringout.check.form.CheckInfo;
import ringout.check.form.Figures;
import ringout.check.form.Gaps;
import ringout.check.form.Outcomes;
import ringout.check.form.RecordThresholds;
import ringout.check.form.Situation;
import ringout.finding.Draft;
import ringout.finding.Place;
import ringout.finding.Severity;
import ringout.graph.order.BuildPlan;
import ringout.graph.order.PlanStep;
import ringout.model.PlannedTest;
import ringout.solve.meter.Expected;
import ringout.solve.meter.Meaning;
import ringout.solve.meter.OhmsQuestion;
import ringout.solve.meter.Reading;
import ringout.solve.meter.VoltsQuestion;

/**
 * A reading that is missing, or outside what the list lets expect.
 *
 * <p>Why it matters: either the aircraft is not as the list says, or the list is wrong; a test without a reading proves nothing.
 *
 * <p>Condition: a resistance or voltage on record lies outside the band that is computed from the list for its two points, its
 * state and its pulled plugs, with the error of a hand-held meter allowed for; nothing typed as expected is believed. Up to
 * 0.3 ohm above the band is put down to leads of the meter that were not zeroed; from 1 Mohm a reading counts as open. Where
 * readings are on record, a planned measurement whose step is done has one. The latest reading of a place counts. S2 where
 * flight depends on a unit at the points.
 *
 * <p>Does not see: currents, millivolt drops, readings of places that are not two pins.
 *
 * <p>Reference: computed from the list; error of the meter: common practice, no source.
 */
@CheckInfo(
        code = "X08",
        name = "reading-missing-or-outside",
        severity = Severity.S3,
        since = "0.3",
        needs = {"value, state and pins of the reading", "what the expected value rests on"})
public final class ReadingOutside implements Check {
    private static final int FAULTS = 4;

    @Override
    public void look(Situation at, Outcomes out) {
        if (at.aircraft().record().readings().isEmpty()) {
            return;
        }
        Gaps gaps = new Gaps();
        Measured measured = new Measured(at, gaps);
        List<Measured.Spot> spots = measured.all();
        spots.forEach(spot -> look(at, out, spot, gaps));
        for (PlannedTest test : due(at)) {
            if (spots.stream().noneMatch(spot -> measured.covers(spot, test))) {
                out.finding(missing(test));
            }
        }
        gaps.tell(out, datum -> new Gaps.Way("ask who measured, or measure again", 2));
    }

    private static void look(Situation at, Outcomes out, Measured.Spot spot, Gaps gaps) {
        if (!spot.row().value().isKnown()) {
            if (spot.row().value().isMissing()) {
                gaps.add("value", spot.name());
            }
            return;
        }
        Expected expected = spot.ohms()
                ? Expected.ohms(spot.circuit(), spot.a(), spot.b())
                : Expected.volts(spot.circuit(), spot.a(), spot.b());
        boolean told = expected.reading().connected() || expected.reading() instanceof Reading.NoConnection;
        if (!told || !expected.inside().isEmpty()) {
            gaps.add("expected value, which hangs on what is inside units,", spot.name());
        } else if (!expected.gaps().isEmpty()) {
            expected.gaps()
                    .forEach(gap ->
                            gaps.add(gap.datum() + " of " + gap.of() + ", needed for the expected value", spot.name()));
        } else if (fits(at, expected, spot)) {
            out.looked();
        } else {
            out.finding(outside(at, expected, spot));
        }
    }

    private static double shown(Situation at, Measured.Spot spot) {
        double value = spot.row().value().or(0.0);
        return spot.ohms() && value >= at.limit(RecordThresholds.METER_OPEN).value() ? Double.POSITIVE_INFINITY : value;
    }

    private static boolean fits(Situation at, Expected expected, Measured.Spot spot) {
        double shown = shown(at, spot);
        double leads = at.limit(RecordThresholds.METER_LEADS).value();
        boolean notZeroed = spot.ohms()
                && expected.reading() instanceof Reading.Ohms band
                && shown > band.most()
                && expected.admits(Math.max(band.most(), shown - leads));
        return expected.admits(shown) || notZeroed;
    }

    private static Draft outside(Situation at, Expected expected, Measured.Spot spot) {
        String unit = spot.ohms() ? "ohm" : "V";
        String from = at.wiring().name(spot.a());
        String to = at.wiring().name(spot.b());
        double shown = shown(at, spot);
        String read = Double.isInfinite(shown) ? "open" : Figures.of(shown) + " " + unit;
        String band = band(expected.reading(), unit);
        String pulled = spot.row().pulled().isEmpty()
                ? ""
                : ", pulled: " + String.join(", ", spot.row().pulled());
        String told = meaning(spot, shown);
        return Draft.of(
                        severity(at, spot),
                        "reading outside: " + from + " to " + to + " read " + read + ", expected " + band)
                .about(from, to, unit)
                .at(place(spot))
                .cause("reading " + from + " " + to)
                .sum(read + " read in state " + at.state() + pulled + "; computed from the list: " + band)
                .source("computed from the list; "
                        + at.limit(RecordThresholds.METER_LEADS).source())
                .input(spot.row().value())
                .why(
                        told.isEmpty()
                                ? "the aircraft is not as the list says, or the list is wrong"
                                : "this is what a meter shows with: " + told)
                .meter("zero the leads and measure " + from + " to " + to + " again" + pulled)
                .fix("find what makes " + read + " between " + from + " and " + to + ", or correct the list");
    }

    private static String band(Reading expected, String unit) {
        if (expected instanceof Reading.Ohms ohms) {
            return Figures.of(ohms.least()) + " to " + Figures.of(ohms.most()) + " " + unit;
        }
        return expected instanceof Reading.Volts volts
                ? Figures.of(volts.least()) + " to " + Figures.of(volts.most()) + " " + unit
                : "open";
    }

    /** Single faults that make a meter show the value. */
    private static String meaning(Measured.Spot spot, double shown) {
        List<Meaning> meanings = spot.ohms()
                ? OhmsQuestion.ask(spot.circuit(), spot.a(), spot.b(), List.of())
                        .meanings()
                : VoltsQuestion.ask(spot.circuit(), spot.a(), spot.b(), Optional.empty())
                        .meanings();
        return meanings.stream()
                .filter(meaning -> new Expected(band(meaning), List.of(), List.of()).admits(shown))
                .flatMap(meaning -> meaning.faults().stream())
                .limit(FAULTS)
                .map(fault -> fault.kind().name().toLowerCase(Locale.ROOT).replace('_', ' ') + " at " + fault.object())
                .distinct()
                .collect(Collectors.joining(", or "));
    }

    private static Reading band(Meaning meaning) {
        if (meaning.first() instanceof Reading.Ohms ohms) {
            return new Reading.Ohms(ohms.ohm(), meaning.least(), meaning.most());
        }
        return meaning.first() instanceof Reading.Volts volts
                ? new Reading.Volts(volts.volts(), meaning.least(), meaning.most())
                : meaning.first();
    }

    private static Severity severity(Situation at, Measured.Spot spot) {
        return critical(at, spot.a()) || critical(at, spot.b()) ? Severity.S2 : Severity.S3;
    }

    private static boolean critical(Situation at, int vertex) {
        int unit = at.wiring().unitOf(vertex);
        return unit >= 0 && at.flightCritical(at.directory().name(unit));
    }

    private static Place place(Measured.Spot spot) {
        return new Place(spot.row().at(), spot.row().where(), spot.name());
    }

    /** Planned measurements that ought to be done by now: their step, or a later one, is. */
    private static List<PlannedTest> due(Situation at) {
        BuildPlan plan = BuildPlan.of(at.circuit());
        int last = -1;
        for (PlanStep step : plan.steps()) {
            last = step.step().done().isKnown() ? step.index() : last;
        }
        List<PlannedTest> due = new ArrayList<>();
        for (PlannedTest test : at.aircraft().record().tests()) {
            boolean measured = test.kind().is("ohms") || test.kind().is("volts");
            Optional<PlanStep> step = test.step().known().flatMap(plan::step);
            boolean done = step.isPresent() && step.get().index() <= last;
            if (measured && done && test.state().or(at.state()).equals(at.state())) {
                due.add(test);
            }
        }
        return due;
    }

    private static Draft missing(PlannedTest test) {
        String pins = String.join(" to ", test.pins());
        return Draft.of(
                        Severity.S3,
                        "reading missing: test " + test.id() + ", " + pins + ", is done and has no reading")
                .about("test " + test.id())
                .at(new Place(test.at(), test.id(), "test " + test.id() + ": " + pins))
                .cause("test " + test.id() + "/reading")
                .sum("step " + test.step().or("") + " or a later one is done; readings of " + pins + " on record: 0")
                .why("a test without a reading proves nothing")
                .fix("take the readings that are missing and write down the value, not OK");
    }
}
