package ringout.check.misplug;

import java.util.Locale;
import java.util.Optional;
import ringout.graph.Wiring;
import ringout.model.ContactHalf;
import ringout.model.Datum;
import ringout.model.Plug;

/**
 * What decides whether a plug goes into a socket.
 *
 * @param family plug family
 * @param positions number of positions
 * @param half contacts of the socket; neutral when not given
 * @param key key code; empty when it has none
 */
record Shell(String family, int positions, ContactHalf half, String key) {
    /** The shell of a socket; nothing when its family is not known or no two of it could be told apart. */
    static Optional<Shell> of(Wiring wiring, int unit, int plug, Datum<String> key) {
        Plug socket = wiring.directory().type(unit).plugs().get(plug);
        return socket.family()
                .known()
                .map(family -> new Shell(
                        family.strip().toLowerCase(Locale.ROOT),
                        socket.positions().or(socket.pins().size()),
                        socket.half().or(ContactHalf.NEUTRAL),
                        key.known()
                                .map(code -> code.strip().toLowerCase(Locale.ROOT))
                                .orElse("")));
    }
}
