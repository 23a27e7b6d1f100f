package ringout.check.installation;

import java.util.LinkedHashMap;
import java.util.Map;
import ringout.check.form.Check;
import ringout.check.form.CheckInfo;
import ringout.check.form.Figures;
import ringout.check.form.Gaps;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.finding.Draft;
import ringout.finding.Severity;
import ringout.graph.Wire;
import ringout.model.Awg;
import ringout.model.Plug;

/**
 * A wire too thin or too thick for the contact it is crimped into.
 *
 * <p>Why it matters: a thin wire pulls out of a large barrel, a thick one does not go in and loses strands; both pass the first
 * continuity test.
 *
 * <p>Condition: the size of a conductor lies outside the range of the contact at one of its ends, by more than half a gauge.
 *
 * <p>Does not see: the diameter of the insulation, the crimp itself, delivered leads, joints.
 *
 * <p>Reference: the maker's range of the contact; common practice, no source.
 */
@CheckInfo(
        code = "M15",
        name = "wire-outside-contact",
        severity = Severity.S3,
        since = "0.1",
        needs = {"wire size", "wire range of each contact"})
public final class WireOutsideContact implements Check {
    /** Half a gauge as a factor of the cross-section. */
    private static final double HALF_A_GAUGE = 1.12;

    @Override
    public void look(Situation at, Outcomes out) {
        Gaps gaps = new Gaps();
        Map<String, Draft> drafts = new LinkedHashMap<>();
        boolean looked = false;
        for (Wire wire : at.wiring().wires()) {
            if (!wire.lead().delivered().is(true)) {
                looked |= end(at, gaps, drafts, wire, wire.fromPin());
                looked |= end(at, gaps, drafts, wire, wire.toPin());
            }
        }
        if (looked) {
            out.looked();
        }
        drafts.values().forEach(out::finding);
        gaps.tell(
                out,
                datum -> datum.equals("wire size")
                        ? new Gaps.Way("read the print on the wire, or measure the bare conductor", 2)
                        : new Gaps.Way("look it up in the maker's data of the contact", 5));
    }

    private static boolean end(Situation at, Gaps gaps, Map<String, Draft> drafts, Wire wire, int pin) {
        if (at.directory().isJoint(at.wiring().unitOf(pin))
                || !at.directory().typeKnown(at.wiring().unitOf(pin))) {
            return false;
        }
        Plug plug = at.wiring().plug(pin);
        if (plug.crimpMinAwg().isNotApplicable() || plug.crimpMaxAwg().isNotApplicable()) {
            return false;
        }
        String name = at.wiring().plugName(at.wiring().unitOf(pin), at.wiring().plugIndex(pin));
        if (!plug.crimpMinAwg().isKnown() || !plug.crimpMaxAwg().isKnown()) {
            gaps.add("wire range of the contact", plug.family().or(name));
            return false;
        }
        if (!wire.areaMm2().isKnown()) {
            gaps.add("wire size", wire.lead().id());
            return false;
        }
        double area = wire.areaMm2().or(0.0);
        boolean thin = area * HALF_A_GAUGE < area(plug.crimpMinAwg().or(0.0));
        boolean thick = area > area(plug.crimpMaxAwg().or(0.0)) * HALF_A_GAUGE;
        if (thin || thick) {
            drafts.computeIfAbsent(wire.lead().id() + " " + name, key -> draft(wire, plug, name, thin));
        }
        return !thin && !thick;
    }

    private static double area(double awg) {
        return new Awg((int) Math.round(awg)).areaMm2();
    }

    private static Draft draft(Wire wire, Plug plug, String name, boolean thin) {
        String range = Figures.of(plug.crimpMinAwg().or(0.0)) + " to "
                + Figures.of(plug.crimpMaxAwg().or(0.0)) + " AWG";
        String size = wire.awg()
                .known()
                .map(awg -> awg + " AWG")
                .orElseGet(() -> Figures.of(wire.areaMm2().or(0.0)) + " mm2");
        double limit = area((thin ? plug.crimpMinAwg() : plug.crimpMaxAwg()).or(0.0));
        return Draft.of(
                        Severity.S3,
                        "wire too " + (thin ? "thin" : "thick") + " for its contact: "
                                + wire.lead().id() + " " + size + " in " + name + ", made for " + range)
                .about(wire.lead().id(), name)
                .at(wire.lead())
                .sum(size + " " + Figures.of(wire.areaMm2().or(0.0)) + " mm2, contact " + range)
                .judged(wire.areaMm2().or(0.0), limit, "mm2", "range of the contact, common practice")
                .input(wire.awg())
                .input(thin ? plug.crimpMinAwg() : plug.crimpMaxAwg())
                .why(
                        thin
                                ? "the crimp does not hold: the wire pulls out or warms up"
                                : "strands stay outside the crimp")
                .meter("pull at the wire: it must hold the force for its size")
                .fix("crimp " + wire.lead().id() + " at " + name + " into a contact for " + size
                        + ", or make it within " + range);
    }
}
