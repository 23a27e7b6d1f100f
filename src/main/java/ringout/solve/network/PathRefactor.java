package ringout.solve.network;

/**
 * Recomputes the part of a factorisation that changed elements reach: the columns on the way from their ends to the
 * roots of the elimination tree. Like the factorisation itself it does not subtract, so an opened element that was the
 * only connection leaves an exact zero, and one that was almost the only connection leaves all digits of the rest.
 *
 * <p>Works on a private copy of the factor, which {@link #restore} brings back to the base. For one thread.
 */
final class PathRefactor {

    private final NetworkStructure structure;
    private final Factor base;
    private final Factor work;
    private final NetworkSolution solution;
    private final double[] baseInjected;
    private final double[] injected;
    private final double[] arrived;
    private final double[] potential;
    private final double[] scratch;
    private final boolean[] marked;
    private final boolean[] needed;
    private final Places places;
    private final Conductances baseConductances;
    private final Conductances conductances;
    private final IntRow changedPlaces = new IntRow();
    private final IntRow seeds = new IntRow();
    private int[] path = new int[0];

    PathRefactor(NetworkSolution solution) {
        this.solution = solution;
        structure = solution.factorised().structure();
        places = structure.places();
        baseConductances = Conductances.of(structure, solution.factorised().network());
        conductances = Conductances.of(structure, solution.factorised().network());
        base = solution.factorised().factor();
        work = base.copy();
        baseInjected = solution.factorised().injected(solution.excitation());
        injected = baseInjected.clone();
        arrived = solution.arrived().clone();
        potential = solution.potentials().clone();
        scratch = new double[base.shape.size];
        needed = new boolean[base.shape.size];
        marked = new boolean[base.shape.size];
    }

    /** Takes over the new resistances of elements, and with them the currents their source voltages drive. */
    void change(Edits edits) {
        ResistiveNetwork network = solution.factorised().network();
        for (EdgeChange.Changed c : edits.changed()) {
            int e = c.element();
            if (structure.carries(e)) {
                sumAnew(structure.place(e), edits);
                double amps = (1 / c.ohms() - network.siemens(e))
                        * solution.excitation().emf(e);
                drive(structure.position(network.from(e)), -amps);
                drive(structure.position(network.to(e)), amps);
            }
        }
    }

    /** The conductance of a place from all its elements: a difference would leave rounding where zero is meant. */
    private void sumAnew(int place, Edits edits) {
        double siemens = 0;
        for (int i = places.first(place); i < places.end(place); i++) {
            siemens += 1 / edits.ohms(places.member(i));
        }
        conductances.set(place, siemens);
        changedPlaces.add(place);
    }

    /** Drives a current into a position on top of what is driven already. */
    void drive(int position, double amps) {
        if (position != NetworkStructure.AT_DATUM) {
            injected[position] += amps;
            seeds.add(position);
        }
    }

    /**
     * Recomputes the paths (once more, if more was driven since the last run) and hands the changes of potential on them
     * to a spread. A column that comes out as it was passes nothing on, so a dead end that is cut off costs almost
     * nothing.
     */
    void run(Spread spread) {
        undo();
        path = ways();
        for (int k : path) {
            if (needed[k]) {
                recompute(k);
            }
        }
        for (int i = path.length - 1; i >= 0; i--) {
            if (needed[path[i]]) {
                place(path[i], spread);
            } else if (spread.inherit(base, path[i])) {
                potential[path[i]] += spread.change(path[i]);
            }
        }
    }

    private void recompute(int k) {
        conductances.load(work, k);
        work.eliminate(k, scratch);
        double amps = injected[k];
        for (int q = base.shape.rowStart[k]; q < base.shape.rowStart[k + 1]; q++) {
            amps += work.share[base.shape.rowEntry[q]] * arrived[base.shape.rowColumn[q]];
        }
        arrived[k] = amps;
        if (arrived[k] != solution.arrived()[k] || !work.sameColumn(base, k)) {
            for (int p = base.shape.columnStart[k]; p < base.shape.columnStart[k + 1]; p++) {
                needed[base.shape.row[p]] = true;
            }
        }
    }

    private void place(int k, Spread spread) {
        double volts = work.pivot[k] == 0 ? 0 : arrived[k] / work.pivot[k];
        int root = Spread.NOT_CUT;
        for (int p = base.shape.columnStart[k]; p < base.shape.columnStart[k + 1]; p++) {
            int i = base.shape.row[p];
            volts += work.share[p] * potential[i];
            root = work.share[p] > 0 && spread.cutRoot(i) != Spread.NOT_CUT ? spread.cutRoot(i) : root;
        }
        double before = solution.potentials()[k];
        if (work.pivot[k] == 0 && base.pivot[k] != 0) {
            volts = before;
            root = k;
        }
        potential[k] = volts;
        spread.set(k, volts - before, root);
    }

    /** The union of the ways to the root from all seeds, ascending. */
    private int[] ways() {
        IntRow union = new IntRow();
        for (int s = 0; s < seeds.size(); s++) {
            needed[seeds.get(s)] = true;
            for (int k = seeds.get(s); k >= 0 && !marked[k]; k = base.shape.tree.parent[k]) {
                marked[k] = true;
                union.add(k);
            }
        }
        return union.toSortedArray();
    }

    /** {@return the factor as it stands after the run} */
    Factor factor() {
        return work;
    }

    /** Undoes all changes. */
    void restore() {
        undo();
        for (int i = 0; i < seeds.size(); i++) {
            int k = seeds.get(i);
            injected[k] = baseInjected[k];
        }
        for (int i = 0; i < changedPlaces.size(); i++) {
            conductances.copy(changedPlaces.get(i), baseConductances);
        }
        seeds.clear();
        changedPlaces.clear();
    }

    /** Brings the columns back to the base, but keeps what was changed and driven. */
    private void undo() {
        for (int k : path) {
            int first = base.shape.columnStart[k];
            System.arraycopy(base.share, first, work.share, first, base.shape.columnStart[k + 1] - first);
            work.pivot[k] = base.pivot[k];
            work.shunt[k] = base.shunt[k];
            arrived[k] = solution.arrived()[k];
            potential[k] = solution.potentials()[k];
            marked[k] = false;
            needed[k] = false;
        }
        path = new int[0];
    }
}
