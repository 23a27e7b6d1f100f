package ringout.check.installation;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import ringout.graph.Wire;
import ringout.model.Datum;
import ringout.model.Pin;

/** Colours of conductors as lists write them: {@code 1=RD 2=BK}, letters by IEC 60757, the main colour first. */
final class Colours {
    /** Colour letters of IEC 60757. */
    private static final Set<String> LETTERS =
            Set.of("BK", "BN", "RD", "OG", "YE", "GN", "BU", "VT", "GY", "WH", "PK", "TQ", "GD", "SR");

    private static final int TWO = 2;

    /** Main colours by contact, of each text met. */
    private final Map<String, Map<String, String>> read = new HashMap<>();

    /** Whether a word begins with colour letters. */
    static boolean isColour(String word) {
        return word.length() >= TWO && LETTERS.contains(word.substring(0, TWO));
    }

    /** The main colour of a conductor, "" when it is told but not with letters, nothing when it is not told. */
    Optional<String> of(Wire wire, Pin from) {
        Datum<String> own = wire.own().map(conductor -> conductor.colour()).orElse(Datum.notAsked());
        return own.isKnown()
                ? own.known().map(text -> main(text.strip().toUpperCase(Locale.ROOT)))
                : listed(wire, from);
    }

    private static String main(String word) {
        return isColour(word) ? word.substring(0, TWO) : "";
    }

    private Optional<String> listed(Wire wire, Pin from) {
        if (!wire.lead().colours().isKnown()) {
            return Optional.empty();
        }
        Map<String, String> byPin = read.computeIfAbsent(wire.lead().colours().or(""), Colours::read);
        String word = byPin.get(from.number());
        if (word == null) {
            word = byPin.get(from.number().toUpperCase(Locale.ROOT));
        }
        if (word == null && from.name().isKnown()) {
            word = byPin.get(from.name().or("").toUpperCase(Locale.ROOT));
        }
        return Optional.ofNullable(word);
    }

    private static Map<String, String> read(String text) {
        Map<String, String> byPin = new HashMap<>();
        for (String word : text.toUpperCase(Locale.ROOT).split("[\\s;,]+", -1)) {
            int sign = word.indexOf('=');
            if (sign > 0) {
                byPin.put(word.substring(0, sign), main(word.substring(sign + 1)));
            }
        }
        return byPin;
    }
}
