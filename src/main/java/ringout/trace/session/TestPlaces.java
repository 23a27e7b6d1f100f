package ringout.trace.session;

import ringout.graph.Wiring;
import ringout.trace.predict.TestCard;

/** Where tests are made, by the names of the list. */
public final class TestPlaces {
    private TestPlaces() {}

    /** The plug, lead or unit a test is made at; empty for one of the whole aircraft. */
    public static String of(Wiring wiring, TestCard card) {
        CardPlace place = CardPlace.of(wiring, card.test());
        if (!place.lead().isEmpty() || place.everywhere()) {
            return place.lead();
        }
        return place.plug() < 0 ? wiring.directory().name(place.unit()) : wiring.plugName(place.unit(), place.plug());
    }
}
