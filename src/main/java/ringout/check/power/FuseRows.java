package ringout.check.power;

import ringout.check.form.Figures;
import ringout.check.form.Situation;
import ringout.finding.Draft;
import ringout.graph.Part;
import ringout.graph.power.Protection;
import ringout.model.Unit;

/** Words and rows of fuses. */
final class FuseRows {
    private FuseRows() {}

    /** {@code 20 A in W64}, {@code 3 A in PDB F7}. */
    static String words(Situation at, Part fuse) {
        return amps(at, fuse) + " A in " + where(at, fuse);
    }

    /** Where a fuse sits: {@code W64}, {@code PDB F7}. */
    static String where(Situation at, Part fuse) {
        if (fuse.origin() instanceof Part.LeadFuse inLead) {
            return at.wiring().wires().get(inLead.wire()).lead().id();
        }
        return fuse.origin() instanceof Part.Inner inner
                ? at.directory().name(inner.unit()) + " " + inner.part().name()
                : "?";
    }

    /** The rating of a fuse as a message says it. */
    static String amps(Situation at, Part fuse) {
        return Figures.of(Protection.of(at.circuit()).rating(fuse).or(Double.NaN));
    }

    /** Points a finding at a fuse: its lead, or its unit and its name. */
    static void at(Situation at, Draft draft, Part fuse) {
        if (fuse.origin() instanceof Part.LeadFuse inLead) {
            draft.at(at.wiring().wires().get(inLead.wire()).lead());
        } else if (fuse.origin() instanceof Part.Inner inner) {
            Unit unit = at.directory().unit(inner.unit());
            draft.at(unit, inner.part().name());
        }
    }
}
