package ringout.draw.scene;

import java.util.Optional;

/**
 * One conductor.
 *
 * @param id identifier of its own, such as {@code W68.1}
 * @param lead the lead it belongs to, printed at both ends, such as {@code W68}
 * @param size conductor size as printed, such as {@code 26} for AWG 26; may be empty
 * @param colour colour letters by IEC 60757, such as {@code RDBU}; may be empty
 * @param kind what it carries
 * @param net name of its net, equal for all wires that are electrically one
 * @param from a pin, fitting or splice
 * @param to a pin, fitting, splice or reference
 * @param presence whether the wire is there
 * @param fuse the fuse in it, if there is one
 */
public record Wire(
        String id,
        String lead,
        String size,
        String colour,
        WireKind kind,
        String net,
        String from,
        String to,
        Presence presence,
        Optional<Fuse> fuse) {
    /** A wire without a fuse. */
    public Wire(
            String id,
            String lead,
            String size,
            String colour,
            WireKind kind,
            String net,
            String from,
            String to,
            Presence presence) {
        this(id, lead, size, colour, kind, net, from, to, presence, Optional.empty());
    }

    /** A wire that is there, without a fuse. */
    public Wire(String id, String lead, String size, String colour, WireKind kind, String net, String from, String to) {
        this(id, lead, size, colour, kind, net, from, to, Presence.FITTED);
    }
}
