package ringout.draw.harness;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;

/** Gives every thing on a sheet an identifier of its own, near its name: equal names get a number. */
final class Ids {
    private final Set<String> used = new HashSet<>();
    private final Map<String, String> byKey = new HashMap<>();

    /** The identifier of a thing told by a key; made from its name at the first question. */
    String of(String key, String name) {
        return byKey.computeIfAbsent(key, k -> free(name.isEmpty() ? "?" : name));
    }

    private String free(String name) {
        String id = name;
        for (int i = 2; !used.add(id); i++) {
            id = name + "~" + i;
        }
        return id;
    }
}
