package ringout.solve.network;

/** Conductances of a network in siemens, by entry of the factor and by position of elimination. */
final class Conductances {

    private final double[] mutual;
    private final double[] toDatum;

    private Conductances(double[] mutual, double[] toDatum) {
        this.mutual = mutual;
        this.toDatum = toDatum;
    }

    /** Sums the elements of each place. */
    static Conductances of(NetworkStructure structure, ResistiveNetwork values) {
        int entries = structure.factorEntries();
        double[] mutual = new double[entries];
        double[] toDatum = new double[structure.unknowns()];
        for (int e = 0; e < values.elements(); e++) {
            int place = structure.place(e);
            if (place >= entries) {
                toDatum[place - entries] += values.siemens(e);
            } else if (place != NetworkStructure.NOWHERE) {
                mutual[place] += values.siemens(e);
            }
        }
        return new Conductances(mutual, toDatum);
    }

    /** Sets the conductance of a place. */
    void set(int place, double siemens) {
        if (place < mutual.length) {
            mutual[place] = siemens;
        } else {
            toDatum[place - mutual.length] = siemens;
        }
    }

    /** Takes the conductance of a place from others. */
    void copy(int place, Conductances others) {
        set(place, place < mutual.length ? others.mutual[place] : others.toDatum[place - mutual.length]);
    }

    /** Puts the conductances of a column where it is eliminated from. */
    void load(Factor factor, int column) {
        int first = factor.shape.columnStart[column];
        System.arraycopy(mutual, first, factor.share, first, factor.shape.columnStart[column + 1] - first);
        factor.shunt[column] = toDatum[column];
    }

    /** {@return conductance between the two positions of each entry; 0 for fill} */
    double[] mutual() {
        return mutual;
    }

    /** {@return conductance from each position to the datum} */
    double[] toDatum() {
        return toDatum;
    }
}
