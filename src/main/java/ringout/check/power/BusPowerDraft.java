package ringout.check.power;

import java.util.List;
import java.util.stream.Collectors;
import ringout.check.form.Figures;
import ringout.check.form.Situation;
import ringout.check.form.Threshold;
import ringout.finding.Draft;
import ringout.finding.Severity;
import ringout.graph.Trail;
import ringout.graph.power.PlacedLoad;
import ringout.graph.power.PowerGraph;
import ringout.graph.power.PowerSource;
import ringout.graph.power.SourceReach;

/** Writes the finding that a bus has to feed more than its plugs are made for. */
final class BusPowerDraft {
    private static final int NAMED = 6;

    private BusPowerDraft() {}

    /** Name of the plug of a contact. */
    static String plug(Situation at, int pin) {
        return at.wiring().plugName(at.wiring().unitOf(pin), at.wiring().plugIndex(pin));
    }

    static Draft connector(Situation at, BusPlugs plugs, int pin, Verdict verdict, Threshold most) {
        String name = plug(at, pin);
        String amps = Figures.of(verdict.value()) + " A";
        List<String> fed = plugs.behind(pin).stream()
                .map(consumer -> at.directory().name(consumer.unit()))
                .distinct()
                .toList();
        String units = fed.stream().limit(NAMED).collect(Collectors.joining(", "))
                + (fed.size() > NAMED ? " and " + (fed.size() - NAMED) + " more" : "");
        Draft draft = draft(
                        at,
                        pin,
                        "bus power overloaded: plug " + name + " carries " + amps + " for " + units + ", "
                                + Figures.of(most.value()) + " A at most")
                .about(name)
                .sum(amps + " through " + at.wiring().name(pin) + " at the peak of " + units)
                .judged(verdict.value(), verdict.limit(), "A", most.source())
                .onAssumption(verdict.turns())
                .why("the small contact heats up and drops voltage, the last unit of the chain restarts")
                .meter("clamp a meter around the supply conductor at " + name + ", peak hold: "
                        + Figures.of(most.value()) + " A at most when right")
                .fix(
                        fed.size() > 1
                                ? "feed some of " + units + " by a lead of their own"
                                : "feed " + units + " by a lead of its own");
        return figures(draft, plugs.loads(plugs.behind(pin)));
    }

    static Draft device(Situation at, BusPlugs plugs, List<Integer> pins, Verdict verdict, Threshold most) {
        String unit = at.directory().name(at.wiring().unitOf(pins.get(0)));
        String amps = Figures.of(verdict.value()) + " A";
        Draft draft = draft(
                        at,
                        pins.get(0),
                        "unit takes too much from the bus: " + unit + " takes " + amps + ", " + Figures.of(most.value())
                                + " A at most")
                .about(unit)
                .sum(amps + " net into " + pins.stream().map(at.wiring()::name).collect(Collectors.joining(" and ")))
                .judged(verdict.value(), verdict.limit(), "A", most.source())
                .onAssumption(verdict.turns())
                .why("it leaves nothing for the others of its chain")
                .meter("clamp a meter around the supply conductor at " + plug(at, pins.get(0)) + ", peak hold: "
                        + Figures.of(most.value()) + " A at most when right")
                .fix("feed " + unit + " by a lead of its own");
        return figures(draft, plugs.loads(at.wiring().unitOf(pins.get(0))));
    }

    static Draft voltage(Situation at, int pin, double volts, Threshold least) {
        String unit = at.directory().name(at.wiring().unitOf(pin));
        String gets = Figures.of(volts) + " V";
        return draft(
                        at,
                        pin,
                        "bus power too low: " + unit + " gets " + gets + " by the bus, " + Figures.of(least.value())
                                + " V at least")
                .about(unit)
                .sum(gets + " at " + at.wiring().name(pin)
                        + " when the loads of the bus peak, leads and contacts included")
                .judged(volts, least.value(), "V", least.source())
                .why("it restarts while the bus itself looks healthy")
                .meter("back-probe supply to 0V at " + plug(at, pin) + ": " + Figures.of(least.value())
                        + " V at least when right")
                .fix("thicker or shorter bus leads to " + unit + ", or a supply lead of its own");
    }

    private static Draft figures(Draft draft, List<PlacedLoad> loads) {
        loads.forEach(load -> LoadGaps.peakFigures(load).forEach(draft::input));
        return draft;
    }

    /** All that one bus supply has to carry too much of is one mistake. */
    private static Draft draft(Situation at, int pin, String title) {
        String supply = SourceReach.of(at.circuit()).feeding(pin).stream()
                .map(PowerSource::name)
                .findFirst()
                .orElse("?");
        Draft draft = Draft.of(Severity.S3, title)
                .path(PowerGraph.of(at.circuit()).tree().trailTo(pin).orElse(Trail.NONE))
                .cause("bus power of " + supply);
        Supplies.leadsAt(at, List.of(pin)).forEach(draft::seen);
        return draft.seen(at.directory().unit(at.wiring().unitOf(pin)));
    }
}
