package ringout.check.installation;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import ringout.check.form.Check;
import ringout.check.form.CheckInfo;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.finding.Draft;
import ringout.finding.Severity;
import ringout.graph.Wire;
import ringout.model.Datum;
import ringout.model.Lead;
import ringout.model.PinRole;

/**
 * A clamp with more or fewer conductors than it is drawn for, or a contact with several conductors that is made for one.
 *
 * <p>Why it matters: a clamp drawn for two holds neither one nor three: what is left loose warms up, and a motor stops when it is
 * warm. A conductor in the wrong clamp also changes which motors share a screw.
 *
 * <p>Condition: the conductors that end in a clamp, stud or splice are counted against the number it is drawn for; in any
 * other contact there may be one, unless the type names a number or all leads but one are declared to share it. A clamp without any
 * conductor is not used. S2 when flight depends on a unit of these conductors, else S3.
 *
 * <p>Does not see: whether a conductor is really clamped, or lies beside the clamp (M22).
 *
 * <p>Reference: common practice, no source.
 */
@CheckInfo(
        code = "M16",
        name = "wrong-clamp-count",
        severity = Severity.S2,
        since = "0.1",
        needs = {"number of conductors each clamp is drawn for"})
public final class WrongClampCount implements Check {
    @Override
    public void look(Situation at, Outcomes out) {
        List<Clamp> clamps = Clamp.all(at);
        List<Clamp> wrong = new ArrayList<>();
        Set<String> open = new TreeSet<>();
        for (Clamp clamp : clamps) {
            if (clamp.drawn().isKnown()) {
                out.looked();
                if (clamp.isWrong()) {
                    wrong.add(clamp);
                }
            } else if (clamp.farPins() > 1 && clamp.crimp() && !clamp.drawn().isNotApplicable()) {
                out.looked();
                if (!clamp.isShared()) {
                    out.finding(contact(at, clamp));
                }
            } else if (clamp.screw()
                    && clamp.drawn().isMissing()
                    && (clamp.count() > 1
                            || clamp.drawn() instanceof Datum.Unknown
                            || at.directory().isJoint(clamp.unit()))) {
                open.add(clamp.name());
            }
        }
        tell(at, out, clamps, wrong);
        if (!open.isEmpty()) {
            out.cannotTell(
                    "number of conductors " + String.join(", ", open) + " is drawn for",
                    "look at the clamp or its drawing",
                    2 * open.size(),
                    open.toArray(new String[0]));
        }
    }

    /** A conductor that sits in the neighbour of its clamp makes one finding of two clamps. */
    private static void tell(Situation at, Outcomes out, List<Clamp> clamps, List<Clamp> wrong) {
        ClampMates mates = new ClampMates(at, clamps);
        List<Clamp> rest = new ArrayList<>(wrong);
        for (Clamp over : wrong) {
            Optional<Clamp> under =
                    rest.stream().filter(clamp -> moved(at, mates, over, clamp)).findFirst();
            if (under.isPresent()) {
                rest.remove(over);
                rest.remove(under.get());
                out.finding(ClampDraft.moved(at, mates, over, under.get()));
            }
        }
        rest.forEach(clamp -> out.finding(ClampDraft.single(at, mates, clamp)));
    }

    private static boolean moved(Situation at, ClampMates mates, Clamp over, Clamp under) {
        if (over.surplus() <= 0
                || over.surplus() + under.surplus() != 0
                || over.unit() != under.unit()
                || !at.circuit().nets().same(over.pin(), under.pin())) {
            return false;
        }
        Set<Integer> missing = mates.missing(under);
        return mates.extra(over).stream()
                .allMatch(wire -> missing.contains(at.wiring().unitOf(wire.otherPin(over.pin()))));
    }

    private static Draft contact(Situation at, Clamp clamp) {
        List<Lead> leads = clamp.wires().stream().map(Wire::lead).distinct().toList();
        String ids = String.join(", ", leads.stream().map(Lead::id).toList());
        boolean critical = new ClampMates(at, List.of()).flightCritical(clamp);
        Draft draft = Draft.of(
                        critical ? Severity.S2 : Severity.S3,
                        "conductors per contact: " + clamp.count() + " in " + clamp.name() + ", a contact takes one ("
                                + ids + ")")
                .about(clamp.name())
                .sum(clamp.count() + " conductors end in " + clamp.name() + ", 1 is right")
                .judged(clamp.count(), 1, "conductors", "common practice, no source")
                .why("two conductors in a crimp made for one: one of them is loose")
                .meter("pull at each of them; tug test 20 N for 22 AWG")
                .fix("join " + ids + " in a splice, or declare the pins as shared")
                .explains("M17", "T19");
        leads.forEach(draft::at);
        return draft;
    }

    /** The units that crowd a clamp: plus and minus of the same units, side by side in full clamps, are one mistake. */
    static String crowd(Situation at, Clamp clamp) {
        Set<String> units = new TreeSet<>();
        clamp.farUnits(at.wiring()).forEach(unit -> units.add(at.directory().name(unit)));
        return "in a clamp of " + at.directory().name(clamp.unit()) + ": " + String.join(" ", units);
    }

    /** What a conductor in a clamp is to its unit, for the tokens that other findings share. */
    static String token(Situation at, Clamp clamp, int unit) {
        boolean zero =
                at.wiring().is(clamp.pin(), PinRole.ZERO_V) || at.wiring().is(clamp.pin(), PinRole.PACK_MINUS);
        return at.directory().name(unit) + (zero ? "/0V" : "/supply");
    }
}
