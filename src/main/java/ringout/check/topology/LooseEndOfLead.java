package ringout.check.topology;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
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
import ringout.graph.LooseEnd;
import ringout.graph.Site;
import ringout.graph.signal.SignalWays;
import ringout.model.Datum;
import ringout.model.End;
import ringout.model.Lead;
import ringout.model.Plug;
import ringout.text.Nearest;

/**
 * A lead that ends at a unit, plug or pin that does not exist.
 *
 * <p>Why it matters: the list cannot be trusted, and every other finding rests on it.
 *
 * <p>Condition: an end names no unit or joint aboard, a plug its type has not, or a pin beyond its plug. The nearest name is
 * given as a hint, never taken instead.
 *
 * <p>Does not see: an end that names a wrong but existing place (T05, S25).
 *
 * <p>Reference: common practice, no source.
 */
@CheckInfo(
        code = "T03",
        name = "loose-end",
        severity = Severity.S1,
        since = "0.1",
        needs = {"unit type", "pins of each lead"})
public final class LooseEndOfLead implements Check {
    @Override
    public void look(Situation at, Outcomes out) {
        TreeSet<String> untyped = new TreeSet<>();
        List<Lead> leads = at.aircraft().leads();
        for (int i = 0; i < leads.size(); i++) {
            boolean from = known(at, at.wiring().from(i), untyped);
            boolean to = known(at, at.wiring().to(i), untyped);
            if (from && to && !(leads.get(i).pins() instanceof Datum.Unknown)) {
                out.looked();
            }
        }
        askPins(leads, out);
        Map<Row, List<LooseEnd>> ends = new LinkedHashMap<>();
        for (LooseEnd end : at.wiring().looseEnds()) {
            if (!guessed(at, end, untyped)) {
                ends.computeIfAbsent(new Row(end.lead(), end.from()), key -> new ArrayList<>())
                        .add(end);
            }
        }
        ends.values().forEach(faults -> out.finding(draft(at, faults)));
        if (!untyped.isEmpty()) {
            out.cannotTell(
                    "unit type " + String.join(", ", untyped),
                    "add its plugs and pins to the library",
                    10 * untyped.size(),
                    untyped.toArray(new String[0]));
        }
    }

    /** Nobody can say where the conductors of a lead end whose contacts are marked "?". */
    private static void askPins(List<Lead> leads, Outcomes out) {
        List<String> open = leads.stream()
                .filter(lead -> lead.pins() instanceof Datum.Unknown)
                .map(Lead::id)
                .distinct()
                .toList();
        if (!open.isEmpty()) {
            out.cannotTell(
                    "pins of " + String.join(", ", open),
                    "ring it out from plug to plug",
                    5 * open.size(),
                    open.toArray(new String[0]));
        }
    }

    /** One end of one row; all that is wrong with it is one finding. */
    private record Row(Lead lead, boolean from) {}

    private static boolean known(Situation at, Site site, Set<String> untyped) {
        int unit = site instanceof Site.OnPin pin ? pin.unit() : site instanceof Site.OnPlug plug ? plug.unit() : -1;
        if (unit >= 0 && !at.directory().typeKnown(unit)) {
            untyped.add(at.directory().unit(unit).type());
            return false;
        }
        return unit >= 0;
    }

    /** Whether the end is at a unit whose type is not in the library, so that nothing can be said of its plugs. */
    private static boolean guessed(Situation at, LooseEnd end, Set<String> untyped) {
        Optional<Integer> unit = unit(at, here(end));
        unit.filter(u -> !at.directory().typeKnown(u))
                .ifPresent(u -> untyped.add(at.directory().unit(u).type()));
        return unit.filter(u -> !at.directory().typeKnown(u)).isPresent();
    }

    private static End here(LooseEnd end) {
        return end.from() ? end.lead().from() : end.lead().to();
    }

    /** The unit an end begins with, if there is one of that name. */
    private static Optional<Integer> unit(Situation at, End end) {
        for (int i = end.text().length(); i > 0; i--) {
            Optional<Integer> unit = at.directory().find(end.text().substring(0, i));
            if (unit.isPresent() && !at.directory().isJoint(unit.get())) {
                return unit;
            }
        }
        return Optional.empty();
    }

