package ringout.check.installation;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import ringout.graph.Wire;
import ringout.graph.wire.WireColour;
import ringout.model.Pin;

/** Colours of conductors as lists write them: {@code 1=RD 2=BK}, letters by IEC 60757, the main colour first. */
final class Colours {
    /** Colour letters of IEC 60757. */
    private static final Set<String> LETTERS =
            Set.of("BK", "BN", "RD", "OG", "YE", "GN", "BU", "VT", "GY", "WH", "PK", "TQ", "GD", "SR");

    private static final int TWO = 2;

    /** Colours by contact, of each text met. */
    private final Map<String, Map<String, String>> read = new HashMap<>();

    /** Whether a word begins with colour letters. */
    static boolean isColour(String word) {
        return word.length() >= TWO && LETTERS.contains(word.substring(0, TWO));
    }

    /** The main colour of a conductor, "" when it is told but not with letters, nothing when it is not told. */
    Optional<String> of(Wire wire, Pin from) {
        return WireColour.own(wire).or(() -> listed(wire, from)).map(Colours::main);
    }

    private static String main(String word) {
        return isColour(word) ? word.substring(0, TWO) : "";
    }

    private Optional<String> listed(Wire wire, Pin from) {
        return wire.lead()
                .colours()
                .known()
                .flatMap(text -> WireColour.of(read.computeIfAbsent(text, WireColour::byPin), from));
    }
}
