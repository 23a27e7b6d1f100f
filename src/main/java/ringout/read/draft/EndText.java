package ringout.read.draft;

import java.util.Collection;
import java.util.Locale;
import java.util.Optional;

/**
 * One end of a lead, taken apart.
 *
 * @param unit reference of the unit
 * @param plug name of the plug
 * @param pin number or name of the pin; empty when the end is the whole plug
 */
record EndText(String unit, String plug, String pin) {
    /** No end of a lead is longer. */
    private static final int LONGEST = 120;

    private static final String SEPARATORS = "-.:/";

    /** An end taken apart; a known unit name wins, the longest first. Nothing when it names no plug. */
    static Optional<EndText> of(String text, Collection<String> units) {
        if (text.length() > LONGEST) {
            return Optional.empty();
        }
        String unit = units.stream()
                .filter(name -> startsWith(text, name))
                .reduce("", (a, b) -> b.length() > a.length() ? b : a);
        String rest = unit.isEmpty() ? text : text.substring(unit.length() + 1);
        String[] parts = rest.split("[" + SEPARATORS + "]+(?=.)", -1);
        if (!unit.isEmpty()) {
            return parts.length > 2 || rest.isEmpty()
                    ? Optional.empty()
                    : Optional.of(new EndText(unit, parts[0], parts.length == 2 ? parts[1] : ""));
        }
        return switch (parts.length) {
            case 2 -> Optional.of(new EndText(parts[0], parts[1], ""));
            case 3 -> Optional.of(new EndText(parts[0], parts[1], parts[2]));
            default -> Optional.empty();
        };
    }

    private static boolean startsWith(String text, String unit) {
        return text.length() > unit.length() + 1
                && SEPARATORS.indexOf(text.charAt(unit.length())) >= 0
                && text.substring(0, unit.length()).toLowerCase(Locale.ROOT).equals(unit.toLowerCase(Locale.ROOT));
    }

    /** The plug, as the list calls it. */
    String place() {
        return unit + "-" + plug;
    }
}
