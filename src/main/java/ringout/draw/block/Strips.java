package ringout.draw.block;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.IntPredicate;
import java.util.function.ToIntFunction;
import ringout.draw.block.BlockScene.BlockLead;
import ringout.draw.block.Cell.Port;
import ringout.draw.channel.Net;
import ringout.draw.spacing.Isotonic;

/**
 * Finds the order and the places of zones, units and lead ends in their rows: each thing goes where what it is joined to draws
 * it, row by row, up and down.
 */
final class Strips {
    /** Least distance of things in a row, steps. */
    static final int GAP = 1;

    private static final int SWEEPS = 6;
    private static final int MANY = 6;
    private static final double NARROW = 0.8;

    final List<List<Item>> rows;
    final List<BlockLead> leads;
    private final int width;
    private final Map<String, Cell> cells = new HashMap<>();
    private final Map<Cell, Integer> rowOf = new HashMap<>();
    final Port[] from;
    final Port[] to;
    private final List<Map<Integer, Item>> passes = new ArrayList<>();

    Strips(List<List<Item>> rows, List<BlockLead> leads, int width) {
        this.rows = rows;
        this.leads = leads;
        this.width = width;
        this.from = new Port[leads.size()];
        this.to = new Port[leads.size()];
        for (int r = 0; r < rows.size(); r++) {
            passes.add(new HashMap<>());
            for (Item item : rows.get(r)) {
                for (Cell cell : item.cells) {
                    cells.put(cell.unit.id(), cell);
                    rowOf.put(cell, r);
                }
            }
        }
        for (int lead = 0; lead < leads.size(); lead++) {
            join(lead);
        }
    }

    private Cell cell(String id) {
        return Objects.requireNonNull(cells.get(id), id);
    }

    int row(Port port) {
        return Objects.requireNonNull(rowOf.get(port.cell));
    }

    private void join(int lead) {
        Cell a = cell(leads.get(lead).from());
        Cell b = cell(leads.get(lead).to());
        from[lead] = new Port(lead, a);
        to[lead] = new Port(lead, b);
        int rowA = row(from[lead]);
        int rowB = row(to[lead]);
        (rowA <= rowB ? a.top : a.bottom).add(from[lead]);
        (rowB <= rowA ? b.top : b.bottom).add(to[lead]);
        for (int r = Math.min(rowA, rowB) + 1; r < Math.max(rowA, rowB); r++) {
            Item pass = Item.pass(lead);
            rows.get(r).add(pass);
            passes.get(r).put(lead, pass);
        }
    }

    /** Finds all places; false when a row is wider than the sheet. */
    boolean settle(ToIntFunction<Cell> words) {
        cells.values().forEach(cell -> cell.widen(words.applyAsInt(cell)));
        rows.forEach(this::stretch);
        for (List<Item> row : rows) {
            if (Rows.wide(row) - GAP > width) {
                return false;
            }
            int x = 0;
            for (Item item : row) {
                item.put(x);
                x += item.width() + GAP;
            }
            row.forEach(item -> item.cells.forEach(cell -> {
                spread(cell, cell.top);
                spread(cell, cell.bottom);
            }));
        }
        for (int sweep = 0; sweep < SWEEPS; sweep++) {
            for (int i = 0; i < rows.size(); i++) {
                place(sweep % 2 == 0 ? i : rows.size() - 1 - i, sweep < SWEEPS - 2);
            }
        }
        return true;
    }

    private static void spread(Cell cell, List<Port> side) {
        for (int i = 0; i < side.size(); i++) {
            side.get(i).x = cell.left + 1 + 2 * i;
        }
    }

    /** The unit with the most ends in a row with room takes a part of it: a bar that others stand straight above. */
    private void stretch(List<Item> row) {
        int free = width - Rows.wide(row);
        row.stream()
                .flatMap(item -> item.cells.stream())
                .filter(cell -> cell.top.size() >= MANY)
                .max(Comparator.comparingInt(cell -> cell.top.size()))
                .ifPresent(cell -> cell.width += Math.max(0, (int) (free * NARROW)));
    }

