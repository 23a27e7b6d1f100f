package ringout.solve.network;

/** Finds injected currents that lost their return when a part was cut off, and takes them out of the equations. */
final class StoppedInjections {

    private final NetworkSolution base;
    private final NetworkStructure structure;
    private final Places byPosition;

    StoppedInjections(NetworkSolution base) {
        this.base = base;
        structure = base.factorised().structure();
        byPosition = Places.ofInjections(structure, base.excitation());
    }

    /** Cancels, at both ends, the injections between a cut-off part and the rest; false if there are none. */
    boolean drive(Spread spread, PathRefactor refactor) {
        boolean any = false;
        for (int t = 0; t < spread.touched().size(); t++) {
            int k = spread.touched().get(t);
            if (spread.cutRoot(k) != Spread.NOT_CUT) {
                any |= driveAt(k, spread, refactor);
            }
        }
        return any;
    }

    private boolean driveAt(int k, Spread spread, PathRefactor refactor) {
        ResistiveNetwork excitation = base.excitation();
        boolean any = false;
        for (int m = byPosition.first(k); m < byPosition.end(k); m++) {
            int injection = byPosition.member(m) / 2;
            boolean entersHere = byPosition.member(m) % 2 == 0;
            int from = excitation.injectionFrom(injection);
            int to = excitation.injectionTo(injection);
            int other = structure.position(entersHere ? from : to);
            if (base.flows(injection) && spread.cutRoot(other) != spread.cutRoot(k)) {
                any = true;
                double amps = entersHere ? excitation.injectionAmps(injection) : -excitation.injectionAmps(injection);
                refactor.drive(k, -amps);
                // An end in another cut-off part is met there as well and cancels itself.
                if (spread.cutRoot(other) == Spread.NOT_CUT) {
                    refactor.drive(other, amps);
                }
            }
        }
        return any;
    }
}
