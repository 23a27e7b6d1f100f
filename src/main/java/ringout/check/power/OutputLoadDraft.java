package ringout.check.power;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import ringout.check.form.Figures;
import ringout.check.form.Situation;
import ringout.check.form.Threshold;
import ringout.check.form.Thresholds;
import ringout.finding.Draft;
import ringout.graph.Trail;
import ringout.graph.power.PlacedLoad;
import ringout.graph.power.PowerGraph;
import ringout.graph.power.PowerSource;
import ringout.graph.power.SourceReach;
import ringout.model.Datum;
import ringout.model.PinRole;
import ringout.model.Rail;
import ringout.model.Unit;

/** Writes the finding that an output has to give more than it is rated for. */
final class OutputLoadDraft {
    private OutputLoadDraft() {}

    static Draft of(Situation at, OutputLoad load) {
        PowerSource source = load.source();
        Unit unit = at.directory().unit(source.unit());
        Verdict blamed = load.blamed();
        Draft draft = Draft.of(load.severity(), title(load))
                .about(source.name())
                .at(unit, "output")
                .path(PowerGraph.of(at.circuit()).tree().trailTo(source.plus()).orElse(Trail.NONE))
                .sum(sum(at, load))
                .judged(blamed.value(), blamed.limit(), "A", source(at, load))
                .input(source.rail().map(Rail::continuousA).orElse(Datum.notAsked()))
                .input(source.rail().map(Rail::peakA).orElse(Datum.notAsked()))
                .onAssumption(blamed.turns())
                .why(why(load))
                .meter(meter(at, load))
                .fix(fix(load))
                .explains("P31");
        for (PlacedLoad behind : SourceReach.of(at.circuit()).loads(source)) {
            (load.blamesPeak() ? LoadGaps.peakFigures(behind) : LoadGaps.averageFigures(behind)).forEach(draft::input);
        }
        outputs(at, source).stream()
                .flatMap(pin -> Supplies.leadsAt(at, List.of(pin)).stream())
                .distinct()
                .forEach(draft::seen);
        return draft;
    }

    private static String title(OutputLoad load) {
        String name = load.source().name();
        if (load.blamesPeak()) {
            return "regulator overloaded: " + name + " has to give "
                    + Figures.of(load.peak().value()) + " A at peak, rated for "
                    + Figures.of(load.peak().limit()) + " A";
        }
        String average = name + " has to give " + Figures.of(load.average().value()) + " A on average, ";
        return load.average().exceeds()
                ? "regulator overloaded: " + average + "rated for "
                        + Figures.of(load.average().limit()) + " A"
                : "regulator near its limit: " + average
                        + Figures.of(100 * load.average().use()) + " % of the "
                        + Figures.of(load.average().limit()) + " A it is rated for";
    }

    private static String sum(Situation at, OutputLoad load) {
        String derated = at.directory()
                .unit(load.source().unit())
                .derating()
                .known()
                .map(part -> "; ratings x " + Figures.of(part) + " for cooling and altitude")
                .orElse("");
        return "average " + load.flow().shares(load.source()) + " = "
                + Figures.of(load.average().value()) + " of " + limit(load.average()) + " A; peak "
                + load.highest().flow().shares(load.source()) + " = "
                + Figures.of(load.peak().value()) + " of "
                + limit(load.peak()) + " A (" + load.highest().of().words() + ")" + derated;
    }

    private static String limit(Verdict verdict) {
        return Double.isFinite(verdict.limit()) ? Figures.of(verdict.limit()) : "?";
    }

    private static String source(Situation at, OutputLoad load) {
        String data = "data of " + at.directory().unit(load.source().unit()).type();
        if (load.blamesPeak() || load.average().exceeds()) {
            return data;
        }
        Threshold share = at.limit(Thresholds.REGULATOR_SHARE);
        return data + ", " + Figures.of(share.value()) + " % of it: " + share.source();
    }

    private static String why(OutputLoad load) {
        return load.average().exceeds() || load.peak().exceeds()
                ? "it limits its current or shuts down: everything on its rail restarts together"
                : "no room for heat, age and loads that draw more than listed";
    }

    private static String meter(Situation at, OutputLoad load) {
        List<String> pins =
                outputs(at, load.source()).stream().map(at.wiring()::name).toList();
        String where = pins.size() == 1
                ? "clamp a meter around the lead at " + pins.get(0)
                : "clamp a meter around each lead at "
                        + at.directory().name(load.source().unit()) + " and add up";
        Verdict blamed = load.blamed();
        return where + (load.blamesPeak() ? ", peak hold: " : ": ") + Figures.of(blamed.limit()) + " A at most"
                + String.format(Locale.ROOT, " (%s A by the list)", Figures.of(blamed.value()));
    }

    /** Output pins of a source that have a conductor. */
    private static List<Integer> outputs(Situation at, PowerSource source) {
        List<Integer> pins = new ArrayList<>();
        for (int pin = at.wiring().firstPin(source.unit()); pin < at.wiring().endPin(source.unit()); pin++) {
            boolean supply = PowerGraph.isSupply(at.wiring().pin(pin).role().or(PinRole.NONE));
            if (supply && at.circuit().nets().same(pin, source.plus()) && Supplies.wired(at, pin)) {
                pins.add(pin);
            }
        }
        return pins;
    }

    private static String fix(OutputLoad load) {
        String name = load.source().name();
        if (load.blamesPeak()) {
            return "move a load of " + name + " to another supply, or fit a type for "
                    + Figures.of(load.peak().value())
                    + " A peak; if its loads never peak together, list as events which of them do";
        }
        return "move a load of " + name + " to another supply, or fit a type with a higher continuous rating";
    }
}
