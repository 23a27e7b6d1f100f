package ringout.trace.diagnosis;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Something to do that cures any of some suspects.
 *
 * @param name what to do
 * @param minutes hands-on minutes, the longest any of its suspects names
 * @param openings what must be open for it, all that its suspects name
 * @param suspects numbers of the suspects it cures
 */
public record RepairAction(String name, double minutes, List<String> openings, List<Integer> suspects) {
    /** Keeps its own copies. */
    public RepairAction {
        openings = List.copyOf(openings);
        suspects = List.copyOf(suspects);
    }

    /** The actions of some suspects, in the order of first mention. */
    static List<RepairAction> of(List<Suspect> suspects) {
        Map<String, List<Integer>> byName = new LinkedHashMap<>();
        for (int s = 0; s < suspects.size(); s++) {
            byName.computeIfAbsent(suspects.get(s).repair(), name -> new ArrayList<>())
                    .add(s);
        }
        List<RepairAction> actions = new ArrayList<>();
        byName.forEach((name, numbers) -> actions.add(new RepairAction(
                name,
                numbers.stream()
                        .mapToDouble(s -> suspects.get(s).repairMinutes())
                        .max()
                        .orElse(0),
                numbers.stream()
                        .flatMap(s -> suspects.get(s).openings().stream())
                        .distinct()
                        .toList(),
                numbers)));
        return List.copyOf(actions);
    }
}
