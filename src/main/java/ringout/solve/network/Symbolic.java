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
