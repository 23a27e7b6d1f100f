package ringout.finding;

import java.util.List;
import java.util.Optional;

/**
 * A wrong way to plug, and what came of it on a copy of the list.
 *
 * @param code the check that tried it
 * @param plugs kind of plug, as the list writes it
 * @param sockets the sockets concerned: where the plug belongs, and where it went
 * @param words what is done: {@code FC-MA and FC-MB exchanged}
 * @param told what is known of it
 * @param worst the worst finding it leads to; nothing when it does no harm or was not tried
 */
public record Trial(String code, String plugs, List<String> sockets, String words, Told told, Optional<Finding> worst) {
    /** How it is known what comes of a way. */
    public enum Told {
        /** This very way was tried. */
        TRIED,
        /** Another of its kind was tried for it. */
        BY_KIND,
        /** Pin for pin the same points meet: nothing changes. */
        SAME_POINTS,
        /** It was not tried: cannot tell. */
        NOT_TRIED
    }

    /** Keeps its own copy. */
    public Trial {
        sockets = List.copyOf(sockets);
    }
}
