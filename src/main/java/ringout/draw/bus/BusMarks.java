package ringout.draw.bus;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ringout.draw.form.BadgeForm;
import ringout.draw.scene.BadgeKind;
import ringout.draw.scene.Mark;

/** Badges and casings of the things of a bus. */
final class BusMarks {
    private final Map<String, List<BadgeForm>> badges = new HashMap<>();
    private final Map<String, BadgeKind> worst = new HashMap<>();

    BusMarks(List<Mark> marks) {
        for (Mark mark : marks) {
            for (String target : mark.targets()) {
                badges.computeIfAbsent(target, t -> new ArrayList<>()).add(BadgeForm.of(mark));
                if (!mark.waived() && mark.kind().hasCasing()) {
                    worst.merge(target, mark.kind(), (a, b) -> a.compareTo(b) <= 0 ? a : b);
                }
            }
        }
    }

    List<BadgeForm> of(String id) {
        return badges.getOrDefault(id, List.of());
    }

    /** {@return the most severe finding that gives a thing a casing, if there is one} */
    Optional<BadgeKind> casing(String id) {
        return Optional.ofNullable(worst.get(id));
    }
}
