package ringout.model.shape;

import java.util.ArrayList;
import java.util.List;
import ringout.model.PinMap;

/** Pin maps as people write them: {@code 1>1 2>3 3>2}. */
final class PinMaps {
    private PinMaps() {}

    static Parsed parse(String text) {
        List<PinMap.Pair> pairs = new ArrayList<>();
        for (String word : text.replaceAll("\\s*(->|>|\u2192|=)\\s*", ">").split("[\\s,;]+")) {
            if (word.isEmpty()) {
                continue;
            }
            int arrow = word.indexOf('>');
            if (arrow <= 0 || arrow == word.length() - 1 || word.indexOf('>', arrow + 1) >= 0) {
                return new Parsed.Bad("'" + word + "' is not a pin pair", "write pin>pin, such as 2>3");
            }
            pairs.add(new PinMap.Pair(word.substring(0, arrow), word.substring(arrow + 1)));
        }
        return pairs.isEmpty()
                ? new Parsed.Bad("'" + text + "' has no pin pair", "write pin>pin, such as 2>3")
                : new Parsed.Good(new PinMap(List.copyOf(pairs)));
    }
}
