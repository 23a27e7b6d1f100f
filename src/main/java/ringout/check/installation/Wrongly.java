package ringout.check.installation;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import ringout.check.form.Gaps;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.check.form.Trials;
import ringout.check.misplug.Misplug;
import ringout.check.misplug.MisplugTale;
import ringout.check.misplug.Tried;
import ringout.finding.Trial.Told;

/** What the checks of wrong plugs have in common: find the ways, try them, tell what comes of them and what is left open. */
final class Wrongly {
    /** A longer list is not tried as a whole: every copy would take as long as the list itself. */
    private static final int MOST_WIRES = 2000;

    private static final String OPEN = "what comes of plugs in wrong sockets";

    private Wrongly() {}

    static void tryOut(
            Situation at, Trials trials, Outcomes out, MisplugTale tale, Function<Gaps, List<Misplug>> find) {
        if (at.wiring().wires().size() > MOST_WIRES) {
            out.cannotTell(
                    OPEN + " of a list of more than " + MOST_WIRES + " conductors",
                    "make a list of each zone and check it alone",
                    30);
            return;
        }
        Gaps gaps = new Gaps();
        List<Misplug> ways = find.apply(gaps);
        boolean harm = ways.stream().anyMatch(way -> !way.harmless());
        if (harm && trials.spoilt()) {
            out.cannotTell(OPEN + " while the list has a finding of S1", "mend that first", 1);
            ways.forEach(way -> open(out, way));
            return;
        }
        List<Misplug> untried = new ArrayList<>();
        List<Tried> tried = Tried.all(ways, trials, untried);
        tried.forEach(one -> list(out, one));
        untried.forEach(way -> open(out, way));
        tale.tell(at, out, tried);
        if (!untried.isEmpty()) {
            out.cannotTell(
                    OPEN + ": " + untried.size() + " ways not tried, the first "
                            + untried.get(0).words(),
                    "make a list of each zone and check it alone",
                    30);
        }
        gaps.tell(out, datum -> new Gaps.Way("look at the plug, measure position and length", 2));
        if (tried.isEmpty() && untried.isEmpty() && gaps.isEmpty() && sockets(at)) {
            out.looked();
        }
    }

    private static void list(Outcomes out, Tried one) {
        for (Misplug way : one.alike()) {
            Told told = way.harmless() ? Told.SAME_POINTS : way.equals(one.way()) ? Told.TRIED : Told.BY_KIND;
            out.trial(way.plugs(), way.sockets(), way.words(), told, one.worst());
        }
    }

    private static void open(Outcomes out, Misplug way) {
        Told told = way.harmless() ? Told.SAME_POINTS : Told.NOT_TRIED;
        out.trial(way.plugs(), way.sockets(), way.words(), told, Optional.empty());
    }

    /** Whether there are plugs with a family at all. */
    private static boolean sockets(Situation at) {
        for (int unit = 0; unit < at.directory().count(); unit++) {
            if (!at.directory().isJoint(unit)
                    && at.directory().typeKnown(unit)
                    && at.directory().type(unit).plugs().stream()
                            .anyMatch(plug -> plug.family().isKnown())) {
                return true;
            }
        }
        return false;
    }
}
