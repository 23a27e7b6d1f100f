package ringout.check.installation;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import ringout.check.form.Situation;
import ringout.finding.Draft;
import ringout.finding.Severity;
import ringout.graph.Wire;

/** Writes findings about the number of conductors in clamps. */
final class ClampDraft {
    private static final String WHY =
            " holds the number it is drawn for: what is loose warms up, and its unit stops when warm";

    private ClampDraft() {}

    /** One conductor in the neighbour of its clamp. */
    static Draft moved(Situation at, ClampMates mates, Clamp over, Clamp under) {
        List<Wire> extra = mates.extra(over);
        String ids = ids(extra);
        Draft draft = Draft.of(
                        severity(mates, over, under),
                        "conductors per clamp: " + over.count() + " in " + over.name() + ", drawn for "
                                + over.drawn().or(0) + ", and " + under.count() + " in " + under.name() + ", drawn for "
                                + under.drawn().or(0))
                .about(over.name(), under.name())
                .sum(over.name() + ": " + ids(over.wires()) + "; " + under.name() + ": " + ids(under.wires()))
                .judged(over.count(), over.drawn().or(0), "conductors", "drawing of the clamp")
                .why("a clamp" + WHY)
                .meter("count the conductors in both clamps")
                .fix("move " + ids + " from " + over.name() + " to " + under.name())
                .explains("M17", "R02");
        extra.forEach(wire -> {
            draft.at(wire.lead());
            draft.cause(WrongClampCount.token(at, over, at.wiring().unitOf(wire.otherPin(over.pin()))));
        });
        return draft;
    }

    /** One clamp with too many or too few. */
    static Draft single(Situation at, ClampMates mates, Clamp clamp) {
        List<Wire> extra = clamp.surplus() > 0 ? mates.extra(clamp) : List.of();
        Set<Integer> missing = clamp.surplus() < 0 ? mates.missing(clamp) : Set.of();
        String lacking = missing.stream().map(at.directory()::name).collect(Collectors.joining(", "));
        Draft draft = Draft.of(
                        severity(mates, clamp, clamp),
                        "conductors per " + clamp.word() + ": " + clamp.count() + " in " + clamp.name() + ", drawn for "
                                + clamp.drawn().or(0) + (lacking.isEmpty() ? "" : ", none of " + lacking))
                .about(clamp.name())
                .sum(clamp.name() + ": " + ids(clamp.wires()) + "; " + clamp.count() + " where "
                        + clamp.drawn().or(0) + " are drawn")
                .judged(clamp.count(), clamp.drawn().or(0), "conductors", "drawing of the " + clamp.word())
                .why("a " + clamp.word() + WHY)
                .meter("count the conductors in the " + clamp.word())
                .fix(fix(clamp, extra, lacking))
                .explains("M17", "R02");
        (extra.isEmpty() && clamp.surplus() > 0 ? clamp.wires() : extra).forEach(wire -> draft.at(wire.lead()));
        clamp.wires().forEach(wire -> draft.seen(wire.lead()));
        missing.forEach(unit -> draft.cause(WrongClampCount.token(at, clamp, unit)));
        draft.cause(clamp.name() + " count");
        if (clamp.surplus() > 0) {
            draft.cause(WrongClampCount.crowd(at, clamp));
        }
        return draft;
    }

    private static String fix(Clamp clamp, List<Wire> extra, String lacking) {
        if (clamp.surplus() > 0) {
            return extra.isEmpty()
                    ? "take a conductor out of " + clamp.name()
                    : "take " + ids(extra) + " out of " + clamp.name();
        }
        return lacking.isEmpty()
                ? "clamp the missing conductor in " + clamp.name() + ", or correct the number it is drawn for"
                : "clamp the conductor of " + lacking + " in " + clamp.name();
    }

    private static Severity severity(ClampMates mates, Clamp a, Clamp b) {
        return mates.flightCritical(a) || mates.flightCritical(b) ? Severity.S2 : Severity.S3;
    }

    private static String ids(List<Wire> wires) {
        return wires.stream().map(wire -> wire.lead().id()).distinct().collect(Collectors.joining(", "));
    }
}
