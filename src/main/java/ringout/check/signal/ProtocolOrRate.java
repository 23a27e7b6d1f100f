package ringout.check.signal;

import java.util.List;
import ringout.check.form.Check;
import ringout.check.form.CheckInfo;
import ringout.check.form.Figures;
import ringout.check.form.Gaps;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.finding.Draft;
import ringout.finding.Severity;
import ringout.graph.Trail;
import ringout.graph.Wiring;
import ringout.graph.signal.PulseLinks;
import ringout.model.Datum;
import ringout.model.OutputSetting;
import ringout.model.UnitType;

/**
 * An output set to a protocol or an update rate that what it drives does not take.
 *
 * <p>Why it matters: a speed controller that does not understand the protocol does not start or twitches; an analog servo above
 * 50 Hz overheats and stops.
 *
 * <p>Condition: the protocol set at a motor or servo output is none of those the driven unit understands, or the update rate is above
 * the highest it takes (50 Hz for an analog servo). A protocol without an update rate is marked n/a.
 *
 * <p>Does not see: outputs that share a timer (A13), controllers driven over a bus.
 *
 * <p>Reference: maker's data of the driven unit; pulses of 1000 to 2000 microseconds at 50 Hz: common practice, no source.
 */
@CheckInfo(
        code = "S09",
        name = "protocol-or-rate",
        severity = Severity.S2,
        since = "0.1",
        needs = {"protocol and rate set for each output", "protocols and highest rate of what it drives"})
public final class ProtocolOrRate implements Check {
    @Override
    public void look(Situation at, Outcomes out) {
        Gaps gaps = new Gaps();
        for (PulseLinks.Link link : PulseLinks.of(at.circuit())) {
            protocol(at, out, link, gaps);
            rate(at, out, link, gaps);
        }
        gaps.tell(
                out,
                datum -> datum.endsWith("set")
                        ? new Gaps.Way("read it from the parameter list", 1)
                        : new Gaps.Way("look it up in the maker's data", 5));
    }

    private static UnitType type(Situation at, PulseLinks.Link link) {
        return at.directory().type(at.wiring().unitOf(link.input()));
    }

    private static String output(Wiring wiring, PulseLinks.Link link) {
        return wiring.unit(link.output()).ref() + " output " + PulseLinks.name(wiring, link.output());
    }

    private static void protocol(Situation at, Outcomes out, PulseLinks.Link link, Gaps gaps) {
        Datum<String> set = PulseLinks.setting(at.wiring(), link.output())
                .map(OutputSetting::protocol)
                .orElse(Datum.notAsked());
        List<String> takes = type(at, link).outputProtocols();
        if (set.isMissing()) {
            gaps.add("protocol set", output(at.wiring(), link));
        }
        if (takes.isEmpty()) {
            gaps.add("protocols taken", type(at, link).name());
        }
        if (set.isKnown() && !takes.isEmpty()) {
            out.looked();
            if (takes.stream().noneMatch(set.or("")::equalsIgnoreCase)) {
                String can = String.join(", ", takes);
                out.finding(draft(at, link, "sends " + set.or(""), "takes " + can, "to a protocol of " + can)
                        .sum(set.or("") + " is none of " + can)
                        .input(set));
            }
        }
    }

    private static void rate(Situation at, Outcomes out, PulseLinks.Link link, Gaps gaps) {
        Datum<Double> set = PulseLinks.setting(at.wiring(), link.output())
                .map(OutputSetting::rateHz)
                .orElse(Datum.notAsked());
        Datum<Double> most = type(at, link).maxRateHz();
        if (set.isMissing()) {
            gaps.add("update rate set", output(at.wiring(), link));
        }
        if (most.isMissing() && !set.isNotApplicable()) {
            gaps.add("highest update rate taken", type(at, link).name());
        }
        if (set.isKnown() && most.isKnown()) {
            out.looked();
            if (set.or(0.0) > most.or(0.0)) {
                String limit = Figures.of(most.or(0.0)) + " Hz";
                String sent = Figures.of(set.or(0.0)) + " Hz";
                out.finding(draft(at, link, "sends at " + sent, "takes " + limit, "to " + limit + " at most")
                        .sum(sent + " sent, at most " + limit + " taken")
                        .judged(
                                set.or(0.0),
                                most.or(0.0),
                                "Hz",
                                "data of " + type(at, link).name())
                        .input(set)
                        .input(most));
            }
        }
    }

    private static Draft draft(Situation at, PulseLinks.Link link, String sends, String takes, String set) {
        Wiring wiring = at.wiring();
        String output = PulseLinks.name(wiring, link.output());
        String from = wiring.unit(link.output()).ref();
        String to = wiring.unit(link.input()).ref();
        return Draft.of(
                        Severity.S2,
                        "protocol or rate: output " + output + " of " + from + " " + sends + ", " + to + " " + takes)
                .about(from + " output " + output, to)
                .path(at.circuit().trail(link.output(), link.input()).orElse(Trail.NONE))
                .why("what it drives stays still, twitches or overheats")
                .meter("propellers off: command output " + output + " and see whether " + to + " follows smoothly")
                .fix("set the outputs of " + from + " that drive "
                        + type(at, link).name() + " " + set)
                .cause(PulseLinks.protocolOf(wiring.unit(link.output()), output))
                .seen(wiring.unit(link.output()))
                .seen(wiring.unit(link.input()));
    }
}
