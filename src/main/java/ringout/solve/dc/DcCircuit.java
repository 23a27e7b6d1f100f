package ringout.solve.dc;

import java.util.ArrayList;
import java.util.List;

/** A direct-current circuit: numbered nodes, elements between them, nodes that are called zero. Immutable. */
public final class DcCircuit {

    private final int nodes;
    private final List<DcElement> elements;
    private final List<Integer> references;

    private DcCircuit(int nodes, List<DcElement> elements, List<Integer> references) {
        this.nodes = nodes;
        this.elements = List.copyOf(elements);
        this.references = List.copyOf(references);
    }

    /** {@return an empty circuit of a number of nodes, to be filled} */
    public static Builder builder(int nodes) {
        return new Builder(nodes);
    }

    /** {@return the number of nodes} */
    public int nodes() {
        return nodes;
    }

    /** {@return the elements in the order of their numbers} */
    public List<DcElement> elements() {
        return elements;
    }

    /** {@return the nodes called zero; in an island with several the first counts} */
    public List<Integer> references() {
        return references;
    }

    /** Collects the parts of a circuit. */
    public static final class Builder {

        private final int nodes;
        private final List<DcElement> elements = new ArrayList<>();
        private final List<Integer> references = new ArrayList<>();

        private Builder(int nodes) {
            this.nodes = nodes;
        }

        /** {@return the number of the element just added} */
        public int add(DcElement element) {
            check(element);
            elements.add(element);
            return elements.size() - 1;
        }

        /** Calls a node the zero of its island, unless the island has one already. */
        public Builder reference(int node) {
            references.add(node);
            return this;
        }

        /** {@return the circuit as it stands} */
        public DcCircuit build() {
            return new DcCircuit(nodes, elements, references);
        }

        private static void check(DcElement element) {
            if (element instanceof DcElement.Load load) {
                double amount = amount(load.draw());
                if (!(amount >= 0) || (Double.isInfinite(amount) && !(load.draw() instanceof Draw.Resistive))) {
                    throw new IllegalArgumentException("a load of " + load.draw());
                }
            } else if (element instanceof DcElement.Diode d) {
                if (!(d.dropVolts() >= 0) || !(d.ohms() > 0) || !Double.isFinite(d.dropVolts() + d.ohms())) {
                    throw new IllegalArgumentException("a diode of " + d.dropVolts() + " V and " + d.ohms() + " ohm");
                }
            }
        }

        private static double amount(Draw draw) {
            if (draw instanceof Draw.ConstantCurrent c) {
                return c.amps();
            } else if (draw instanceof Draw.ConstantPower p) {
                return p.watts();
            } else if (draw instanceof Draw.Resistive r) {
                return r.ohms() > 0 ? r.ohms() : Double.NaN;
            }
            throw new IllegalArgumentException("unknown draw " + draw);
        }
    }
}
