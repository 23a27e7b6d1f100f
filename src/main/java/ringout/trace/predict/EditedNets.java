package ringout.trace.predict;

import java.util.ArrayDeque;
import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import ringout.graph.Nets;

/** The nets after some changes. Only nets that the changes touch are walked anew. */
final class EditedNets {
    private final Nets before;
    private final Map<Integer, Integer> anew = new HashMap<>();
    private int next;

    EditedNets(Edited edited) {
        this.before = edited.circuit().nets();
        this.next = before.count();
        Set<Integer> nets = new TreeSet<>();
        edited.touched().forEach(vertex -> nets.add(before.of(vertex)));
        for (int net : nets) {
            for (int i = 0; i < before.size(net); i++) {
                flood(edited, before.member(net, i));
            }
        }
    }

    private void flood(Edited edited, int start) {
        if (anew.containsKey(start)) {
            return;
        }
        int label = next++;
        ArrayDeque<Integer> open = new ArrayDeque<>();
        anew.put(start, label);
        open.add(start);
        while (!open.isEmpty()) {
            edited.joined(open.remove(), other -> {
                if (anew.putIfAbsent(other, label) == null) {
                    open.add(other);
                }
            });
        }
    }

    /** The net of a vertex. */
    int of(int vertex) {
        return anew.isEmpty() ? before.of(vertex) : anew.getOrDefault(vertex, before.of(vertex));
    }

    boolean same(int a, int b) {
        return of(a) == of(b);
    }

    /** Whether the net of a vertex is not the one it was. */
    boolean changed(int vertex) {
        return anew.containsKey(vertex);
    }
}
