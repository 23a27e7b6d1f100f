package ringout.graph.power;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;

/**
 * A rise from one tie to another.
 *
 * @param from tie it starts at: minus of a source
 * @param to tie it leads to: plus of a source
 * @param rise how far
 * @param source the source that makes it; -1 for a diode
 */
record Step(int from, int to, Volts rise, int source) {
    /** The steps of the working sources, and of diodes between the 0V of the loads and the minus of a pack. */
    static List<Step> of(Ties ties, int[] zeroPins, List<PowerSource> sources, Feeding feeding) {
        List<Step> steps = new ArrayList<>();
        BitSet packMinus = new BitSet();
        for (PowerSource source : sources) {
            if (feeding.on.get(source.index()) && source.minus() >= 0) {
                int minus = ties.of(source.minus());
                steps.add(new Step(minus, ties.of(source.plus()), source.volts(), source.index()));
                packMinus.set(minus, packMinus.get(minus) || source.kind() == PowerSource.Kind.PACK);
            }
        }
        for (Diode diode : feeding.diodes) {
            if (packMinus.get(diode.cathode()) && zeroPins[diode.anode()] > 0) {
                steps.add(new Step(diode.cathode(), diode.anode(), diode.drop(), -1));
            }
        }
        return steps;
    }
}
