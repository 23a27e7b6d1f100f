package ringout.solve.meter;

import ringout.graph.Part;
import ringout.graph.Wiring;

/** Names of two-terminal parts, with the unit or lead they sit in. */
final class PartNames {
    private PartNames() {}

    static String of(Wiring wiring, Part part) {
        if (part.origin() instanceof Part.Inner inner) {
            return wiring.directory().name(inner.unit()) + " " + inner.part().name();
        }
        if (part.origin() instanceof Part.LeadFuse fuse) {
            return "fuse in " + wiring.wires().get(fuse.wire()).lead().id();
        }
        Part.Terminator terminator = (Part.Terminator) part.origin();
        return "terminator of " + wiring.directory().name(terminator.unit());
    }
}
