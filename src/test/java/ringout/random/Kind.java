package ringout.random;

import java.util.Optional;
import java.util.function.Function;

/**
 * A kind of mistake.
 *
 * @param name what is done, in words
 * @param maker makes one somewhere in an aircraft that has a place for it
 */
record Kind(String name, Function<Place, Optional<Fault>> maker) {
    /** The mistake in an aircraft, if it has a place for it. */
    Optional<Fault> in(Craft craft) {
        return maker.apply(new Place(craft, name));
    }
}
