package ringout.check.power;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import ringout.check.form.Situation;
import ringout.finding.Draft;
import ringout.finding.Severity;
import ringout.graph.Trail;
import ringout.graph.power.PowerGraph;
import ringout.graph.power.PowerSource;
import ringout.model.Lead;

/** Writes the finding that an external source and one of the aircraft feed each other. */
final class ExternalDraft {
    private ExternalDraft() {}

    /**
     * The finding for a pair.
     *
     * @param at the aircraft in one state
     * @param outside the external source
     * @param inside the source of the aircraft
     * @param into the external one can drive the other
     * @param outOf the one of the aircraft can drive the external one
     */
    static Draft of(Situation at, PowerSource outside, PowerSource inside, boolean into, boolean outOf) {
        PowerGraph power = PowerGraph.of(at.circuit());
        String out = at.directory().name(outside.unit());
        String in = at.directory().name(inside.unit());
        String open = into && outOf ? "neither blocks" : (into ? in : out) + " does not block";
        Trail way = power.trail(outside.plus(), inside.plus()).orElse(Trail.NONE);
        Draft draft = Draft.of(
                        Severity.S2,
                        "external source together with internal: " + Supplies.name(at, outside) + " and "
                                + Supplies.name(at, inside) + " feed one net, " + open)
                .about(out, in)
                .path(way)
                .sum(out + " " + Supplies.range(power.height(outside)) + ", " + in + " "
                        + Supplies.range(power.height(inside)) + "; current can go " + directions(out, in, into, outOf))
                .source("common practice, no source")
                .why(why(out, in, into))
                .meter("only " + (into ? out : in) + " on, lead of " + (into ? in : out)
                        + " unplugged: volts on that lead, 0 V when right")
                .fix("put a diode or a blocking power switch between " + out + " and " + in
                        + ", or take the supply wire out of the external lead")
                .cause(TwoSources.token(at, List.of(outside, inside)));
        leadsOf(at, outside).forEach(draft::at);
        return draft.seen(at.directory().unit(outside.unit()))
                .seen(at.directory().unit(inside.unit()));
    }

    private static String directions(String out, String in, boolean into, boolean outOf) {
        if (into && outOf) {
            return "both ways";
        }
        return into ? "from " + out + " into " + in : "from " + in + " into " + out;
    }

    private static String why(String out, String in, boolean into) {
        return into
                ? out + " drives current into the output of " + in + " and feeds all that hangs on it"
                : in + " drives current into " + out + " and whatever stands behind it";
    }

    /** The leads at the plus of a source. */
    private static List<Lead> leadsOf(Situation at, PowerSource source) {
        Set<Integer> pins = new TreeSet<>();
        for (int pin = at.wiring().firstPin(source.unit()); pin < at.wiring().endPin(source.unit()); pin++) {
            if (at.circuit().nets().same(pin, source.plus())) {
                pins.add(pin);
            }
        }
        return Supplies.leadsAt(at, new ArrayList<>(pins));
    }
}