    /** Orders and places one row by what its things are joined to. */
    private void place(int r, boolean order) {
        List<Item> row = rows.get(r);
        if (order) {
            row.forEach(item -> item.cells.sort(Comparator.comparingDouble(this::wish)));
            row.sort(Comparator.comparingDouble(item -> wish(item)));
        }
        int[] distance = new int[row.size()];
        for (int i = 1; i < distance.length; i++) {
            distance[i] = distance[i - 1] + row.get(i - 1).width() + GAP;
        }
        Isotonic places = new Isotonic(distance);
        for (int i = 0; i < distance.length; i++) {
            wishes(row.get(i), places, i);
        }
        int[] found = places.solve(0, width - row.get(row.size() - 1).width());
        for (int i = 0; i < found.length; i++) {
            row.get(i).put(found[i]);
        }
        for (Item item : row) {
            for (Cell cell : item.cells) {
                cell.settle(cell.top, port -> above(port, r));
                cell.settle(cell.bottom, port -> facing(port, r - 1));
            }
        }
    }

    private void wishes(Item item, Isotonic places, int member) {
        if (item.passes()) {
            places.wish(member, at(item.lead, -1, rows(item), true), 2);
            places.wish(member, at(item.lead, 1, rows(item), true), 2);
            return;
        }
        places.wish(member, item.x, 1);
        for (Cell cell : item.cells) {
            int r = Objects.requireNonNull(rowOf.get(cell));
            cell.top.forEach(port -> places.wish(member, above(port, r) - (port.x - item.x), 2));
            cell.bottom.forEach(port -> places.wish(member, facing(port, r - 1) - (port.x - item.x), 2));
        }
    }

    private int rows(Item pass) {
        for (int r = 0; r < passes.size(); r++) {
            if (passes.get(r).get(pass.lead) == pass) {
                return r;
            }
        }
        return 0;
    }

    private double wish(Item item) {
        if (item.passes()) {
            int r = rows(item);
            return (at(item.lead, -1, r, true) + at(item.lead, 1, r, true)) / 2.0;
        }
        return item.cells.stream().mapToDouble(this::wish).average().orElse(item.x + item.width() / 2.0);
    }

    private double wish(Cell cell) {
        int r = Objects.requireNonNull(rowOf.get(cell));
        double sum = 0;
        for (Port port : cell.top) {
            sum += above(port, r);
        }
        for (Port port : cell.bottom) {
            sum += facing(port, r - 1);
        }
        int count = cell.top.size() + cell.bottom.size();
        return count == 0 ? cell.left + cell.width / 2.0 : sum / count;
    }

    /** What an end on the upper side faces: something in the row above, or another end in its own. */
    private int above(Port port, int r) {
        Port other = from[port.lead] == port ? to[port.lead] : from[port.lead];
        return row(other) == r ? other.x : at(port.lead, 1, r, false);
    }

    private int facing(Port port, int below) {
        return at(port.lead, 0, below, false);
    }

    /** Where a lead stands in the row that lies so many above one. */
    private int at(int lead, int step, int r, boolean own) {
        int row = r + step;
        Item pass = row >= 0 && row < passes.size() ? passes.get(row).get(lead) : null;
        if (pass != null && (step != 0 || !own)) {
            return pass.x;
        }
        return row(from[lead]) == row ? from[lead].x : to[lead].x;
    }

    /** The lines between a row and the next, by the number of their lead; those along one row if wanted. */
    List<Net> channel(int r, IntPredicate taken) {
        List<Net> nets = new ArrayList<>();
        for (int lead = 0; lead < leads.size(); lead++) {
            int a = row(from[lead]);
            int b = row(to[lead]);
            int low = Math.min(a, b);
            int high = Math.max(a, b);
            if (low == high && low == r && taken.test(lead)) {
                nets.add(new Net(lead, true, from[lead].x, true, to[lead].x));
            } else if (low <= r && high > r) {
                nets.add(new Net(lead, true, at(lead, 0, r, false), false, at(lead, 1, r, false)));
            }
        }
        return nets;
    }
}
