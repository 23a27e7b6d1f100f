package ringout.draw.harness;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import ringout.draw.scene.Earlier;
import ringout.graph.Wire;
import ringout.graph.Wiring;

/**
 * Keeps rows on the sheets they were on in an earlier output. A new row goes to the sheet of the rows it would have been cut
 * with, as long as that has room.
 */
final class Kept {
    private final Earlier earlier;
    private final Map<Integer, List<String>> wiresOfRow = new LinkedHashMap<>();

    Kept(Wiring wiring, Earlier earlier) {
        this.earlier = earlier;
        for (Wire wire : wiring.wires()) {
            wiresOfRow
                    .computeIfAbsent(wire.leadIndex(), key -> new ArrayList<>())
                    .add(SheetScene.nameOf(wiring, wire));
        }
    }

    /** The portions as they were, and what is new where there is room or on sheets of its own. */
    List<Portion> portions(List<Portion> cut) {
        if (earlier.sheets().isEmpty()) {
            return cut;
        }
        Map<Integer, List<Integer>> rows = new TreeMap<>();
        Map<Integer, String> titles = new TreeMap<>();
        Map<Integer, Portion> fresh = new LinkedHashMap<>();
        for (Portion portion : cut) {
            for (int row : portion.leads()) {
                int sheet = earlier.sheetWith(wiresOfRow.getOrDefault(row, List.of()));
                if (sheet < 0) {
                    fresh.put(row, portion);
                } else {
                    rows.computeIfAbsent(sheet, key -> new ArrayList<>()).add(row);
                    titles.putIfAbsent(sheet, portion.title());
                }
            }
        }
        List<Portion> added = new ArrayList<>();
        fresh.forEach((row, portion) -> {
            int sheet = earlier.sheetWith(names(portion.leads()));
            List<Integer> there = rows.getOrDefault(sheet, List.of());
            if (sheet >= 0
                    && !there.isEmpty()
                    && names(there).size() + names(List.of(row)).size() <= Cut.MOST) {
                there.add(row);
            } else {
                added.add(new Portion(portion.title(), List.of(row)));
            }
        });
        List<Portion> portions = new ArrayList<>();
        rows.forEach((sheet, leads) -> portions.add(new Portion(
                titles.getOrDefault(sheet, ""), leads.stream().sorted().toList())));
        portions.addAll(added);
        return portions;
    }

    private List<String> names(Collection<Integer> rows) {
        List<String> names = new ArrayList<>();
        rows.forEach(row -> names.addAll(wiresOfRow.getOrDefault(row, List.of())));
        return names;
    }
}
