package ringout.solve.network;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import ringout.solve.network.Compensation.Branch;
import ringout.solve.network.EdgeChange.Added;
import ringout.solve.network.EdgeChange.Changed;
import ringout.solve.network.Resolved.Method;

/**
 * Answers "what if" for a solved network without solving it again: one element opened, changed or added, or a few at
 * once (a short and the fuse it blows).
 *
 * <p>One change is a change of rank one: with {@code dg} its conductance, {@code q} the resistance of the network between
 * its ends and {@code V} the voltage that drives it, all potentials move by {@code -dg V / (1 + dg q)} times those of one
 * ampere between its ends (compensation; W. F. Tinney, IEEE Transactions on Power Apparatus and Systems 91, 1972). Only
 * the way up the elimination tree is computed, then the answer spreads as far as it exceeds the tolerance
 * ({@link Spread}). When an element that carries nearly everything opens, {@code 1 + dg q} is nearly zero and would be
 * all rounding; the columns on that way are then factorised again instead ({@link PathRefactor}), which is
 * exact for a cut as well. What no local method covers (0 Ω given or taken, islands joined) is solved from the start.
 *
 * <p>Injected currents that a change leaves without a return stop flowing, and both their ends feel it.
 *
 * <p>Holds working space of the size of the network, so an instance is for one thread at a time.
 */
public final class Resolver {

    /** With more changes than this, pairs of changes cost more than factorising their ways. */
    private static final int MOST_COMPENSATED = 4;

    private final NetworkSolution base;
    private final NetworkStructure structure;
    private final ResistiveNetwork network;
    private final Compensation compensation;
    private final PathRefactor refactor;
    private final Compensation afterwards;
    private final Spread spread;
    private final Spread second;
    private final StoppedInjections stopped;

    private Resolver(NetworkSolution base) {
        this.base = base;
        structure = base.factorised().structure();
        network = base.factorised().network();
        compensation = new Compensation(base.factorised().factor());
        refactor = new PathRefactor(base);
        afterwards = new Compensation(refactor.factor());
        spread = new Spread(structure.symbolic());
        second = new Spread(structure.symbolic());
        stopped = new StoppedInjections(base);
    }

    /** {@return a resolver around a solution} */
    public static Resolver of(NetworkSolution solution) {
        return new Resolver(solution);
    }

    /**
     * Applies changes to the solved network.
     *
     * @param toleranceVolts a point that moves by less may be left where it was; 0 follows every change to its end
     * @param changes what changes, all at once, each element at most once
     * @return the changed network's solution
     */
    public Resolved after(double toleranceVolts, EdgeChange... changes) {
        Edits edits = new Edits(network, List.of(changes));
        if (edits.regroupsPoints() || joinsIslands(edits)) {
            return anew(edits);
        }
        spread.clear();
        second.clear();
        List<Branch> branches = branches(edits);
        if (branches.isEmpty()) {
            return new ResolvedLocally(base, edits, Method.COMPENSATION, spread, second);
        }
        if (branches.size() <= MOST_COMPENSATED && compensation.apply(branches, spread)) {
            spread.run(base.factorised().factor(), toleranceVolts);
            return new ResolvedLocally(base, edits, Method.COMPENSATION, spread, second);
        }
        return edits.added().size() > 1 ? anew(edits) : refactorise(edits, toleranceVolts);
    }

    private Resolved anew(Edits edits) {
        return new ResolvedAnew(
                FactorisedNetwork.of(edits.rebuilt(base.excitation())).solve());
    }

    private boolean joinsIslands(Edits edits) {
        for (Added a : edits.added()) {
            if (!base.factorised().connected(a.a(), a.b())) {
                return true;
            }
        }
        for (Changed c : edits.changed()) {
            if (!base.factorised().connected(network.from(c.element()), network.to(c.element()))) {
                return true;
            }
        }
        return false;
    }

    /** What joins before what parts: a wire that breaks off and touches elsewhere then never seems to cut anything off. */
    private List<Branch> branches(Edits edits) {
        List<Branch> branches = new ArrayList<>();
        for (Added a : edits.added()) {
            add(branches, a.a(), a.b(), 1 / a.ohms(), 0);
        }
        for (Changed c : edits.changed()) {
            double siemens = 1 / c.ohms() - network.siemens(c.element());
            double emf = base.excitation().emf(c.element());
            add(branches, network.from(c.element()), network.to(c.element()), siemens, emf);
        }
        branches.sort(Comparator.comparingDouble(branch -> -branch.siemens()));
        return branches;
    }

    private void add(List<Branch> branches, int a, int b, double siemens, double emf) {
        if (structure.point(a) != structure.point(b) && siemens != 0) {
            double volts = base.potential(a) - base.potential(b) + emf;
            branches.add(new Branch(structure.position(a), structure.position(b), siemens, volts));
        }
    }

    private Resolved refactorise(Edits edits, double toleranceVolts) {
        double tolerance = edits.added().isEmpty() ? toleranceVolts : toleranceVolts / 2;
        try {
            refactor.change(edits);
            refactor.run(spread);
            spread.run(refactor.factor(), tolerance);
            if (stopped.drive(spread, refactor)) {
                spread.clear();
                refactor.run(spread);
                spread.run(refactor.factor(), tolerance);
            }
            boolean done = edits.added().isEmpty()
                    || compensateAfterwards(edits.added().get(0), tolerance);
            return done
                    ? new ResolvedLocally(base, edits, Method.PARTIAL_REFACTORISATION, spread, second)
                    : anew(edits);
        } finally {
            refactor.restore();
        }
    }

    private boolean compensateAfterwards(Added a, double tolerance) {
        int i = structure.position(a.a());
        int j = structure.position(a.b());
        if (spread.cutRoot(i) != spread.cutRoot(j)) {
            return false;
        }
        List<Branch> branch = new ArrayList<>();
        add(branch, a.a(), a.b(), 1 / a.ohms(), spread.change(i) - spread.change(j));
        if (!branch.isEmpty()) {
            if (!afterwards.apply(branch, second)) {
                return false;
            }
            second.run(refactor.factor(), tolerance);
        }
        return true;
    }
}
