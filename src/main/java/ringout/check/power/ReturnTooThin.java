package ringout.check.power;

import java.util.ArrayList;
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
import ringout.check.form.Sound;
import ringout.finding.Draft;
import ringout.finding.Severity;
import ringout.graph.Trail;
import ringout.graph.Wire;
import ringout.graph.power.Consumer;
import ringout.graph.power.Load;
import ringout.graph.power.PowerGraph;
import ringout.graph.returns.ReturnGraph;
import ringout.graph.returns.ReturnWay;
import ringout.graph.wire.Ampacity;
import ringout.graph.wire.WireTable;
import ringout.model.Lead;
import ringout.model.PinRole;

/**
 * A return that is there but carries less than the unit draws.
 *
 * <p>Why it matters: with the thick black lead off, everything still "has ground" through the thin 0V of a signal lead. The motor
 * turns, until that wire melts; no continuity test, no look and no short hover shows it.
 *
 * <p>Formula: of all ways over 0V from the unit to the 0V of its source, the one whose thinnest conductor is thickest (the
 * widest path); its ampacity in A must reach the average current of the unit: its own loads, and the input of its regulators. The unit
 * is judged, not the plug. Packs in parallel take equal parts; of inputs joined by diodes each may have to take it all.
 *
 * <p>Does not see: how the current shares between parallel returns (P11), contacts and screws (P16), what other units return
 * through the same conductor (P14).
 *
 * <p>Reference: widest path after M. Pollack, Operations Research 8 (1960); ampacity of a single wire in free air, common practice,
 * no source.
 */
@CheckInfo(
        code = "P10",
        name = "return-too-thin",
        severity = Severity.S1,
        since = "0.1",
        needs = {"wire size of 0V conductors", "average current of each load", "efficiency of each regulator"})
public final class ReturnTooThin implements Check {
    @Override
    public void look(Situation at, Outcomes out) {
        ReturnGraph returns = ReturnGraph.of(at.circuit());
        Gaps gaps = new Gaps();
        for (Returns.Need need : Returns.of(at)) {
            if (need.zero() != need.home() && returns.reaches(need.zero(), need.home())) {
                judge(at, out, gaps, returns, need);
            }
        }
        gaps.tell(out, PowerData::way);
    }

    private static void judge(Situation at, Outcomes out, Gaps gaps, ReturnGraph returns, Returns.Need need) {
        Ampacity width = returns.width(need.zero(), need.home());
        if (width.high() < need.averageA()) {
            out.finding(draft(at, returns, need, width));
        } else if (!need.known() && Double.isFinite(width.low())) {
            currents(at, gaps, need);
            unsized(gaps, returns, need);
        } else if (width.low() >= need.averageA()) {
            out.looked();
        } else {
            thin(gaps, returns, need);
        }
    }

    /** What is missing for the current of a unit: its loads, or those behind its regulator and its efficiency. */
    private static void currents(Situation at, Gaps gaps, Returns.Need need) {
        PowerGraph power = PowerGraph.of(at.circuit());
        boolean own = false;
        for (Consumer consumer : power.consumers()) {
            if (consumer.unit() == need.unit() && consumer.zero() == need.zero() && open(consumer)) {
                gaps.add(PowerData.AVERAGE, at.directory().name(need.unit()));
                own = true;
            }
        }
        if (!own) {
            gaps.add(PowerData.BEHIND, at.directory().name(need.unit()));
        }
    }

    private static boolean open(Consumer consumer) {
        return consumer.loads().isEmpty()
                ? consumer.draws()
                : consumer.loads().stream().anyMatch(ReturnTooThin::open);
    }

    private static boolean open(Load load) {
        return !load.averageA().isKnown() && !load.averageW().isKnown();
    }

    /** Conductors on the way of which not even the size is known: whatever the current, they will be asked for. */
    private static void unsized(Gaps gaps, ReturnGraph returns, Returns.Need need) {
        returns.way(need.zero(), need.home())
                .ifPresent(way -> way.wires().stream()
                        .filter(wire -> Double.isInfinite(returns.ampacity(wire).high()))
                        .forEach(wire -> gaps.add(Ampacity.missing(wire))));
    }

