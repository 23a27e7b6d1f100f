package ringout.check.topology;

import java.util.List;
import ringout.check.form.Check;
import ringout.check.form.CheckInfo;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.finding.Draft;
import ringout.finding.Severity;
import ringout.model.Unit;

/**
 * A unit that no lead reaches.
 *
 * <p>Why it matters: it is aboard and does nothing, or a row of the list is missing.
 *
 * <p>Condition: no conductor of the list ends at any plug of a unit aboard. S4 when it is stowed; nothing when it is marked as
 * working alone (a beacon with its own cell, a mechanical item). A plug pulled in a state still has its lead.
 *
 * <p>Does not see: units whose leads end at the wrong plug (T02, T05); units without any plug.
 *
 * <p>Reference: common practice, no source.
 */
@CheckInfo(
        code = "T01",
        name = "orphan-unit",
        severity = Severity.S2,
        since = "0.1",
        needs = {"stand-alone mark of a unit without leads"})
public final class OrphanUnit implements Check {
    @Override
    public void look(Situation at, Outcomes out) {
        List<Unit> units = at.aircraft().units();
        for (int index = 0; index < units.size(); index++) {
            boolean plugs = !at.directory().type(index).plugs().isEmpty();
            if (at.circuit().aboard(index) && (plugs || !at.directory().typeKnown(index))) {
                look(at, out, units.get(index), index);
            }
        }
    }

    private static void look(Situation at, Outcomes out, Unit unit, int index) {
        if (OpenPlugs.touched(at, index) || unit.standAlone().is(true)) {
            out.looked();
        } else if (unit.standAlone() instanceof ringout.model.Datum.Unknown) {
            out.cannotTell(
                    "whether " + unit.ref() + " works without any lead",
                    "look at the unit: own cell, or nothing electric in it",
                    2,
                    unit.ref());
        } else {
            out.finding(draft(at, unit, index));
        }
    }

    private static Draft draft(Situation at, Unit unit, int index) {
        boolean stowed = unit.stowed().is(true);
        String plugs = String.join(
                ", ",
                at.directory().type(index).plugs().stream()
                        .map(plug -> plug.name())
                        .toList());
        Draft draft = Draft.of(
                        stowed ? Severity.S4 : Severity.S2,
                        "orphan unit: no lead reaches " + unit.ref() + (stowed ? ", which is stowed" : ""))
                .about(unit.ref())
                .at(unit, "leads")
                .sum("0 leads at the plugs of " + unit.ref() + (plugs.isEmpty() ? "" : ": " + plugs))
                .why("it is aboard and does nothing, or a row of the list is missing")
                .fix("add the lead of " + unit.ref() + ", or mark it as working alone, stowed or taken off")
                .cause(LooseTerminators.cause(unit))
                .explains("T02", "T04", "T06", "T21", "S02", "S04", "S21", "S22");
        OpenPlugs.causes(at, index).forEach(draft::cause);
        Mates.required(at, index).forEach(mates -> mates.causes(at).forEach(draft::cause));
        return draft;
    }
}