    private static Draft draft(Situation at, List<LooseEnd> faults) {
        LooseEnd end = faults.get(0);
        Lead lead = end.lead();
        String why = faults.stream().map(LooseEnd::why).distinct().collect(Collectors.joining(", "));
        String where = end.from() ? "from" : "to";
        Draft draft = Draft.of(Severity.S1, "loose end: " + lead.id() + " " + where + " " + here(end) + ": " + why)
                .about(lead.id(), here(end).text())
                .at(lead)
                .sum(why + (end.hint().isEmpty() ? "" : ", " + end.hint()))
                .why("the list is unreliable: every other finding rests on it")
                .meter("ring out " + lead.id() + " to see where it ends")
                .fix("correct the " + where + " end of " + lead.id()
                        + (end.hint().isEmpty() ? "" : " (" + end.hint() + ")"))
                .explains(
                        "A14", "T01", "T02", "T04", "T06", "T07", "T08", "T17", "T21", "S02", "S04", "S05", "S21",
                        "S22", "P05", "P09", "P10", "M16");
        tokens(at, end).forEach(draft::cause);
        return draft;
    }

    /** Open plugs at the other end, and at the unit that was most likely meant. */
    private static List<String> tokens(Situation at, LooseEnd end) {
        List<String> tokens = new ArrayList<>();
        Lead lead = end.lead();
        Site other = at.directory().resolve(end.from() ? lead.to() : lead.from());
        plug(tokens, at, other);
        plug(tokens, at, at.directory().resolve(here(end)));
        lacking(at, here(end), other).ifPresent(site -> plug(tokens, at, site));
        meant(at, here(end)).ifPresent(unit -> {
            tokens.addAll(OpenPlugs.causes(at, unit));
            alone(at, unit, tokens);
        });
        return tokens;
    }

    /**
     * The only open plug of the name written that must have a lead, or whose unit has none at all; or else the only one with as
     * many contacts as the plug at the good end.
     */
    private static Optional<Site> lacking(Situation at, End end, Site other) {
        List<Site> lacks = new ArrayList<>();
        List<Site> alike = new ArrayList<>();
        int contacts = other instanceof Site.OnPlug plug
                ? plug(at, plug.unit(), plug.plug()).pins().size()
                : 0;
        for (int unit = 0; unit < at.aircraft().units().size(); unit++) {
            for (int plug = 0; plug < at.directory().type(unit).plugs().size(); plug++) {
                Plug here = plug(at, unit, plug);
                boolean named = end.text().endsWith("-" + here.name());
                if (named && at.circuit().aboard(unit) && !OpenPlugs.wired(at, unit, plug)) {
                    boolean must = here.must().is(true) || !OpenPlugs.touched(at, unit);
                    (must ? lacks : alike).add(new Site.OnPlug(unit, plug));
                }
            }
        }
        alike.removeIf(site -> site instanceof Site.OnPlug plug
                && plug(at, plug.unit(), plug.plug()).pins().size() != contacts);
        List<Site> found = lacks.isEmpty() ? alike : lacks;
        return found.size() == 1 ? Optional.of(found.get(0)) : Optional.empty();
    }

    private static Plug plug(Situation at, int unit, int plug) {
        return at.directory().type(unit).plugs().get(plug);
    }

    private static void plug(List<String> tokens, Situation at, Site site) {
        if (site instanceof Site.OnPlug plug) {
            tokens.add(OpenPlugs.cause(at, plug.unit(), plug.plug()));
            alone(at, plug.unit(), tokens);
        }
    }

    private static void alone(Situation at, int unit, List<String> tokens) {
        if (at.directory().isJoint(unit)) {
            return;
        }
        if (!OpenPlugs.touched(at, unit)) {
            tokens.add(LooseTerminators.cause(at.directory().unit(unit)));
        }
        if (!SignalWays.of(at.circuit()).powered(unit)) {
            tokens.add(at.directory().name(unit) + " unfed");
        }
        tokens.addAll(
                List.of(at.directory().name(unit) + "/supply", at.directory().name(unit) + "/0V"));
    }

    private static Optional<Integer> meant(Situation at, End end) {
        Optional<Integer> named = unit(at, end);
        if (named.isPresent()) {
            return named;
        }
        int cut = end.text().indexOf('-');
        String word = cut > 0 ? end.text().substring(0, cut) : end.text();
        List<String> names = at.aircraft().units().stream().map(u -> u.ref()).toList();
        return Nearest.to(word, names).flatMap(at.directory()::find);
    }
}
