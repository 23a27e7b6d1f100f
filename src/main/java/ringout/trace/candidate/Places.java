package ringout.trace.candidate;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.OptionalDouble;
import java.util.SortedSet;
import java.util.TreeSet;
import ringout.graph.Circuit;
import ringout.graph.Site;
import ringout.graph.Wire;
import ringout.graph.Wiring;
import ringout.graph.order.Covers;
import ringout.model.Lead;
import ringout.model.PointFlag;
import ringout.model.RoutePoint;
import ringout.model.Zone;

/** What is told of places: which lids lie over them, and what makes faults likelier there. */
public final class Places {
    /** More matings than a usual signal plug is made for. Judgement, no source. */
    private static final int MANY_MATINGS = 200;

    private final Circuit circuit;
    private final Wiring wiring;
    private final Covers covers;
    private final Recency recency;

    Places(Circuit circuit, Recency recency) {
        this.circuit = circuit;
        this.wiring = circuit.wiring();
        this.covers = Covers.of(circuit);
        this.recency = recency;
    }

    /** What has to come off to get at a plug. */
    public static Opening atPlug(Circuit circuit, int unit, int plug) {
        Covers covers = Covers.of(circuit);
        List<Integer> over = new ArrayList<>();
        for (int cover = 0; cover < covers.all().size(); cover++) {
            if (covers.hides(cover, unit, plug)) {
                over.add(cover);
            }
        }
        return opening(covers, over);
    }

    /** What has to come off to get at a unit: to exchange it, all that hides any of its plugs. */
    public static Opening atUnit(Circuit circuit, int unit) {
        Covers covers = Covers.of(circuit);
        List<Integer> over = new ArrayList<>();
        for (int cover = 0; cover < covers.all().size(); cover++) {
            if (covers.hidesUnit(cover, unit) || covers.hidesSome(cover, unit)) {
                over.add(cover);
            }
        }
        return opening(covers, over);
    }

    /** A lid that lies over another hides what that one hides: each lid is counted once, with its own minutes. */
    private static Opening opening(Covers covers, Collection<Integer> over) {
        if (over.isEmpty()) {
            return Opening.NONE;
        }
        List<Integer> outerFirst = new ArrayList<>(over);
        outerFirst.sort((a, b) -> {
            int byDepth = Integer.compare(covers.over(a).size(), covers.over(b).size());
            return byDepth != 0 ? byDepth : covers.name(a).compareTo(covers.name(b));
        });
        double minutes = 0;
        boolean told = true;
        for (int cover : outerFirst) {
            told &= covers.all().get(cover).minutes().isKnown();
            minutes += covers.all().get(cover).minutes().or(0.0);
        }
        return new Opening(
                outerFirst.stream().map(covers::name).toList(),
                told ? OptionalDouble.of(minutes) : OptionalDouble.empty());
    }

    /** Both ends of the conductors of a lead must be reached to exchange it. */
    Opening atLead(Collection<Wire> wires) {
        TreeSet<Integer> over = new TreeSet<>();
        for (Wire wire : wires) {
            for (int pin : new int[] {wire.fromPin(), wire.toPin()}) {
                for (int cover = 0; cover < covers.all().size(); cover++) {
                    if (covers.hides(cover, pin)) {
                        over.add(cover);
                    }
                }
            }
        }
        return opening(covers, over);
    }

    /** What has to come off to get at both of two plugs. */
    Opening atPlugs(Site.OnPlug one, Site.OnPlug other) {
        TreeSet<Integer> over = new TreeSet<>();
        for (int cover = 0; cover < covers.all().size(); cover++) {
            if (covers.hides(cover, one.unit(), one.plug()) || covers.hides(cover, other.unit(), other.plug())) {
                over.add(cover);
            }
        }
        return opening(covers, over);
    }

    Opening atPlug(int unit, int plug) {
        return atPlug(circuit, unit, plug);
    }

    Opening atUnit(int unit) {
        return atUnit(circuit, unit);
    }

    /** What is told of a conductor. */
    SortedSet<Circumstance> ofWire(Wire wire) {
        SortedSet<Circumstance> found = new TreeSet<>();
        Lead lead = wire.lead();
        for (RoutePoint point : lead.route()) {
            if (point.flags().contains(PointFlag.FLEX) || point.flags().contains(PointFlag.HINGE)) {
                found.add(Circumstance.FLEX);
            }
            boolean sharp = point.flags().contains(PointFlag.EDGE)
                    || point.flags().contains(PointFlag.CARBON)
                    || point.flags().contains(PointFlag.HOLE);
            if (sharp && !point.guarded().is(true)) {
                found.add(Circumstance.CHAFE);
            }
        }
        if (lead.madeBy().isKnown() && !lead.delivered().is(true)) {
            found.add(Circumstance.HAND_CRIMP);
        }
        if (lead.matings().or(0) > MANY_MATINGS) {
            found.add(Circumstance.MANY_MATINGS);
        }
        if (recency.has(lead.id())) {
            found.add(Circumstance.TOUCHED);
        }
        if (wet(lead.zone().or(""))) {
            found.add(Circumstance.WET);
        }
        return found;
    }

    /** What is told of a plug, beside what is told of its leads. */
    SortedSet<Circumstance> ofPlug(int unit, int plug) {
        SortedSet<Circumstance> found = ofUnit(unit);
        if (recency.has(wiring.plugName(unit, plug))) {
            found.add(Circumstance.TOUCHED);
        }
        for (int pin = wiring.firstPin(unit, plug); pin < wiring.endPin(unit, plug); pin++) {
            for (int w : wiring.wiresAt(pin)) {
                SortedSet<Circumstance> wire = ofWire(wiring.wires().get(w));
                wire.remove(Circumstance.FLEX);
                found.addAll(wire);
            }
        }
        return found;
    }

    /** What is told of a unit. */
    SortedSet<Circumstance> ofUnit(int unit) {
        SortedSet<Circumstance> found = new TreeSet<>();
        if (recency.has(wiring.directory().name(unit))) {
            found.add(Circumstance.TOUCHED);
        }
        if (recency.crash()) {
            found.add(Circumstance.CRASH);
        }
        if (recency.update()) {
            found.add(Circumstance.UPDATE);
        }
        if (!wiring.directory().isJoint(unit)
                && wet(wiring.directory().unit(unit).zone().or(""))) {
            found.add(Circumstance.WET);
        }
        return found;
    }

    private boolean wet(String zone) {
        for (Zone one : wiring.aircraft().airframe().zones()) {
            if (one.name().equalsIgnoreCase(zone) && one.wet().is(true)) {
                return true;
            }
        }
        return false;
    }
}
