package ringout.graph.power;

import java.util.Optional;
import ringout.graph.Part;
import ringout.graph.Wiring;
import ringout.model.Datum;
import ringout.model.PartKind;

/**
 * A part that passes current one way, seen between ties.
 *
 * @param name its unit and its name there
 * @param part number of its part in the wiring
 * @param anode tie it comes from
 * @param cathode tie it goes to
 * @param drop what it drops while it conducts
 * @param dropKnown whether that is known
 */
record Diode(String name, int part, int anode, int cathode, Volts drop, boolean dropKnown) {
    /** The diode a part is, if it is one. An ideal diode drops nothing to speak of unless its type says so. */
    static Optional<Diode> of(Wiring wiring, Part part, Ties ties) {
        if (!is(part) || !(part.origin() instanceof Part.Inner inner)) {
            return Optional.empty();
        }
        PartKind kind = inner.part().kind().or(PartKind.LINK);
        String name = wiring.directory().name(inner.unit()) + " " + inner.part().name();
        Datum<Double> forward = inner.part().rating().forwardV();
        boolean known = forward.isKnown() || kind == PartKind.IDEAL_DIODE;
        Volts drop = known ? Volts.exactly(forward.or(0.0)) : Volts.POSITIVE;
        return Optional.of(new Diode(name, part.index(), ties.of(part.from()), ties.of(part.to()), drop, known));
    }

    /** Whether a part is a diode or an ideal diode. */
    static boolean is(Part part) {
        return part.origin() instanceof Part.Inner inner
                && (inner.part().kind().is(PartKind.DIODE)
                        || inner.part().kind().is(PartKind.IDEAL_DIODE));
    }
}
