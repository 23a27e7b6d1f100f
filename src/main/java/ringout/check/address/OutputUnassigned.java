package ringout.check.address;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import ringout.check.form.Check;
import ringout.check.form.CheckInfo;
import ringout.check.form.Gaps;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.finding.Draft;
import ringout.finding.Severity;
import ringout.graph.Circuit;
import ringout.graph.Wiring;
import ringout.graph.signal.PulseLinks;
import ringout.model.Datum;
import ringout.model.OutputSetting;
import ringout.model.PinRole;
import ringout.model.Unit;

/**
 * An output that drives something and has no function, or a function without anything driven.
 *
 * <p>Why it matters: the motor or servo stays still, or the configuration moves an output that leads nowhere.
 *
 * <p>Condition: a pulse output whose net reaches a pulse input has no function in the parameter list; or an output with a function
 * has no lead, or does not exist. Leads that a state takes off count as fitted. One finding a plug.
 *
 * <p>Does not see: whether the function is the right one (S10, S16); outputs sent over a bus that are listed as n/a.
 *
 * <p>Reference: common practice, no source.
 */
@CheckInfo(
        code = "A14",
        name = "output-unassigned",
        severity = Severity.S2,
        since = "0.1",
        needs = {"function of each output in the parameter list"})
public final class OutputUnassigned implements Check {
    /** Outputs of one plug with one fault: with their functions, or without one. */
    private record Fault(Unit unit, String plug, List<String> outputs, List<String> words, Set<String> leads) {}

    @Override
    public void look(Situation at, Outcomes out) {
        Circuit whole = at.whole();
        Map<String, Fault> idle = new TreeMap<>();
        Map<String, Fault> bare = new TreeMap<>();
        Gaps gaps = new Gaps();
        for (PulseLinks.Link link : PulseLinks.of(whole)) {
            driven(at, out, link.output(), idle, gaps);
        }
        for (int unit = 0; unit < at.aircraft().units().size(); unit++) {
            if (!at.directory().unit(unit).outputs().isEmpty()) {
                functions(at, unit, bare);
            }
        }
        idle.values().forEach(fault -> out.finding(idle(fault)));
        bare.values().forEach(fault -> out.finding(bare(fault)));
        gaps.tell(out, datum -> new Gaps.Way("read it from the parameter list", 1));
    }

    private static void driven(Situation at, Outcomes out, int pin, Map<String, Fault> idle, Gaps gaps) {
        Wiring wiring = at.wiring();
        Unit unit = wiring.unit(pin);
        if (wiring.pin(pin).output() instanceof Datum.Unknown) {
            gaps.add("number of output", wiring.name(pin));
            return;
        }
        String output = PulseLinks.name(wiring, pin);
        Datum<String> function =
                PulseLinks.setting(wiring, pin).map(OutputSetting::function).orElse(Datum.notAsked());
        boolean listed = !unit.outputs().isEmpty();
        if (function.isKnown()) {
            out.looked();
        } else if (listed && !(function instanceof Datum.Unknown)) {
            add(idle, at, pin, output, output);
        } else {
            gaps.add("function", unit.ref() + " output " + output);
        }
    }

    private static void add(Map<String, Fault> faults, Situation at, int pin, String output, String words) {
        String plug = at.wiring().plugName(at.wiring().unitOf(pin), at.wiring().plugIndex(pin));
        Fault fault = faults.computeIfAbsent(
                plug,
                key -> new Fault(at.wiring().unit(pin), plug, new ArrayList<>(), new ArrayList<>(), new TreeSet<>()));
        for (int w : at.wiring().wiresAt(pin)) {
            fault.leads().add(at.wiring().wires().get(w).lead().id());
        }
        if (!fault.outputs().contains(output)) {
            fault.outputs().add(output);
            fault.words().add(words);
        }
    }

    private static void functions(Situation at, int unit, Map<String, Fault> bare) {
        Wiring wiring = at.wiring();
        Unit record = at.directory().unit(unit);
        List<String> known = new ArrayList<>();
        boolean numbered = true;
        for (int pin = wiring.firstPin(unit); pin < wiring.endPin(unit); pin++) {
            numbered &= !wiring.pin(pin).role().isMissing();
            if (wiring.is(pin, PinRole.PULSE_OUT)) {
                numbered &= !(wiring.pin(pin).output() instanceof Datum.Unknown);
                String output = PulseLinks.name(wiring, pin);
                known.add(output);
                Datum<String> function = PulseLinks.setting(wiring, pin)
                        .map(OutputSetting::function)
                        .orElse(Datum.notAsked());
                if (function.isKnown() && wiring.wiresAt(pin).length == 0) {
                    add(bare, at, pin, output, output + " (" + function.or("") + ")");
                }
            }
        }
        for (OutputSetting setting : record.outputs()) {
            boolean exists = known.stream().anyMatch(setting.output()::equalsIgnoreCase);
            if (!exists
                    && numbered
                    && setting.function().isKnown()
                    && at.directory().typeKnown(unit)) {
                Fault fault = bare.computeIfAbsent(
                        record.ref(),
                        key -> new Fault(record, record.ref(), new ArrayList<>(), new ArrayList<>(), new TreeSet<>()));
                fault.outputs().add(setting.output());
                fault.words().add(setting.output() + " (" + setting.function().or("") + ")");
            }
        }
    }

    private static Draft idle(Fault fault) {
        String outputs = String.join(", ", fault.words());
        Draft draft = Draft.of(
                        Severity.S2,
                        "output without function: output " + outputs + " at " + fault.plug()
                                + " drives something, but no function is set")
                .about(fault.plug(), "function")
                .sum("driven outputs without a function: " + fault.outputs().size())
                .why("what it drives stays still")
                .meter("command each function with propellers off and see what moves")
                .fix("set the function of output " + outputs + " of "
                        + fault.unit().ref())
                .explains("S10", "S16")
                .seen(fault.unit());
        fault.outputs().forEach(output -> draft.cause(fault.unit().ref() + "/output " + output + " function"));
        fault.leads().forEach(draft::cause);
        return draft;
    }

    private static Draft bare(Fault fault) {
        String outputs = String.join(", ", fault.words());
        boolean none = fault.plug().equals(fault.unit().ref());
        Draft draft = Draft.of(
                        Severity.S2,
                        "function without output: "
                                + (none ? "no such output at " : "no lead at ")
                                + fault.plug() + " for " + outputs)
                .about(fault.plug(), "lead")
                .sum("functions set: " + fault.outputs().size() + ", outputs with a lead among them: 0")
                .why("what the function moves stays still")
                .fix(
                        none
                                ? "correct the outputs " + outputs + " of "
                                        + fault.unit().ref()
                                : "fit the lead at " + fault.plug() + ", or take the function off output " + outputs)
                .cause(fault.plug() + " open")
                .seen(fault.unit());
        fault.outputs().forEach(output -> draft.cause(fault.unit().ref() + "/output " + output + " function"));
        return draft;
    }
}
