package ringout.check.topology;

import java.util.List;
import java.util.Optional;
import ringout.check.form.Check;
import ringout.check.form.CheckInfo;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.check.form.Threshold;
import ringout.check.form.Thresholds;
import ringout.finding.Draft;
import ringout.finding.Severity;
import ringout.graph.Circuit;
import ringout.graph.bus.BusHub;
import ringout.graph.bus.BusSegment;
import ringout.graph.bus.Buses;
import ringout.graph.bus.TerminatorAt;
import ringout.model.State;
import ringout.model.Unit;

/**
 * A bus that is terminated right with everything fitted, but not in a declared state with a part taken off.
 *
 * <p>Why it matters: clean as flown, faulty without the wing or the payload; the terminator went away with the part.
 *
 * <p>Condition: in a declared state with units off or plugs pulled, a piece of bus has not two terminators, or a member hangs
 * beyond them by more than the stub limit, while the same bus is right in the state with nothing taken off. S3 in a state
 * that is flown, S4 on the bench.
 *
 * <p>Does not see: states nobody declared; a lead that stays behind with its far end open.
 *
 * <p>Reference: ISO 11898-2 (two terminators); DroneCAN specification, section 8.
 */
@CheckInfo(
        code = "T17",
        name = "terminator-leaves",
        severity = Severity.S3,
        since = "0.1",
        needs = {"terminator of each bus unit", "declared states with removable parts off"})
public final class TerminatorLeaves implements Check {
    @Override
    public void look(Situation at, Outcomes out) {
        undeclared(at, out);
        if (!Removals.judgedElsewhere(at)) {
            return;
        }
        Buses buses = Buses.of(at.circuit());
        for (BusSegment segment : buses.segments()) {
            if (!segment.wired()) {
                continue;
            }
            Termination termination = new Termination(buses, segment);
            if (termination.unknown()) {
                termination.ask(out);
            } else {
                out.looked();
                if (termination.wrong(at, Thresholds.BUS_STUB)) {
                    whole(at, buses, segment).ifPresent(before -> out.finding(draft(at, buses, segment, before)));
                }
            }
        }
    }

    /** Removable bus units that no declared state takes off. */
    private static void undeclared(Situation at, Outcomes out) {
        List<State> states = at.aircraft().states();
        Buses buses = Buses.of(at.circuit());
        List<String> missing = buses.hubs().stream()
                .filter(hub -> hub.member() && buses.segment(hub).wired())
                .map(buses::unit)
                .filter(unit -> unit.removable().is(true))
                .map(Unit::ref)
                .filter(ref -> states.stream().noneMatch(state -> state.absent().contains(ref)))
                .distinct()
                .toList();
        if (!missing.isEmpty()) {
            out.cannotTell(
                    "a state with " + String.join(", ", missing) + " off",
                    "declare the state: what is off, which plugs are pulled, which terminators are set then",
                    5,
                    missing.toArray(new String[0]));
        }
    }

    /** The same bus with everything fitted, if it is right there. */
    private static Optional<BusSegment> whole(Situation at, Buses buses, BusSegment segment) {
        BusHub here = buses.hubs().get(segment.hubs().get(0));
        Situation before =
                new Situation(at.circuit().know(Before.class, Before::of).circuit());
        Buses all = Buses.of(before.circuit());
        return all.hubs().stream()
                .filter(hub -> hub.unit() == here.unit() && hub.port().equals(here.port()))
                .map(all::segment)
                .filter(same -> !new Termination(all, same).wrong(before, Thresholds.BUS_STUB))
                .findFirst();
    }

    /** The first declared state with nothing taken off. */
    private record Before(Circuit circuit) {
        static Before of(Circuit circuit) {
            State whole = circuit.wiring().aircraft().states().stream()
                    .filter(state -> !Removals.in(state))
                    .findFirst()
                    .orElseThrow();
            return new Before(Circuit.of(circuit.wiring(), whole));
        }
    }

    private static Draft draft(Situation at, Buses buses, BusSegment segment, BusSegment before) {
        Termination termination = new Termination(buses, segment);
        TerminatorPlan plan = new TerminatorPlan(buses, segment);
        String bus = buses.name(segment);
        List<Termination.Overhang> over = termination.overhangs();
        String fault = over.isEmpty()
                ? bus + " has " + termination.words() + termination.where()
                : bus + " is terminated at " + buses.name(over.get(0).end()) + ", but "
                        + buses.name(over.get(0).member()) + " hangs "
                        + Metres.words(over.get(0).branch().lengthMm()) + " m beyond it";
        Draft draft = Draft.of(
                        at.bench() ? Severity.S4 : Severity.S3,
                        "terminator leaves with a removable part: in state " + at.state() + " " + fault)
                .about(bus, "state " + at.state())
                .sum("in state " + at.state() + " H to L reads " + termination.reading()
                        + (over.isEmpty() ? ", 60 ohm when right" : ", as if it were right"))
                .why("the bus works with everything fitted and fails without the part")
                .meter("state " + at.state() + ", power off, H to L: " + termination.reading() + " now")
                .fix("in state " + at.state() + ", " + plan.words())
                .cause(Termination.cause(buses, segment));
        if (over.isEmpty()) {
            draft.judged(termination.count(), Termination.RIGHT, "terminators", "ISO 11898-2");
        } else {
            Threshold limit = at.limit(Thresholds.BUS_STUB);
            double mm = over.get(0).branch().lengthMm();
            draft.judged(Metres.of(mm), Metres.of(limit.value()), "m", limit.source());
        }
        plan.show(draft);
        for (TerminatorAt gone : before.on()) {
            if (!at.circuit().aboard(gone.unit())) {
                draft.seen(at.directory().unit(gone.unit()));
            }
        }
        return draft;
    }
}
