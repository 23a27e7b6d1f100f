package ringout.solve.meter;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import ringout.graph.Circuit;
import ringout.graph.index.IndexGraph;
import ringout.solve.MeterElement;
import ringout.solve.MeterElements;
import ringout.solve.Tolerance;

/**
 * The network an ohmmeter sees, as it is and with single changes. A question costs only the part that conducts to the
 * probed points.
 */
public final class MeterNetwork {
    private static final MeterElement.Piece SHORT = new MeterElement.OfJoin(-1);

    private final List<MeterElement> elements;
    private final IndexGraph graph;

    private MeterNetwork(Circuit circuit) {
        this.elements = MeterElements.of(circuit);
        int[] from = elements.stream().mapToInt(MeterElement::a).toArray();
        int[] to = elements.stream().mapToInt(MeterElement::b).toArray();
        this.graph = IndexGraph.undirected(circuit.wiring().graph().vertexCount(), from, to);
    }

    /** The network of a circuit, made once. */
    public static MeterNetwork of(Circuit circuit) {
        return circuit.know(MeterNetwork.class, MeterNetwork::new);
    }

    /** All elements, those out of the circuit too. */
    public List<MeterElement> elements() {
        return elements;
    }

    /** The reading between two vertices after some changes. */
    public Reading reading(int a, int b, List<Change> changes) {
        Island island = island(a, changes);
        return island.has(b) ? island.reading(a, b) : new Reading.NoConnection();
    }

    /** The reading between two vertices as the circuit is. */
    public Reading reading(int a, int b) {
        return reading(a, b, List.of());
    }

    /** Numbers of the elements at a vertex as the circuit is, those out of it too. */
    List<Integer> at(int vertex) {
        List<Integer> at = new ArrayList<>();
        for (int end = graph.endSlot(vertex), s = graph.firstSlot(vertex); s < end; s = graph.nextSlot(s, end)) {
            at.add(graph.slotEdge(s));
        }
        return at;
    }

    /** What conducts to a vertex as the circuit is. */
    Island island(int vertex) {
        return island(vertex, List.of());
    }

    /** What conducts to a vertex after some changes. */
    Island island(int start, List<Change> changes) {
        Overlay overlay = new Overlay(changes);
        Island island = new Island();
        Set<Integer> taken = new HashSet<>();
        Deque<Integer> open = new ArrayDeque<>();
        island.reach(start);
        open.add(start);
        while (!open.isEmpty()) {
            int vertex = open.remove();
            for (int end = graph.endSlot(vertex), s = graph.firstSlot(vertex); s < end; s = graph.nextSlot(s, end)) {
                int edge = graph.slotEdge(s);
                MeterElement element = elements.get(edge);
                if (element.live() && !overlay.hides(edge) && taken.add(edge)) {
                    take(island, edge, element, vertex, open);
                }
            }
            for (int extra : overlay.at(vertex)) {
                if (taken.add(-1 - extra)) {
                    Island.Member member = overlay.added.get(extra);
                    take(island, member.number(), member.element(), vertex, open);
                }
            }
        }
        return island;
    }

    private static void take(Island island, int number, MeterElement element, int from, Deque<Integer> open) {
        int other = element.other(from);
        if (island.reach(other)) {
            open.add(other);
        }
        island.add(number, element);
    }

    /** The changes, ready to be asked: which elements are not as they were, and what is new at a vertex. */
    private final class Overlay {
        private final Map<Integer, Optional<MeterElement>> changed = new HashMap<>();
        private final List<Island.Member> added = new ArrayList<>();
        private final Map<Integer, List<Integer>> addedAt = new HashMap<>();

        Overlay(List<Change> changes) {
            for (Change change : changes) {
                note(change);
            }
            changed.forEach((number, now) -> now.ifPresent(element -> added.add(new Island.Member(number, element))));
            added.sort(Comparator.comparingInt(Island.Member::number));
            for (int i = 0; i < added.size(); i++) {
                MeterElement element = added.get(i).element();
                addedAt.computeIfAbsent(element.a(), key -> new ArrayList<>()).add(i);
                addedAt.computeIfAbsent(element.b(), key -> new ArrayList<>()).add(i);
            }
        }

        private void note(Change change) {
            if (change instanceof Change.Opened opened) {
                changed.put(opened.element(), Optional.empty());
            } else if (change instanceof Change.Closed closed) {
                changed.put(
                        closed.element(),
                        Optional.of(elements.get(closed.element()).live(true)));
            } else if (change instanceof Change.Moved moved) {
                changed.put(
                        moved.element(),
                        Optional.of(elements.get(moved.element()).between(moved.a(), moved.b())));
            } else if (change instanceof Change.Added extra) {
                added.add(new Island.Member(
                        -1, new MeterElement(extra.a(), extra.b(), extra.ohm(), true, SHORT, Tolerance.NONE)));
            }
        }

        boolean hides(int edge) {
            return changed.containsKey(edge);
        }

        /** Places in {@link #added} of what is new at a vertex. */
        List<Integer> at(int vertex) {
            return addedAt.isEmpty() ? List.of() : addedAt.getOrDefault(vertex, List.of());
        }
    }
}
