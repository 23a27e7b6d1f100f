package ringout.solve.network;

import java.util.Arrays;

/**
 * Where the factor of a pattern has entries; the same for every set of values on that pattern.
 *
 * <p>Column {@code j} holds the later positions its vertex is a neighbour of when it is eliminated, sorted. The same
 * entries are listed by row as well, which is what the numeric pass and a partial refactorisation read.
 */
final class Symbolic {

    /** Number of positions. */
    final int size;

    final EliminationTree tree;

    /** First entry of each column; the last entry is the number of entries. */
    final int[] columnStart;

    /** Row of each entry. */
    final int[] row;

    /** First slot of each row in {@link #rowColumn} and {@link #rowEntry}. */
    final int[] rowStart;

    /** Columns that have an entry in the row, ascending. */
    final int[] rowColumn;

    /** Which entry that is. */
    final int[] rowEntry;

    /** First slot of each column in {@link #target}; the last entry is the number of slots. */
    final int[] targetStart;

    /**
     * For columns of few entries, the entry each pair of them adds to: pairs in the order (0,1), (0,2), (1,2) and so on by
     * the later of the two last. Longer columns have none; they are listed in {@link #longEntry} instead.
     */
    final int[] target;

    /** First slot of each row in {@link #longColumn} and {@link #longEntry}. */
    final int[] longStart;

    /** Columns of many entries that have one in the row, ascending. */
    final int[] longColumn;

    /** Which entry that is. */
    final int[] longEntry;

    private static final int FEW = 6;

    private Symbolic(EliminationTree tree, int[] columnStart, int[] unsorted) {
        size = tree.order.length;
        this.tree = tree;
        this.columnStart = columnStart;
        int entries = columnStart[size];
        row = new int[entries];
        rowStart = new int[size + 1];
        rowColumn = new int[entries];
        rowEntry = new int[entries];
        sortBothWays(unsorted);
        targetStart = targetStarts();
        target = new int[targetStart[size]];
        for (int j = 0; j < size; j++) {
            if (targetStart[j] < targetStart[j + 1]) {
                findTargets(j);
            }
        }
        longStart = longStarts();
        longColumn = new int[longStart[size]];
        longEntry = new int[longStart[size]];
        listLongColumns();
    }

    private boolean isLong(int column) {
        return columnStart[column + 1] - columnStart[column] > FEW;
    }

    private int[] targetStarts() {
        int[] start = new int[size + 1];
        for (int j = 0; j < size; j++) {
            int count = columnStart[j + 1] - columnStart[j];
            start[j + 1] = start[j] + (isLong(j) ? 0 : count * (count - 1) / 2);
        }
        return start;
    }

    private int[] longStarts() {
        int[] start = new int[size + 1];
        for (int i = 0; i < size; i++) {
            start[i + 1] = start[i];
            for (int q = rowStart[i]; q < rowStart[i + 1]; q++) {
                start[i + 1] += isLong(rowColumn[q]) ? 1 : 0;
            }
        }
        return start;
    }

    private void listLongColumns() {
        for (int q = 0, next = 0; q < rowColumn.length; q++) {
            if (isLong(rowColumn[q])) {
                longColumn[next] = rowColumn[q];
                longEntry[next++] = rowEntry[q];
            }
        }
    }

    private void findTargets(int j) {
        int next = targetStart[j];
        for (int later = columnStart[j] + 1; later < columnStart[j + 1]; later++) {
            for (int p = columnStart[j]; p < later; p++) {
                target[next++] = find(row[p], row[later]);
            }
        }
    }

    private int find(int column, int wanted) {
        int p = columnStart[column];
        if (row[p] == wanted) {
            return p;
        }
        return Arrays.binarySearch(row, p, columnStart[column + 1], wanted);
    }

    /** Orders and analyses a pattern. */
    static Symbolic of(Adjacency graph) {
        return of(graph, Ordering.of(graph));
    }

    /** Analyses a pattern that is eliminated in a given order. */
    static Symbolic of(Adjacency graph, int[] order) {
        EliminationTree tree = EliminationTree.of(graph, order);
        int n = graph.size;
        int[] columnStart = new int[n + 1];
        int[] entries = new int[graph.start[n] + 16];
        int[] mark = new int[n];
        Arrays.fill(mark, -1);
        int free = 0;
        for (int j = 0; j < n; j++) {
            mark[j] = j;
            int v = tree.order[j];
            entries = room(entries, free, graph.degree(v));
            for (int p = graph.start[v]; p < graph.start[v + 1]; p++) {
                int i = tree.position[graph.neighbour[p]];
                if (i > j) {
                    mark[i] = j;
                    entries[free++] = i;
                }
            }
            for (int c = tree.firstChild[j]; c >= 0; c = tree.nextSibling[c]) {
                int end = columnStart[c + 1];
                entries = room(entries, free, end - columnStart[c]);
                for (int p = columnStart[c]; p < end; p++) {
                    int i = entries[p];
                    if (mark[i] != j) {
                        mark[i] = j;
                        entries[free++] = i;
                    }
                }
            }
            columnStart[j + 1] = free;
        }
        return new Symbolic(tree, columnStart, entries);
    }

    private static int[] room(int[] entries, int used, int more) {
        return used + more <= entries.length ? entries : Arrays.copyOf(entries, used + more + entries.length / 2);
    }

    /** By row first, which visits columns in ascending order, then back by column, which meets rows ascending. */
    private void sortBothWays(int[] unsorted) {
        for (int p = 0; p < row.length; p++) {
            rowStart[unsorted[p] + 1]++;
        }
        for (int i = 0; i < size; i++) {
            rowStart[i + 1] += rowStart[i];
        }
        int[] next = Arrays.copyOf(rowStart, size);
        for (int j = 0; j < size; j++) {
            for (int p = columnStart[j]; p < columnStart[j + 1]; p++) {
                rowColumn[next[unsorted[p]]++] = j;
            }
        }
        System.arraycopy(columnStart, 0, next, 0, size);
        for (int i = 0; i < size; i++) {
            for (int q = rowStart[i]; q < rowStart[i + 1]; q++) {
                int p = next[rowColumn[q]]++;
                row[p] = i;
                rowEntry[q] = p;
            }
        }
    }

    /** {@return the number of entries of the factor outside its diagonal} */
    int entries() {
        return row.length;
    }

    /** {@return the entry of two positions that are neighbours in the pattern} */
    int entry(int i, int j) {
        int column = Math.min(i, j);
        int p = Arrays.binarySearch(row, columnStart[column], columnStart[column + 1], Math.max(i, j));
        if (p < 0) {
            throw new IllegalArgumentException("positions " + i + " and " + j + " have no entry in the factor");
        }
        return p;
    }
}
