package ringout.solve.network;

/**
 * Which elements add to the same conductance of the matrix, and which injections end at the same position: compressed
 * rows over the structure, made once for many re-solves.
 */
final class Places {

    private final int[] start;
    private final int[] member;

    private Places(int[] start, int[] member) {
        this.start = start;
        this.member = member;
    }

    /** Elements by place; an element between equal points has none. */
    static Places ofElements(NetworkStructure structure) {
        int[] place = new int[structure.network().elements()];
        for (int e = 0; e < place.length; e++) {
            place[e] = structure.place(e);
        }
        return of(place, structure.factorEntries() + structure.unknowns());
    }

    /** Injections by the position of either end: member {@code 2 i} enters at it, {@code 2 i + 1} leaves at it. */
    static Places ofInjections(NetworkStructure structure, ResistiveNetwork excitation) {
        int[] place = new int[2 * excitation.injections()];
        for (int i = 0; i < excitation.injections(); i++) {
            place[2 * i] = structure.position(excitation.injectionTo(i));
            place[2 * i + 1] = structure.position(excitation.injectionFrom(i));
        }
        return of(place, structure.unknowns());
    }

    private static Places of(int[] place, int count) {
        int[] start = new int[count + 1];
        for (int p : place) {
            if (p >= 0) {
                start[p + 1]++;
            }
        }
        for (int p = 0; p < count; p++) {
            start[p + 1] += start[p];
        }
        int[] member = new int[start[count]];
        int[] next = start.clone();
        for (int i = 0; i < place.length; i++) {
            if (place[i] >= 0) {
                member[next[place[i]]++] = i;
            }
        }
        return new Places(start, member);
    }

    int first(int place) {
        return start[place];
    }

    int end(int place) {
        return start[place + 1];
    }

    int member(int index) {
        return member[index];
    }
}
