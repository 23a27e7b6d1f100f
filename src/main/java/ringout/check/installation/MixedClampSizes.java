package ringout.check.installation;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import ringout.check.form.Check;
import ringout.check.form.CheckInfo;
import ringout.check.form.Figures;
import ringout.check.form.Gaps;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.finding.Draft;
import ringout.finding.Severity;
import ringout.graph.Wire;
import ringout.model.Lead;

/**
 * Conductors of different size under one screw.
 *
 * <p>Why it matters: the thick one is tight and the thin one is loose: it warms up, and its unit stops when it is warm.
 *
 * <p>Condition: in a clamp, on a stud or in a contact drawn for several conductors, one conductor is thinner than another by more
 * than half a gauge. A splice is crimped or soldered and may join sizes.
 *
 * <p>Does not see: conductors of one size with different stranding, ferrules.
 *
 * <p>Reference: common practice, no source; half a gauge is a factor of 1.12 in cross-section (ASTM B258).
 */
@CheckInfo(
        code = "M17",
        name = "mixed-clamp-sizes",
        severity = Severity.S2,
        since = "0.1",
        needs = {"wire size of each conductor in a clamp"})
public final class MixedClampSizes implements Check {
    private static final double HALF_A_GAUGE = 1.12;

    /** A conductor that is too thin for its clamp, and the thickest beside it. */
    private record Thin(Clamp clamp, Wire wire, Wire beside) {}

    @Override
    public void look(Situation at, Outcomes out) {
        Gaps gaps = new Gaps();
        Map<Integer, List<Thin>> byUnit = new LinkedHashMap<>();
        for (Clamp clamp : Clamp.all(at)) {
            if (clamp.screw() && clamp.count() > 1) {
                look(at, out, gaps, byUnit, clamp);
            }
        }
        byUnit.forEach((unit, thin) -> out.finding(draft(at, unit, thin)));
        gaps.tell(out, datum -> new Gaps.Way("read the print on the wire, or measure the bare conductor", 2));
    }

    private static void look(Situation at, Outcomes out, Gaps gaps, Map<Integer, List<Thin>> byUnit, Clamp clamp) {
        List<Wire> known =
                clamp.wires().stream().filter(wire -> wire.areaMm2().isKnown()).toList();
        clamp.wires().stream()
                .filter(wire -> wire.areaMm2().isMissing())
                .forEach(wire -> gaps.add("wire size", wire.lead().id()));
        if (known.size() < clamp.count() && known.size() < 2) {
            return;
        }
        Wire thickest = known.get(0);
        for (Wire wire : known) {
            thickest = area(wire) > area(thickest) ? wire : thickest;
        }
        boolean equal = true;
        for (Wire wire : known) {
            if (area(wire) * HALF_A_GAUGE < area(thickest)) {
                equal = false;
                byUnit.computeIfAbsent(at.wiring().unitOf(wire.otherPin(clamp.pin())), key -> new ArrayList<>())
                        .add(new Thin(clamp, wire, thickest));
            }
        }
        if (equal && known.size() == clamp.count()) {
            out.looked();
        }
    }

    private static double area(Wire wire) {
        return wire.areaMm2().or(0.0);
    }

    private static String size(Wire wire) {
        return wire.awg().known().map(awg -> awg + " AWG").orElseGet(() -> Figures.of(area(wire)) + " mm2");
    }

    private static Draft draft(Situation at, int unit, List<Thin> thin) {
        String ref = at.directory().name(unit);
        Thin first = thin.get(0);
        String clamps = thin.stream().map(t -> t.clamp().name()).distinct().collect(Collectors.joining(", "));
        Draft draft = Draft.of(
                        Severity.S2,
                        "mixed sizes under one screw: " + ref + " in " + size(first.wire()) + " beside "
                                + size(first.beside()) + " in " + clamps)
                .about(ref)
                .about(thin.stream().map(t -> t.clamp().name()).distinct().toList())
                .sum(thin.stream().map(MixedClampSizes::said).collect(Collectors.joining("; ")))
                .judged(area(first.wire()), area(first.beside()), "mm2", "common practice, no source")
                .input(first.wire().awg())
                .input(first.beside().awg())
                .why("the thick conductor is tight and the thin one is loose: it warms up and " + ref
                        + " stops when warm")
                .meter("screw tight, pull at the thin conductor")
                .fix("make the leads of " + ref + " in " + size(first.beside()) + ", or give them a clamp of their own")
                .explains("P11", "P14", "P15", "P16", "P25", "M16");
        thin.forEach(t -> draft.at(t.wire().lead()));
        thin.stream().map(t -> t.beside().lead()).distinct().forEach((Lead lead) -> draft.seen(lead));
        return draft;
    }

    private static String said(Thin thin) {
        return thin.clamp().name() + ": " + thin.wire().lead().id() + " " + size(thin.wire()) + ", "
                + thin.beside().lead().id() + " " + size(thin.beside());
    }
}
