package ringout.draw.style;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * Colours of insulation from their letters by IEC 60757: {@code RD} red, {@code RDBU} red with a blue stripe,
 * {@code GNYE} green and yellow.
 */
public final class Insulation {
    private static final Map<String, String> HEX = Map.ofEntries(
            Map.entry("BK", "#000000"),
            Map.entry("BN", "#7a4b1e"),
            Map.entry("RD", "#d62020"),
            Map.entry("OG", "#f08000"),
            Map.entry("YE", "#f5d800"),
            Map.entry("GN", "#1e8a3c"),
            Map.entry("BU", "#1f5fbf"),
            Map.entry("VT", "#7a3fa0"),
            Map.entry("GY", "#8c8c8c"),
            Map.entry("WH", "#ffffff"),
            Map.entry("PK", "#f4a6b8"),
            Map.entry("GD", "#c9a227"),
            Map.entry("TQ", "#30b5b5"),
            Map.entry("SR", "#c0c0c0"));

    private Insulation() {}

    /** {@return ground and stripes as {@code #rrggbb}; empty when the letters are no code} */
    public static List<String> of(String letters) {
        StringBuilder bare = new StringBuilder();
        letters.toUpperCase(Locale.ROOT)
                .chars()
                .filter(c -> c >= 'A' && c <= 'Z')
                .forEach(c -> bare.append((char) c));
        List<String> found = new ArrayList<>();
        for (int i = 0; i + 1 < bare.length(); i += 2) {
            String hex = HEX.get(bare.substring(i, i + 2));
            if (hex == null) {
                return List.of();
            }
            found.add(hex);
        }
        return bare.length() % 2 == 0 ? List.copyOf(found) : List.of();
    }
}
