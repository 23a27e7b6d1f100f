package ringout.read.draft;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ringout.model.PinRole;
import ringout.model.shape.Parsed;
import ringout.model.shape.Words;

/**
 * The answer to what the pins of a plug carry: {@code H=2 L=3 0V=4}, several pins of one role as {@code 0V=4,5}.
 *
 * @param roles role by pin
 * @param names word of the answer by pin, for a row that names the pin so
 */
record PinAnswer(Map<String, PinRole> roles, Map<String, String> names) {
    private static final PinAnswer NONE = new PinAnswer(Map.of(), Map.of());

    /** The answer in a text; nothing when it is none. "don't know" is an answer without pins. */
    static Optional<PinAnswer> of(String text) {
        String plain = text.strip().replace('\u2019', '\'');
        if (plain.equals("?") || plain.equalsIgnoreCase("don't know") || plain.equalsIgnoreCase("dont know")) {
            return Optional.of(NONE);
        }
        Map<String, PinRole> roles = new LinkedHashMap<>();
        Map<String, String> names = new LinkedHashMap<>();
        for (String pair : pairs(plain)) {
            int equals = pair.indexOf('=');
            Parsed role = Words.parse(PinRole.class, equals <= 0 ? "" : pair.substring(0, equals));
            if (!(role instanceof Parsed.Good good) || equals == pair.length() - 1) {
                return Optional.empty();
            }
            for (String pin : pair.substring(equals + 1).split(",")) {
                roles.put(pin.strip(), (PinRole) good.value());
                names.put(pin.strip(), pair.substring(0, equals));
            }
        }
        return roles.isEmpty() ? Optional.empty() : Optional.of(new PinAnswer(roles, names));
    }

    /** Pieces with one = each; a word of two parts, such as "supply in", stays together. */
    private static List<String> pairs(String text) {
        List<String> pairs = new ArrayList<>();
        String joined = text.replaceAll("\\s*=\\s*", "=").replaceAll("\\s*,\\s*", ",");
        StringBuilder open = new StringBuilder();
        for (String word : joined.split("[\\s;]+")) {
            open.append(open.isEmpty() ? "" : " ").append(word);
            if (word.indexOf('=') >= 0) {
                pairs.add(open.toString());
                open.setLength(0);
            }
        }
        if (!open.isEmpty()) {
            pairs.add(open.toString());
        }
        return pairs;
    }
}
