package ringout.graph.wire;

import java.util.Locale;
import ringout.graph.Wire;
import ringout.graph.Wiring;

/** The colour of a conductor as listed. */
public final class WireColour {
    private WireColour() {}

    /**
     * Colour letters (IEC 60757): of the conductor itself, else of its pin in the colours of the lead ({@code 1=RD 2=BK});
     * empty when the list gives none.
     */
    public static String of(Wiring wiring, Wire wire) {
        String own = wire.own().flatMap(conductor -> conductor.colour().known()).orElse("");
        if (!own.isEmpty()) {
            return own;
        }
        String pin = wiring.pin(wire.fromPin()).number();
        for (String word : wire.lead().colours().or("").split("[\\s;,]+")) {
            if (word.startsWith(pin + "=")) {
                return word.substring(pin.length() + 1).toUpperCase(Locale.ROOT);
            }
        }
        return "";
    }
}
