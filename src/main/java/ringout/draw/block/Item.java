package ringout.draw.block;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;

/** What stands in a row: a zone with its units, or a lead that passes. Lengths are lattice steps. */
final class Item {
    /** Free at both ends of a zone, and between units. */
    static final int PAD = 1;

    final List<Cell> cells = new ArrayList<>();
    /** The lead that passes; -1 for a zone. */
    final int lead;

    final String name;
    /** Width of the name of a zone. */
    final int words;

    int x;

    /** Whether the name of a zone has room beside its only unit, wherever the lines to that run. */
    private final boolean roomy;

    Item(int lead, String name, int words, boolean roomy) {
        this.roomy = roomy;
        this.lead = lead;
        this.name = name;
        this.words = words;
    }

    static Item pass(int lead) {
        return new Item(lead, "", 0, false);
    }

    /** The zone itself when it is no wider than so much; else its units in parts, those that are fed from equally far together. */
    List<Item> parts(int most) {
        if (width() <= most) {
            return List.of(this);
        }
        TreeMap<Integer, List<Cell>> byDepth = new TreeMap<>();
        cells.forEach(cell -> byDepth.computeIfAbsent(cell.unit.depth(), key -> new ArrayList<>())
                .add(cell));
        List<Item> parts = new ArrayList<>();
        for (List<Cell> group : byDepth.values()) {
            Item part = new Item(-1, name, words, roomy);
            for (Cell cell : group) {
                if (!part.cells.isEmpty() && part.width() + cell.width + 2 * PAD > most) {
                    parts.add(part);
                    part = new Item(-1, name, words, roomy);
                }
                part.cells.add(cell);
            }
            parts.add(part);
        }
        return parts;
    }

    boolean passes() {
        return lead >= 0;
    }

    int width() {
        int units =
                2 * PAD + cells.stream().mapToInt(cell -> cell.width + 2 * PAD).sum() - 2 * PAD;
        int share = roomy
                ? cells.stream().limit(1).mapToInt(cell -> cell.width).sum()
                : cells.stream().limit(1).mapToInt(cell -> cell.width / 2).sum();
        int beside = cells.size() == 1 ? share + PAD : 0;
        return passes() ? 0 : Math.max(units, words + beside);
    }

    /** Puts the units side by side from where the zone stands. */
    void put(int left) {
        x = left;
        int at = left + PAD;
        for (Cell cell : cells) {
            cell.left = at;
            at += cell.width + 2 * PAD;
        }
    }
}
