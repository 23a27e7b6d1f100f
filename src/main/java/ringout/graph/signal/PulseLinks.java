package ringout.graph.signal;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import ringout.graph.Circuit;
import ringout.graph.Wiring;
import ringout.model.Datum;
import ringout.model.OutputSetting;
import ringout.model.PinRole;
import ringout.model.Unit;

/** Which pulse output drives which pulse input, through boards and splices. */
public final class PulseLinks {
    private static final long OUT = NetRoles.bits(PinRole.PULSE_OUT);
    private static final long IN = NetRoles.bits(PinRole.PULSE_IN);

    private final List<Link> links = new ArrayList<>();

    /**
     * An output and an input on one net.
     *
     * @param output pin that drives
     * @param input pin that listens
     */
    public record Link(int output, int input) {}

    private PulseLinks(Circuit circuit) {
        NetRoles roles = NetRoles.of(circuit);
        roles.each(IN, net -> {
            if (roles.any(net, OUT)) {
                for (int output : roles.pins(net, OUT)) {
                    roles.pins(net, IN).forEach(input -> links.add(new Link(output, input)));
                }
            }
        });
    }

    /** The links of a circuit, found once, in the order of the nets. */
    public static List<Link> of(Circuit circuit) {
        return Collections.unmodifiableList(circuit.know(PulseLinks.class, PulseLinks::new).links);
    }

    /** How an output is set in the configuration of its unit; nothing when its pin has no number or no row says. */
    public static Optional<OutputSetting> setting(Wiring wiring, int output) {
        Datum<String> name = wiring.pin(output).output();
        return name.isKnown() ? setting(wiring.unit(output), name.or("")) : Optional.empty();
    }

    /** How the output of a number or name is set in the configuration of a unit. */
    public static Optional<OutputSetting> setting(Unit unit, String output) {
        return unit.outputs().stream()
                .filter(setting -> setting.output().equalsIgnoreCase(output))
                .findFirst();
    }

    /** The token that findings about the protocol or rate of one output share. */
    public static String protocolOf(Unit unit, String output) {
        return unit.ref() + "/output " + output.toUpperCase(Locale.ROOT) + " protocol";
    }

    /** Number or name of an output, else its contact. */
    public static String name(Wiring wiring, int output) {
        return wiring.pin(output).output().or(wiring.pin(output).number());
    }
}