    private static void thin(Gaps gaps, ReturnGraph returns, Returns.Need need) {
        returns.way(need.zero(), need.home()).ifPresent(way -> {
            for (Wire wire : way.wires()) {
                if (returns.ampacity(wire).low() < need.averageA()) {
                    gaps.add(Ampacity.missing(wire));
                }
            }
        });
    }

    private static Draft draft(Situation at, ReturnGraph returns, Returns.Need need, Ampacity width) {
        String ref = at.directory().name(need.unit());
        Optional<ReturnWay> way = returns.way(need.zero(), need.home());
        Optional<Wire> neck = way.flatMap(ReturnWay::bottleneck);
        String id = neck.map(wire -> wire.lead().id()).orElse("?");
        String amps = Figures.of(need.averageA()) + " A";
        String peak = need.peakA() > need.averageA() ? ", " + Figures.of(need.peakA()) + " A peak" : "";
        String carries = (width.isKnown() ? "" : "at most ") + Figures.of(width.high()) + " A";
        List<String> open = openZeros(at, need);
        Draft draft = Draft.of(
                        Severity.S1,
                        "return too thin: " + ref + " draws " + amps + peak + ", its widest 0V path carries " + carries
                                + " through " + id)
                .about(ref)
                .path(way.map(ReturnWay::trail).orElse(Trail.NONE))
                .sum((need.words().isEmpty() ? "" : need.words() + " = ") + amps + " average, " + id + " "
                        + neck.map(Ampacity::words).orElse("") + " " + carries)
                .judged(need.averageA(), width.high(), "A", WireTable.FREE_AIR_SOURCE)
                .why("the whole current of " + ref
                        + " goes through this wire: it melts, and everything looked fine until then")
                .meter(
                        open.isEmpty()
                                ? "read the size printed on " + id + ", or measure the bare conductor"
                                : "power off, " + id + " out: open from 0V of " + ref + " to "
                                        + at.wiring().name(need.home()) + ", under 1 ohm when its own return is there")
                .fix("fit a return of " + ref + " for " + amps
                        + (open.isEmpty() ? ", or a thicker " + id : " at " + String.join(" or ", open)))
                .cause(ref + "/0V")
                .explains(
                        Sound.SUPPLY,
                        "P09",
                        "P11",
                        "P13",
                        "P14",
                        "P15",
                        "P16",
                        "P17",
                        "P22",
                        "P25",
                        "M16",
                        "S05",
                        "T02",
                        "T13");
        open.forEach(plug -> draft.cause(plug + " open"));
        neck.ifPresent(wire -> {
            draft.at(wire.lead());
            draft.input(wire.awg());
            draft.onAssumption(width.high() * Ampacity.bonusLeft(wire) >= need.averageA());
            sharing(at, wire).forEach(lead -> draft.cause(lead.id()));
        });
        draft.seen(at.directory().unit(need.unit()));
        return draft;
    }

    /** The leads that share a splice with the bottleneck: their returns meet in it. */
    private static List<Lead> sharing(Situation at, Wire neck) {
        List<Integer> joints = new ArrayList<>();
        for (int pin : new int[] {neck.fromPin(), neck.toPin()}) {
            if (at.directory().isJoint(at.wiring().unitOf(pin))) {
                joints.add(pin);
            }
        }
        return Supplies.leadsAt(at, joints);
    }

    /** Plugs of the unit whose 0V has no conductor: where the return should be. */
    private static List<String> openZeros(Situation at, Returns.Need need) {
        Set<String> open = new TreeSet<>();
        for (int pin : Supplies.zeroPins(at, need.unit(), need.zero())) {
            if (at.wiring().is(pin, PinRole.ZERO_V) && at.wiring().wiresAt(pin).length == 0) {
                open.add(at.wiring().plugName(need.unit(), at.wiring().plugIndex(pin)));
            }
        }
        return new ArrayList<>(open);
    }
}
