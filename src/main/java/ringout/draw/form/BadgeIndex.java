package ringout.draw.form;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import ringout.draw.scene.Mark;

/** The badges of each thing, in the order of the marks. */
public final class BadgeIndex {
    private final Map<String, List<BadgeForm>> byTarget = new HashMap<>();

    /** Sorts marks by what they are on. */
    public BadgeIndex(List<Mark> marks) {
        for (Mark mark : marks) {
            for (String target : mark.targets()) {
                byTarget.computeIfAbsent(target, t -> new ArrayList<>()).add(BadgeForm.of(mark));
            }
        }
    }

    /** {@return the badges of a thing, none when it has no mark} */
    public List<BadgeForm> of(String id) {
        return byTarget.getOrDefault(id, List.of());
    }
}
