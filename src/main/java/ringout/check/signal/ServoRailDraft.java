package ringout.check.signal;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import ringout.check.form.Figures;
import ringout.check.form.Situation;
import ringout.check.signal.ServoRailVoltage.ServoRange;
import ringout.finding.Draft;
import ringout.finding.Severity;
import ringout.graph.Trail;
import ringout.graph.power.PowerGraph;
import ringout.graph.power.PowerSource;
import ringout.graph.power.Volts;
import ringout.model.Lead;

/** Writes the finding that a servo rail does not suit all its servos: which stand it, which do not, and what would suit all. */
final class ServoRailDraft {
    /** From this many on, most of the consumers of a rail out of range speak against its source. */
    private static final int MANY = 3;

    private ServoRailDraft() {}

    static Draft of(Situation at, List<ServoRange> fail, List<ServoRange> stand) {
        PowerGraph power = PowerGraph.of(at.circuit());
        ServoRange first = fail.get(0);
        List<PowerSource> sources = power.feeding(first.servo().plus());
        String from = sources.stream()
                .map(source -> at.directory().name(source.unit()))
                .distinct()
                .collect(Collectors.joining(" and "));
        boolean tooMuch = fail.stream()
                .anyMatch(range -> range.volts().high() > range.most().or(Double.MAX_VALUE));
        int pin = first.servo().inputs().get(0);
        String pinName = at.wiring().name(pin);
        Trail way = power.tree().trailTo(pin).orElse(Trail.NONE);
        Draft draft = Draft.of(Severity.S1, title(at, fail, stand, from))
                .about(names(at, fail))
                .path(way)
                .sum(sum(at, first.volts(), fail, stand))
                .source("data of " + types(at, fail, stand))
                .why(
                        tooMuch
                                ? "a servo above its range burns, and its surface goes or stays where it likes"
                                : "a servo below its range is weak or stands still, and so does its surface")
                .meter("servos unplugged, power on: volts at the lead of " + pinName + ", " + bounds(first)
                        + " when right")
                .fix(fix(at, fail, stand))
                .explains("P04");
        rows(at, power, draft, fail, stand, sources);
        return draft;
    }

    /** The leads at the servos that do not stand it; the voltage of the source as well when most on it are out of range. */
    private static void rows(
            Situation at,
            PowerGraph power,
            Draft draft,
            List<ServoRange> fail,
            List<ServoRange> stand,
            List<PowerSource> sources) {
        for (ServoRange range : fail) {
            leads(at, range).forEach(draft::at);
        }
        int all = power.consumersOn(power.ties().of(fail.get(0).servo().plus())).size();
        if (fail.size() >= MANY && 2 * fail.size() > all) {
            sources.forEach(source -> draft.at(at.directory().unit(source.unit()), "voltage"));
        }
        Stream.concat(fail.stream(), stand.stream())
                .forEach(range -> draft.seen(at.directory().unit(range.servo().unit())));
    }

    private static Set<Lead> leads(Situation at, ServoRange range) {
        Set<Lead> leads = new LinkedHashSet<>();
        for (int pin : range.servo().inputs()) {
            for (int wire : at.wiring().wiresAt(pin)) {
                leads.add(at.wiring().wires().get(wire).lead());
            }
        }
        return leads;
    }

    private static List<String> names(Situation at, List<ServoRange> servos) {
        return servos.stream()
                .map(range -> at.directory().name(range.servo().unit()))
                .toList();
    }

    private static String title(Situation at, List<ServoRange> fail, List<ServoRange> stand, String from) {
        String not = String.join(", ", names(at, fail)) + (fail.size() > 1 ? " do" : " does") + " not stand the "
                + volts(fail.get(0).volts()) + " of " + from;
        String yes = String.join(", ", names(at, stand));
        return "servo rail voltage: " + not
                + (stand.isEmpty() ? "" : ", " + yes + (stand.size() > 1 ? " do" : " does"));
    }

    private static String sum(Situation at, Volts volts, List<ServoRange> fail, List<ServoRange> stand) {
        String each = Stream.concat(fail.stream(), stand.stream())
                .map(range -> at.directory().name(range.servo().unit()) + " takes " + bounds(range))
                .collect(Collectors.joining(", "));
        return "rail " + volts(volts) + " at rest; " + each + "; " + common(fail, stand);
    }

    private static double least(List<ServoRange> fail, List<ServoRange> stand) {
        return Stream.concat(fail.stream(), stand.stream())
                .mapToDouble(range -> range.least().or(0.0))
                .max()
                .orElse(0);
    }

    private static double most(List<ServoRange> fail, List<ServoRange> stand) {
        return Stream.concat(fail.stream(), stand.stream())
                .mapToDouble(range -> range.most().or(Double.MAX_VALUE))
                .min()
                .orElse(Double.MAX_VALUE);
    }

    private static String common(List<ServoRange> fail, List<ServoRange> stand) {
        double least = least(fail, stand);
        double most = most(fail, stand);
        if (most == Double.MAX_VALUE) {
            return "all take " + Figures.of(least) + " V and more";
        }
        return least > most
                ? "no voltage suits all: one needs " + Figures.of(least) + " V, one stands " + Figures.of(most) + " V"
                : "all take " + Figures.of(least) + " to " + Figures.of(most) + " V";
    }

    private static String fix(Situation at, List<ServoRange> fail, List<ServoRange> stand) {
        String who = String.join(", ", names(at, fail));
        double least = least(fail, stand);
        double most = most(fail, stand);
        if (least > most || most == Double.MAX_VALUE) {
            return "feed " + who + " from a rail of its own inside its range, or fit servos that take one voltage";
        }
        return "feed this rail from a source between " + Figures.of(least) + " and " + Figures.of(most)
                + " V, or fit another servo for " + who;
    }

    private static String bounds(ServoRange range) {
        String least = range.least().isKnown() ? Figures.of(range.least().or(0.0)) : "?";
        String most = range.most().isKnown() ? Figures.of(range.most().or(0.0)) : "?";
        return least + " to " + most + " V";
    }

    private static String volts(Volts volts) {
        if (!volts.isBounded()) {
            return volts.nominal().isPresent() ? "nominal " + Figures.of(volts.nominal()) + " V" : "? V";
        }
        return volts.low() == volts.high()
                ? Figures.of(volts.low()) + " V"
                : Figures.of(volts.low()) + " to " + Figures.of(volts.high()) + " V";
    }

    private static String types(Situation at, List<ServoRange> fail, List<ServoRange> stand) {
        return Stream.concat(fail.stream(), stand.stream())
                .map(range -> at.directory().unit(range.servo().unit()).type())
                .distinct()
                .collect(Collectors.joining(", "));
    }
}
