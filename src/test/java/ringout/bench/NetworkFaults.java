package ringout.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import ringout.solve.network.EdgeChange;
import ringout.solve.network.FactorisedNetwork;
import ringout.solve.network.NetworkBuilder;
import ringout.solve.network.NetworkSolution;
import ringout.solve.network.NodeVoltage;
import ringout.solve.network.ResistiveNetwork;
import ringout.solve.network.Resolved;
import ringout.solve.network.Resolver;

/**
 * The single faults of a supply network: every conductor open, every contact with an ohm too much, every load dead, every load
 * shorted with the fuse before it open. Solved by changes of low rank, and by factorising and solving anew.
 */
final class NetworkFaults {
    private static final double LOAD_OHM = 20;
    private static final double FUSE_OHM = 0.002;
    private static final double MORE_OHM = 1;
    private static final double SHORT_OHM = 0.001;

    private final ResistiveNetwork network;
    private final NetworkSolution solution;
    private final List<EdgeChange[]> all = new ArrayList<>();

    NetworkFaults(ResistiveNetwork network) {
        this.network = network;
        this.solution = FactorisedNetwork.of(network).solve();
        List<Integer> fuses = new ArrayList<>();
        for (int e = 0; e < network.elements(); e++) {
            if (network.ohms(e) == FUSE_OHM) {
                fuses.add(e);
            }
        }
        int loads = 0;
        for (int e = 0; e < network.elements(); e++) {
            boolean source = network.emf(e) != 0;
            all.add(new EdgeChange[] {new EdgeChange.Opened(e)});
            if (!source) {
                all.add(new EdgeChange[] {new EdgeChange.Changed(e, network.ohms(e) + MORE_OHM)});
            }
            if (!source && network.ohms(e) >= LOAD_OHM) {
                int fuse = fuses.get(loads++ % fuses.size());
                all.add(new EdgeChange[] {
                    new EdgeChange.Added(network.from(e), network.to(e), SHORT_OHM), new EdgeChange.Opened(fuse)
                });
            }
        }
    }

    int count() {
        return all.size();
    }

    /** Numbers of some faults, spread evenly over all kinds, in an order that a seed gives. */
    int[] some(int wanted, long seed) {
        return new Random(seed)
                .ints(Math.min(wanted, all.size()), 0, all.size())
                .toArray();
    }

    Resolver resolver() {
        return Resolver.of(solution);
    }

    Resolved quick(Resolver resolver, int fault, double toleranceVolts) {
        return resolver.after(toleranceVolts, all.get(fault));
    }

    /** The same by factorising with the known order of elimination where nothing is added, from the start where it is. */
    NetworkSolution anew(int fault) {
        double[] ohms = new double[network.elements()];
        for (int e = 0; e < ohms.length; e++) {
            ohms[e] = network.ohms(e);
        }
        List<EdgeChange.Added> added = new ArrayList<>();
        for (EdgeChange change : all.get(fault)) {
            if (change instanceof EdgeChange.Opened opened) {
                ohms[opened.element()] = Double.POSITIVE_INFINITY;
            } else if (change instanceof EdgeChange.Changed changed) {
                ohms[changed.element()] = changed.ohms();
            } else if (change instanceof EdgeChange.Added join) {
                added.add(join);
            }
        }
        return added.isEmpty()
                ? solution.factorised()
                        .structure()
                        .factorise(network.withOhms(ohms))
                        .solve()
                : FactorisedNetwork.of(with(ohms, added)).solve();
    }

    private ResistiveNetwork with(double[] ohms, List<EdgeChange.Added> added) {
        NetworkBuilder builder = ResistiveNetwork.builder(network.nodes());
        for (int e = 0; e < ohms.length; e++) {
            if (network.emf(e) == 0) {
                builder.resistor(network.from(e), network.to(e), ohms[e]);
            } else {
                builder.source(network.from(e), network.to(e), network.emf(e), ohms[e]);
            }
        }
        added.forEach(join -> builder.resistor(join.a(), join.b(), join.ohms()));
        for (int r = 0; r < network.references(); r++) {
            builder.reference(network.reference(r));
        }
        return builder.build();
    }

    /** The largest difference of any node's voltage in V; infinite when one has a voltage and the other has none. */
    double apart(Resolved quick, NetworkSolution anew) {
        double most = 0;
        for (int node = 0; node < network.nodes(); node++) {
            NodeVoltage a = quick.voltage(node);
            NodeVoltage b = anew.voltage(node);
            if (a instanceof NodeVoltage.Volts one && b instanceof NodeVoltage.Volts other) {
                most = Math.max(most, Math.abs(one.value() - other.value()));
            } else if (!a.getClass().equals(b.getClass())) {
                return Double.POSITIVE_INFINITY;
            }
        }
        return most;
    }
}
