package ringout.draw.block;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.TreeMap;

/** Which zone stands in which row, from the foot upwards: by how far from a pack it is fed, no row wider than the sheet. */
final class Rows {
    private static final double LOOSE = 0.92;

    private Rows() {}

    static List<List<Item>> of(List<Item> zones, int width) {
        TreeMap<Integer, List<Item>> byDepth = new TreeMap<>();
        for (Item zone : zones) {
            int depth = zone.cells.stream()
                    .mapToInt(cell -> cell.unit.depth())
                    .min()
                    .orElse(0);
            byDepth.computeIfAbsent(depth, key -> new ArrayList<>()).add(zone);
        }
        List<List<Item>> rows = new ArrayList<>();
        for (List<Item> row : byDepth.values()) {
            rows.addAll(cut(row, width));
        }
        for (int r = 1; r + 1 < rows.size(); ) {
            if (wide(rows.get(r)) + wide(rows.get(r + 1)) < width * LOOSE) {
                rows.get(r).addAll(rows.remove(r + 1));
            } else {
                r++;
            }
        }
        return rows;
    }

    /** Of a row that is too wide, what is fed from further away goes into a row above. */
    private static List<List<Item>> cut(List<Item> row, int width) {
        List<Item> ordered = new ArrayList<>(row);
        ordered.sort(Comparator.comparingDouble(Rows::mean));
        List<List<Item>> rows = new ArrayList<>();
        List<Item> now = new ArrayList<>();
        for (Item zone : ordered) {
            if (!now.isEmpty() && wide(now) + zone.width() + Strips.GAP > width * LOOSE) {
                rows.add(now);
                now = new ArrayList<>();
            }
            now.add(zone);
        }
        rows.add(now);
        return rows;
    }

    private static double mean(Item zone) {
        return zone.cells.stream().mapToInt(cell -> cell.unit.depth()).average().orElse(0);
    }

    static int wide(List<Item> row) {
        return row.stream().mapToInt(item -> item.width() + Strips.GAP).sum();
    }
}
