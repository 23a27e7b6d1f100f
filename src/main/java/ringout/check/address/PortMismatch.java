package ringout.check.address;

import java.util.List;
import ringout.check.form.Situation;
import ringout.finding.Draft;
import ringout.finding.Severity;
import ringout.graph.Trail;
import ringout.graph.Wire;
import ringout.graph.signal.SerialLinks;
import ringout.model.Lead;

/**
 * A port and a device that do not understand each other.
 *
 * @param link where they meet
 * @param set what the port is set to
 * @param wanted what the device needs or is set to
 * @param agreed the protocol they agree in, when only the baud rates differ; else empty
 * @param severity how bad that is
 */
record PortMismatch(SerialLinks.Link link, String set, String wanted, String agreed, Severity severity) {
    /** Whether each of two devices is at the port set for the other, at one unit. */
    boolean exchangedWith(PortMismatch other) {
        return agreed.isEmpty()
                && other.agreed().isEmpty()
                && link.port().unit() == other.link().port().unit()
                && set.equalsIgnoreCase(other.wanted())
                && wanted.equalsIgnoreCase(other.set());
    }

    private String port(Situation at) {
        return SerialLinks.name(at.wiring(), link.port());
    }

    private String device(Situation at) {
        return SerialLinks.name(at.wiring(), link.device());
    }

    private Trail way(Situation at) {
        return at.circuit().trail(link.port().pin(), link.device().pin()).orElse(Trail.NONE);
    }

    /** The leads at the device's plug. */
    private List<Lead> leads(Situation at) {
        return java.util.Arrays.stream(at.wiring().wiresAt(link.device().pin()))
                .mapToObj(at.wiring().wires()::get)
                .map(Wire::lead)
                .distinct()
                .toList();
    }

    /** The finding about it alone. */
    Draft draft(Situation at) {
        boolean can = SerialLinks.type(at.wiring(), link.port())
                .map(type ->
                        type.protocols().isEmpty() || type.protocols().stream().anyMatch(wanted::equalsIgnoreCase))
                .orElse(true);
        String port = port(at);
        String device = device(at);
        Draft draft = Draft.of(
                        severity,
                        "port function: " + port + " is set to " + set + ", " + device
                                + (agreed.isEmpty() ? " needs " : " is set to ") + wanted)
                .about(port, device)
                .path(way(at))
                .sum(port + ": " + set + "; " + device + ": " + wanted)
                .why("every net is right, and yet they do not understand each other")
                .meter("follow the lead from " + device + " to the socket it is really in")
                .fix(
                        can || !agreed.isEmpty()
                                ? "set port " + port + " to " + wanted
                                : "move the lead of " + device + " to a port that can do " + wanted)
                .at(
                        at.wiring().unit(link.port().pin()),
                        at.wiring().plug(link.port().pin()).name() + " function")
                .seen(at.wiring().unit(link.device().pin()));
        leads(at).forEach(draft::at);
        return draft;
    }

    /** The finding about two leads exchanged. */
    Draft exchanged(Situation at, PortMismatch other) {
        Severity worse = severity.compareTo(other.severity()) < 0 ? severity : other.severity();
        String unit = at.directory().name(link.port().unit());
        List<String> ids = java.util.stream.Stream.of(this, other)
                .flatMap(one -> one.leads(at).stream().map(Lead::id))
                .distinct()
                .toList();
        Draft draft = Draft.of(
                        worse,
                        "port function: " + device(at) + " is at " + port(at) + " set to " + set + ", "
                                + other.device(at) + " at " + other.port(at) + " set to " + other.set())
                .about(port(at), other.port(at), device(at), other.device(at))
                .path(way(at))
                .sum(device(at) + " needs " + wanted + ", as set at " + other.port(at) + "; " + other.device(at)
                        + " needs " + other.wanted() + ", as set at " + port(at))
                .why("every net is right, and yet neither device is understood")
                .meter("follow " + String.join(" and ", ids) + " to the sockets they are really in")
                .fix("exchange " + String.join(" and ", ids) + " at " + unit + ", or the settings of the two ports");
        for (PortMismatch one : List.of(this, other)) {
            draft.cause(unit + "/" + at.wiring().plug(one.link().port().pin()).name() + " function");
            one.leads(at).forEach(draft::at);
        }
        return draft;
    }
}
