package ringout.check.redundancy;

import java.util.BitSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import ringout.check.form.Check;
import ringout.check.form.CheckInfo;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.finding.Draft;
import ringout.finding.Severity;
import ringout.graph.Wire;
import ringout.graph.Wiring;
import ringout.graph.loss.TestReach;
import ringout.model.PinRole;

/**
 * Conductors whose open, short or exchange no planned test would show.
 *
 * <p>Why it matters: the sheet is ticked from top to bottom, and the fault flies.
 *
 * <p>Condition: tests are planned, and a conductor that opens, touches its neighbour in the lead, or is exchanged with it
 * changes none of their readings and no pre-flight step. Volts see the supply of one point and the return of the other;
 * ohms between the legs of a bus the ways to its terminators, and no exchange of the legs; ohms on one net the ways between the points;
 * a function everything it runs through alone. A conductor that another stands in for is seen by none of these: it takes a
 * ring-out with one end pulled. Tells the cheapest tests to add.
 *
 * <p>Does not see: bad contacts that only show under load; shorts between leads; conductors on contacts marked unused.
 *
 * <p>Reference: common practice, no source.
 */
@CheckInfo(
        code = "R11",
        name = "untested-conductor",
        severity = Severity.S4,
        since = "0.3",
        needs = {"planned tests with kind and pins", "pre-flight steps of the functions"})
public final class UntestedConductor implements Check {
    @Override
    public void look(Situation at, Outcomes out) {
        if (at.aircraft().record().tests().isEmpty() || !firstState(at)) {
            return;
        }
        TestReach reach = TestReach.of(at.circuit());
        if (!reach.unclear().isEmpty()) {
            Set<String> tests = new TreeSet<>(reach.unclear());
            out.cannotTell(
                    "kind or pins of planned test " + String.join(", ", tests),
                    "write down what is measured, and at which pins",
                    2 * tests.size(),
                    tests.toArray(new String[0]));
            return;
        }
        Unseen unseen = new Unseen(at, reach);
        if (unseen.conductors == 0) {
            return;
        }
        out.looked();
        if (!unseen.none()) {
            out.finding(unseen.draft());
        }
    }

    /** Tests are planned for the aircraft, not for each of its states. */
    private static boolean firstState(Situation at) {
        return at.aircraft().states().isEmpty()
                || at.aircraft().states().get(0).name().equals(at.state());
    }

    /** What the planned readings do not see. */
    static final class Unseen {
        final Situation at;
        final TestReach reach;
        final Set<Integer> opens = new TreeSet<>();
        final Set<Integer> shorts = new TreeSet<>();
        final Set<Integer> exchanges = new TreeSet<>();
        int conductors;
        private final BitSet seen = new BitSet();
        private final BitSet seenWithoutOhms = new BitSet();
        private final BitSet nets = new BitSet();

        Unseen(Situation at, TestReach reach) {
            this.at = at;
            this.reach = reach;
            for (TestReach.Reading reading : reach.readings()) {
                seen.or(reading.opens());
                if (!reading.ohms()) {
                    seenWithoutOhms.or(reading.opens());
                }
            }
            List<Wire> wires = at.wiring().wires();
            seen.stream().forEach(wire -> nets.set(net(wires.get(wire))));
            for (int i = 0; i < wires.size(); i++) {
                if (reach.used(wires.get(i))) {
                    conductors++;
                    if (!seen.get(i)) {
                        opens.add(i);
                    }
                    neighbour(wires, i);
                }
            }
        }

        private int net(Wire wire) {
            return at.circuit().nets().of(wire.fromPin());
        }

        /** Looks at a conductor and the next one of its lead. */
        private void neighbour(List<Wire> wires, int i) {
            if (i + 1 == wires.size()
                    || wires.get(i + 1).leadIndex() != wires.get(i).leadIndex()
                    || !reach.used(wires.get(i + 1))
                    || net(wires.get(i)) == net(wires.get(i + 1))) {
                return;
            }
            if (!nets.get(net(wires.get(i))) && !nets.get(net(wires.get(i + 1)))) {
                shorts.add(i);
                shorts.add(i + 1);
            }
            BitSet by = legs(wires.get(i), wires.get(i + 1)) ? seenWithoutOhms : seen;
            if (!by.get(i) && !by.get(i + 1)) {
                exchanges.add(i);
                exchanges.add(i + 1);
            }
        }

        private boolean legs(Wire a, Wire b) {
            Wiring wiring = at.wiring();
            return wiring.is(a.fromPin(), PinRole.CAN_H)
                    ? wiring.is(b.fromPin(), PinRole.CAN_L)
                    : wiring.is(a.fromPin(), PinRole.CAN_L) && wiring.is(b.fromPin(), PinRole.CAN_H);
        }

        boolean none() {
            return opens.isEmpty() && shorts.isEmpty() && exchanges.isEmpty();
        }

        Draft draft() {
            return UnseenDraft.of(this);
        }
    }
}
