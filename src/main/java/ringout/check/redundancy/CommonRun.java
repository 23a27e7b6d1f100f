package ringout.check.redundancy;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import ringout.check.form.Check;
import ringout.check.form.CheckInfo;
import ringout.check.form.Figures;
import ringout.check.form.Gaps;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.check.form.Thresholds;
import ringout.finding.Draft;
import ringout.finding.Severity;
import ringout.graph.Site;
import ringout.graph.Wiring;
import ringout.graph.loss.Pair;
import ringout.model.Beside;
import ringout.model.Lead;
import ringout.model.PointFlag;

/**
 * A redundant pair whose leads share a plug, a lead, a bundle or a route.
 *
 * <p>Why it matters: one pinch, one chafed spot, one unlatched plug takes both.
 *
 * <p>Condition: leads of the two sides end in one plug, are one lead, are in one bundle, or run within 20 mm of each other for more than
 * 200 mm, the last 100 mm at their units not counted; a finding of S3 instead of S4 when both pass a hinge together.
 *
 * <p>Does not see: leads farther up than the first from each side; points of a route, only what is written as a bundle or as running beside.
 *
 * <p>Reference: judgement, 20 mm and 200 mm.
 */
@CheckInfo(
        code = "R05",
        name = "redundant-pair-common-run",
        severity = Severity.S4,
        since = "0.3",
        needs = {"which units are redundant", "bundle of each lead, or the leads it runs beside"})
public final class CommonRun implements Check {
    @Override
    public void look(Situation at, Outcomes out) {
        Pairs.unknown(at, out);
        Gaps gaps = new Gaps();
        for (Pair pair : Pairs.known(at)) {
            List<Lead> a = leads(at, pair, pair.a());
            List<Lead> b = leads(at, pair, pair.b());
            if (!a.isEmpty() && !b.isEmpty()) {
                judge(at, out, pair, a, b, gaps);
            }
        }
        gaps.tell(out, datum -> new Gaps.Way("write down its bundle, or the leads it runs beside and how close", 5));
    }

    /** The first leads on each side: of an input its own, of a unit all that end at it. */
    private static List<Lead> leads(Situation at, Pair pair, Pair.Side side) {
        Wiring wiring = at.wiring();
        Set<Integer> rows = new TreeSet<>();
        for (int pin = wiring.firstPin(side.unit()); pin < wiring.endPin(side.unit()); pin++) {
            boolean own = !pair.inputs()
                    || wiring.plugName(side.unit(), wiring.plugIndex(pin)).equals(side.name());
            if (own && at.circuit().mated(pin)) {
                for (int wire : wiring.wiresAt(pin)) {
                    rows.add(wiring.wires().get(wire).leadIndex());
                }
            }
        }
        return rows.stream().map(at.aircraft().leads()::get).toList();
    }

    private static void judge(Situation at, Outcomes out, Pair pair, List<Lead> a, List<Lead> b, Gaps gaps) {
        List<String> shared = new ArrayList<>();
        Set<Lead> fault = new LinkedHashSet<>();
        boolean hinge = false;
        Set<String> untold = new TreeSet<>();
        for (Lead one : a) {
            for (Lead other : b) {
                Optional<String> how = share(at, one, other);
                if (how.isPresent()) {
                    shared.add(how.get());
                    fault.add(one);
                    fault.add(other);
                    hinge |= hinge(one) && hinge(other);
                } else if (!routed(one) && !routed(other)) {
                    List.of(one, other).stream()
                            .filter(lead -> lead.bundle().isMissing())
                            .forEach(lead -> untold.add(lead.id()));
                }
            }
        }
        if (!shared.isEmpty()) {
            out.finding(draft(pair, shared, fault, hinge));
        } else if (untold.isEmpty()) {
            out.looked();
        }
        untold.forEach(lead -> gaps.add("bundle", lead));
    }

    /** Whether somebody wrote down what a lead runs beside. */
    private static boolean routed(Lead lead) {
        return !lead.beside().isEmpty();
    }

    private static boolean hinge(Lead lead) {
        return lead.route().stream()
                .anyMatch(point ->
                        point.flags().contains(PointFlag.HINGE) || point.flags().contains(PointFlag.FLEX));
    }

    /** How two leads run together, in words. */
    private static Optional<String> share(Situation at, Lead a, Lead b) {
        if (a.id().equals(b.id())) {
            return Optional.of(a.id() + " serves both");
        }
        Optional<String> plug = plug(at, a, b);
        if (plug.isPresent()) {
            return Optional.of(a.id() + " and " + b.id() + " end in " + plug.get());
        }
        if (a.bundle().isKnown() && a.bundle().equals(b.bundle())) {
            return Optional.of(
                    a.id() + " and " + b.id() + " are in bundle " + a.bundle().or(""));
        }
        double along = Math.max(beside(at, a, b.id()), beside(at, b, a.id()));
        double limit = at.limit(Thresholds.REDUNDANT_RUN).value();
        return along > limit
                ? Optional.of(a.id() + " and " + b.id() + " run " + Figures.of(along) + " mm beside each other")
                : Optional.empty();
    }

    private static Optional<String> plug(Situation at, Lead a, Lead b) {
        for (String plug : plugs(at, a)) {
            if (plugs(at, b).contains(plug)) {
                return Optional.of(plug);
            }
        }
        return Optional.empty();
    }

    private static List<String> plugs(Situation at, Lead lead) {
        int row = at.aircraft().leads().indexOf(lead);
        List<String> found = new ArrayList<>();
        for (Site site : List.of(at.wiring().from(row), at.wiring().to(row))) {
            if (site instanceof Site.OnPlug on) {
                found.add(at.wiring().plugName(on.unit(), on.plug()));
            } else if (site instanceof Site.OnPin on) {
                found.add(at.wiring().plugName(on.unit(), on.plug()));
            }
        }
        return found;
    }

    /** How far two leads run close together, what lies at their units not counted, in mm. */
    private static double beside(Situation at, Lead lead, String other) {
        double gap = at.limit(Thresholds.REDUNDANT_GAP).value();
        double near = at.limit(Thresholds.REDUNDANT_NEAR).value();
        double most = 0;
        for (Beside run : lead.beside()) {
            if (run.lead().equals(other) && run.gapMm().or(0.0) <= gap) {
                most = Math.max(most, run.lengthMm().or(0.0) - near);
            }
        }
        return most;
    }

    private static Draft draft(Pair pair, List<String> shared, Set<Lead> fault, boolean hinge) {
        Draft draft = Draft.of(
                        hinge ? Severity.S3 : Severity.S4,
                        "redundant pair on one run: " + pair.names() + ", " + shared.get(0)
                                + (hinge ? " through a hinge" : ""))
                .about(pair.a().name(), pair.b().name())
                .sum(String.join("; ", shared))
                .source("judgement")
                .why("one pinch, chafed spot or unlatched plug takes both")
                .fix("part the leads of " + pair.a().name() + " and " + pair.b().name());
        fault.forEach(draft::at);
        return draft;
    }
}
