package ringout.graph.power;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import ringout.graph.index.BreadthFirst;
import ringout.graph.index.IndexGraph;

/**
 * The voltage at rest of every tie against the reference of its island. An island is what working sources join; its
 * reference is the tie with most 0V pins. Sources are steps up from minus to plus, taken breadth first from the reference;
 * a second source between the same points widens the range. Diodes come after, in their own order.
 */
final class Potentials {
    private static final int NONE = -1;

    private final Ties ties;
    private final List<Step> steps;
    private final BreadthFirst tree;
    private final @Nullable Volts[] volts;
    private final int[] reference;
    /** The tie before it on the way from the reference, or -1. */
    private final int[] before;
    /** The step taken from there, or -1 at a reference. */
    private final int[] stepOf;

    private final int[] depth;

    Potentials(Ties ties, int[] zeroPins, List<PowerSource> sources, Feeding feeding) {
        this.ties = ties;
        int n = ties.count();
        volts = new @Nullable Volts[n];
        reference = filled(n);
        before = filled(n);
        stepOf = filled(n);
        depth = new int[n];
        steps = Step.of(ties, zeroPins, sources, feeding);
        int taken = steps.size();
        IndexGraph graph = IndexGraph.undirected(
                n,
                steps.stream().mapToInt(Step::from).toArray(),
                steps.stream().mapToInt(Step::to).toArray());
        tree = BreadthFirst.from(graph, references(zeroPins, graph));
        for (int i = 0; i < tree.reachedCount(); i++) {
            step(tree.vertexAt(i));
        }
        for (int s = 0; s < taken; s++) {
            secondSource(s);
        }
        new DiodeOrder(feeding.diodes, n).run(this::behind);
        feeding.diodes.forEach(this::before);
    }

    private static int[] filled(int n) {
        int[] array = new int[n];
        Arrays.fill(array, NONE);
        return array;
    }

    /** One tie an island: the one with most 0V pins, then one no source lifts, then the first. */
    private int[] references(int[] zeroPins, IndexGraph graph) {
        long[] rank = rank(zeroPins);
        BreadthFirst islands = BreadthFirst.everywhere(graph);
        int[] best = new int[ties.count()];
        int count = 0;
        for (int i = 0; i < islands.reachedCount(); i++) {
            int tie = islands.vertexAt(i);
            if (graph.degree(tie) == 0) {
                continue;
            }
            if (islands.parentEdge(tie) < 0) {
                best[count++] = tie;
            } else if (rank[tie] > rank[best[count - 1]]) {
                best[count - 1] = tie;
            }
        }
        return Arrays.copyOf(best, count);
    }

    private long[] rank(int[] zeroPins) {
        long[] rank = new long[ties.count()];
        Arrays.setAll(rank, tie -> 2L * zeroPins[tie] + 1);
        steps.forEach(step -> rank[step.to()] &= ~1L);
        return rank;
    }

    private void step(int tie) {
        int edge = tree.parentEdge(tie);
        if (edge < 0) {
            volts[tie] = Volts.ZERO;
            reference[tie] = tie;
        } else {
            join(tie, tree.parent(tie), edge);
        }
    }

    private void join(int tie, int parent, int step) {
        reference[tie] = reference[parent];
        before[tie] = parent;
        stepOf[tie] = step;
        depth[tie] = depth[parent] + 1;
        volts[tie] = at(parent).plus(stepInto(tie));
    }

    /** A source that was not stepped over: unless it stands on its head, its points may also be as far apart as it says. */
    private void secondSource(int index) {
        Step step = steps.get(index);
        boolean second = stepOf[step.to()] != index && stepOf[step.from()] != index && step.from() != step.to();
        if (second && between(step.to(), step.from()).orElse(Volts.ZERO).sign() == Volts.Sign.ABOVE) {
            volts[step.to()] = at(step.to()).or(at(step.from()).plus(step.rise()));
        }
    }

    private void behind(Diode diode) {
        Volts anode = volts[diode.anode()];
        Volts cathode = volts[diode.cathode()];
        if (anode == null || diode.anode() == diode.cathode()) {
            return;
        }
        if (cathode == null) {
            steps.add(new Step(diode.anode(), diode.cathode(), diode.drop().negated(), NONE));
            join(diode.cathode(), diode.anode(), steps.size() - 1);
        } else if (reference[diode.cathode()] == reference[diode.anode()]) {
            volts[diode.cathode()] = cathode.max(anode.minus(diode.drop()));
        }
    }

    /** A diode in a return: what stands before it lies a drop above what stands behind it. */
    private void before(Diode diode) {
        if (volts[diode.anode()] == null && volts[diode.cathode()] != null) {
            steps.add(new Step(diode.cathode(), diode.anode(), diode.drop(), NONE));
            join(diode.anode(), diode.cathode(), steps.size() - 1);
        }
    }

    private Volts at(int tie) {
        Volts known = volts[tie];
        if (known == null) {
            throw new IllegalStateException("tie " + tie + " is in no island");
        }
        return known;
    }

    /** The voltage of a tie against its reference, if a working source joins it to one. */
    Optional<Volts> of(int tie) {
        return Optional.ofNullable(volts[tie]);
    }

    /** The tie that is the reference of a tie, or -1. */
    int reference(int tie) {
        return reference[tie];
    }

    /** The next tie on the way to the reference, or -1. */
    int before(int tie) {
        return before[tie];
    }

    /** The step taken on the way from there, if there is one. */
    Optional<Step> stepTo(int tie) {
        return stepOf[tie] < 0 ? Optional.empty() : Optional.of(steps.get(stepOf[tie]));
    }

    /** One tie against another, by the steps between them, if they are in one island. */
    Optional<Volts> between(int plus, int minus) {
        if (plus == minus) {
            return Optional.of(Volts.ZERO);
        }
        if (reference[plus] < 0 || reference[plus] != reference[minus]) {
            return Optional.empty();
        }
        if (reference[plus] == minus) {
            return of(plus);
        }
        Volts up = Volts.ZERO;
        Volts down = Volts.ZERO;
        int a = plus;
        int b = minus;
        while (a != b) {
            if (depth[a] >= depth[b]) {
                up = up.plus(stepInto(a));
                a = before[a];
            } else {
                down = down.plus(stepInto(b));
                b = before[b];
            }
        }
        return Optional.of(up.minus(down));
    }

    private Volts stepInto(int tie) {
        Step step = steps.get(stepOf[tie]);
        return step.to() == tie ? step.rise() : step.rise().negated();
    }
}
