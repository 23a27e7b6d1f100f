package ringout.check.signal;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import ringout.check.form.Situation;
import ringout.finding.Draft;
import ringout.finding.Severity;
import ringout.graph.Trail;
import ringout.graph.signal.PulseLinks;
import ringout.graph.signal.Sides;
import ringout.model.Lead;
import ringout.model.Surface;
import ringout.model.Unit;

/**
 * A servo driven by the wrong output.
 *
 * @param link output and input
 * @param what surface, or place of the actuator
 * @param got output, or function of the output, that drives it
 * @param wanted output or side that should
 * @param severity how bad that is
 */
record ServoFault(PulseLinks.Link link, String what, String got, String wanted, Severity severity) {
    /** The servo. */
    Unit servo(Situation at) {
        return at.wiring().unit(link.input());
    }

    /** Whether each of two servos is at the output of the other. */
    boolean exchangedWith(Situation at, ServoFault other) {
        boolean oneDriver = at.wiring().unitOf(link.output())
                == at.wiring().unitOf(other.link().output());
        boolean named = got.equalsIgnoreCase(other.wanted()) && wanted.equalsIgnoreCase(other.got());
        boolean sided = Sides.of(got).said()
                && !Sides.of(got).contradicts(Sides.of(other.wanted()))
                && !Sides.of(wanted).contradicts(Sides.of(other.got()));
        return oneDriver && (named || sided);
    }

    private Trail way(Situation at) {
        return at.circuit().trail(link.output(), link.input()).orElse(Trail.NONE);
    }

    private String words(Situation at) {
        return servo(at).ref() + " (" + what + ") is driven by output " + PulseLinks.name(at.wiring(), link.output())
                + (Sides.of(wanted).said() && Sides.of(got).said() ? " (" + got + ")" : ", not " + wanted);
    }

    /** The finding, about two when they are exchanged. */
    Draft draft(Situation at, Optional<ServoFault> partner) {
        List<ServoFault> all = Stream.concat(Stream.of(this), partner.stream()).toList();
        String driver = at.wiring().unit(link.output()).ref();
        String words =
                String.join("; ", all.stream().map(fault -> fault.words(at)).toList());
        List<String> leads = all.stream()
                .flatMap(fault -> Leads.along(at, fault.way(at)).stream())
                .map(Lead::id)
                .distinct()
                .toList();
        Draft draft = Draft.of(
                        all.stream()
                                .map(ServoFault::severity)
                                .min(Severity::compareTo)
                                .orElse(severity),
                        "servo assignment: " + words)
                .about(all.stream().map(fault -> fault.servo(at).ref()).toList())
                .path(way(at))
                .sum(words)
                .source("surface table and places of the aircraft")
                .why("what moves is not what was commanded, and the aircraft answers the other way")
                .meter("command each output of " + driver + " and see what moves which way")
                .fix(
                        partner.isPresent()
                                ? "exchange " + String.join(" and ", leads) + " at " + driver
                                        + ", or the functions of the two outputs"
                                : "bring " + servo(at).ref()
                                        + (Sides.of(wanted).said() ? " to the output of the " : " to output ") + wanted
                                        + ", or correct the record");
        for (ServoFault fault : all) {
            draft.cause(driver + "/output "
                    + PulseLinks.name(at.wiring(), fault.link().output()) + " function");
            Leads.along(at, fault.way(at)).forEach(draft::at);
            draft.seen(fault.servo(at));
        }
        return draft;
    }

    /** The finding about a surface whose reversal is set otherwise than recorded. */
    static Draft turned(Situation at, Surface surface, PulseLinks.Link link, boolean set) {
        String output = PulseLinks.name(at.wiring(), link.output());
        Unit driver = at.wiring().unit(link.output());
        String is = set ? "reversed" : "not reversed";
        String should = set ? "not reversed" : "reversed";
        return Draft.of(
                        Severity.S2,
                        "servo sense: output " + output + " of " + driver.ref() + " is " + is + ", surface "
                                + surface.name() + " wants it " + should)
                .about(surface.name(), "reversal")
                .path(at.circuit().trail(link.output(), link.input()).orElse(Trail.NONE))
                .sum(is + " as set, " + should + " as recorded")
                .source("surface table of the aircraft")
                .why("the surface moves the other way: the aircraft rolls away from the command")
                .meter("tilt the aircraft by hand: the surface must move against the tilt")
                .fix("set output " + output + " of " + driver.ref() + " to " + should + ", or correct the record")
                .at(driver, "output " + output + " reversal")
                .seen(at.wiring().unit(link.input()));
    }
}
