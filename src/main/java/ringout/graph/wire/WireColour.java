package ringout.graph.wire;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import ringout.graph.Wire;
import ringout.graph.Wiring;
import ringout.model.Pin;

/** The colours of conductors as listed: letters by IEC 60757, of a conductor itself or by pin of its lead ({@code 1=RD 2=BK}). */
public final class WireColour {
    private WireColour() {}

    /** The colour of a conductor in capitals: its own, else that of its pin; empty when the list gives none. */
    public static String of(Wiring wiring, Wire wire) {
        return own(wire)
                .or(() -> of(byPin(wire.lead().colours().or("")), wiring.pin(wire.fromPin())))
                .orElse("");
    }

    /** The colour told for a conductor alone, in capitals. */
    public static Optional<String> own(Wire wire) {
        return wire.own()
                .flatMap(conductor -> conductor.colour().known())
                .map(text -> text.strip().toUpperCase(Locale.ROOT));
    }

    /** The colour of a pin at the from end of a lead, by its number or else by its name. */
    public static Optional<String> of(Map<String, String> byPin, Pin from) {
        String word = byPin.get(from.number().toUpperCase(Locale.ROOT));
        return word == null && from.name().isKnown()
                ? Optional.ofNullable(byPin.get(from.name().or("").toUpperCase(Locale.ROOT)))
                : Optional.ofNullable(word);
    }

    /** The colours of a lead by pin of its from end, both in capitals. */
    public static Map<String, String> byPin(String colours) {
        Map<String, String> byPin = new HashMap<>();
        for (String word : colours.toUpperCase(Locale.ROOT).split("[\\s;,]+", -1)) {
            int sign = word.indexOf('=');
            if (sign > 0) {
                byPin.put(word.substring(0, sign), word.substring(sign + 1));
            }
        }
        return byPin;
    }
}
