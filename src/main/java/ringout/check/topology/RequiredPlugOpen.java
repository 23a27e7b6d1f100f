package ringout.check.topology;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import ringout.check.form.Check;
import ringout.check.form.CheckInfo;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.finding.Draft;
import ringout.finding.Severity;
import ringout.model.Unit;

/**
 * A plug without a lead that the unit cannot do without.
 *
 * <p>Why it matters: the unit does not work, or works without the input it protects the aircraft by.
 *
 * <p>Condition: a plug marked as required, or all plugs of a group of which one is required, have no lead. When the type marks
 * none: supply inputs, the command receiver and battery sensing of a flight controller, the first bus socket of other units.
 * A plug pulled in a state still has its lead.
 *
 * <p>Does not see: a lead that is there but ends at the wrong place (T05), or lacks a conductor (T13, P10).
 *
 * <p>Reference: common practice, no source.
 */
@CheckInfo(
        code = "T02",
        name = "required-plug-open",
        severity = Severity.S2,
        since = "0.1",
        needs = {"required mark of each plug", "unit type"})
public final class RequiredPlugOpen implements Check {
    /** With more open plugs than this the list is not finished, and guessing at leads helps nobody. */
    private static final int FEW = 100;

    @Override
    public void look(Situation at, Outcomes out) {
        TreeSet<String> untyped = new TreeSet<>();
        TreeSet<String> unmarked = new TreeSet<>();
        List<Open> open = new ArrayList<>();
        List<Unit> units = at.aircraft().units();
        for (int unit = 0; unit < units.size(); unit++) {
            if (!at.circuit().aboard(unit) || units.get(unit).stowed().is(true)) {
                continue;
            }
            if (!at.directory().typeKnown(unit)) {
                untyped.add(units.get(unit).type());
                continue;
            }
            RequiredPlugs required = RequiredPlugs.of(at, unit);
            look(at, out, unit, required, open);
            for (int plug : required.unknown()) {
                if (!OpenPlugs.wired(at, unit, plug)) {
                    unmarked.add(at.wiring().plugName(unit, plug));
                }
            }
        }
        open.forEach(spot -> out.finding(draft(at, spot, open)));
        ask(out, untyped, unmarked);
    }

    /** Plugs of a unit of which one must have a lead and none has. */
    private record Open(int unit, List<Integer> plugs, boolean said) {}

    private static void ask(Outcomes out, Set<String> untyped, Set<String> unmarked) {
        if (!untyped.isEmpty()) {
            out.cannotTell(
                    "unit type " + String.join(", ", untyped),
                    "add its plugs and pins to the library",
                    10 * untyped.size(),
                    untyped.toArray(new String[0]));
        }
        if (!unmarked.isEmpty()) {
            out.cannotTell(
                    "whether " + String.join(", ", unmarked) + " must be connected",
                    "look it up in the maker's manual",
                    5 * unmarked.size(),
                    unmarked.toArray(new String[0]));
        }
    }

    private static void look(Situation at, Outcomes out, int unit, RequiredPlugs required, List<Open> open) {
        for (List<Integer> group : required.groups()) {
            if (group.stream().anyMatch(plug -> OpenPlugs.wired(at, unit, plug))) {
                out.looked();
            } else {
                open.add(new Open(unit, group, required.said()));
            }
        }
    }

    /** The only other open plug that would take a lead from here, pin by pin. */
    private static Optional<Mates> mate(Situation at, Open spot, List<Open> open) {
        List<Mates> found = new ArrayList<>();
        if (open.size() > FEW) {
            return Optional.empty();
        }
        for (Open other : open) {
            if (other.unit() != spot.unit()
                    && other.plugs().size() == 1
                    && spot.plugs().size() == 1) {
                Mates.of(
                                at,
                                spot.unit(),
                                spot.plugs().get(0),
                                other.unit(),
                                other.plugs().get(0))
                        .ifPresent(found::add);
            }
        }
        return found.size() == 1 ? Optional.of(found.get(0)) : Optional.empty();
    }

    private static Draft draft(Situation at, Open spot, List<Open> open) {
        int unit = spot.unit();
        List<String> names = spot.plugs().stream()
                .map(plug -> at.wiring().plugName(unit, plug))
                .toList();
        Unit record = at.directory().unit(unit);
        boolean one = names.size() == 1;
        String pins = spot.plugs().stream()
                .flatMap(plug -> at.directory().type(unit).plugs().get(plug).pins().stream())
                .map(pin -> pin.name().or(pin.number()))
                .distinct()
                .collect(Collectors.joining(", "));
        Optional<Mates> mate = mate(at, spot, open);
        Draft draft = Draft.of(
                        Severity.S2,
                        "required plug open: no lead at " + (one ? names.get(0) : "any of " + String.join(", ", names)))
                .about(names)
                .seen(record)
                .sum("0 leads at " + String.join(", ", names) + " (" + pins + "), " + asks(one, spot.said())
                        + mate.map(found -> "; open too and fits: " + found.other(at, unit))
                                .orElse(""))
                .why(record.ref() + " does not do its job without it")
                .meter("look at " + String.join(" and ", names)
                        + ": with a lead in it the list is wrong, not the aircraft")
                .fix(mate.map(found -> "fit the lead " + found.words(at))
                                .orElse("fit the lead of " + String.join(" or ", names))
                        + (spot.said() ? "" : ", or mark the plug as not required"))
                .explains("A14", "M16", "S02", "S04", "S21", "S22", "T21");
        mate.ifPresent(found -> found.show(at, draft));
        spot.plugs().forEach(plug -> draft.cause(OpenPlugs.cause(at, unit, plug)));
        OpenPlugs.duties(at, unit, spot.plugs()).forEach(draft::cause);
        return draft;
    }

    private static String asks(boolean one, boolean said) {
        if (!one) {
            return "at least one is right";
        }
        return said ? "the type asks for one" : "such a plug usually has one";
    }
}
