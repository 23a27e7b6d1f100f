package ringout.check.signal;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.finding.Draft;
import ringout.graph.bus.BusHub;
import ringout.graph.bus.Buses;
import ringout.graph.signal.NetRoles;
import ringout.graph.signal.SignalWays;
import ringout.model.AircraftFunction;
import ringout.model.Datum;
import ringout.model.PinRole;
import ringout.model.Unit;
import ringout.model.UnitKind;

/**
 * The ways of one failsafe: from its trigger to the unit that acts, and on to what that moves.
 *
 * @param at the aircraft in one state
 * @param ways signal ways of that state
 * @param function the failsafe
 * @param trigger unit whose loss starts it
 * @param actor unit that acts
 * @param acts for each unit asked about so far whether it moves anything
 */
record FailsafeWays(
        Situation at, SignalWays ways, AircraftFunction function, int trigger, int actor, Map<Integer, Boolean> acts) {
    private static final long NO_SIGNAL =
            NetRoles.SUPPLIES | NetRoles.bits(PinRole.ZERO_V, PinRole.PACK_MINUS, PinRole.NONE, PinRole.SHIELD);

    /** Says what is wrong with them. What a state takes off or pulls is not judged in that state. */
    void look(Outcomes out) {
        List<Integer> steps = steps();
        if (steps.isEmpty() || steps.stream().anyMatch(this::taken)) {
            return;
        }
        out.looked();
        for (int unit : steps) {
            if (!ways.powered(unit) && !SignalWays.of(at.whole()).powered(unit)) {
                out.finding(FailsafeChain.draft(function, name(unit) + " has no supply")
                        .fix("bring " + name(unit) + " its supply")
                        .cause(name(unit) + " unfed"));
                return;
            }
        }
        for (int i = 0; i + 1 < steps.size(); i++) {
            if (!ways.joined(steps.get(i), steps.get(i + 1))) {
                out.finding(broken(steps.get(i), steps.get(i + 1)));
                return;
            }
        }
        List<String> unsorted = at.aircraft().units().stream()
                .filter(unit -> at.directory()
                        .find(unit.ref())
                        .filter(u -> at.directory().type(u).kind() instanceof Datum.Unknown)
                        .isPresent())
                .map(Unit::ref)
                .toList();
        if (actor == steps.get(steps.size() - 1) && !moves(actor) && !unsorted.isEmpty()) {
            out.cannotTell(
                    "what kind of unit " + String.join(", ", unsorted) + " is",
                    "look at the unit",
                    unsorted.size(),
                    unsorted.toArray(new String[0]));
            return;
        }
        if (actor == steps.get(steps.size() - 1) && !acts.computeIfAbsent(actor, this::moves)) {
            Draft draft = FailsafeChain.draft(function, name(actor) + " moves nothing")
                    .fix("join " + name(actor) + " and what it shall move, or name another acting unit for "
                            + function.name())
                    .cause(name(actor) + " moves nothing");
            movables().forEach(other -> draft.cause(name(actor) + " to " + name(other)));
            out.finding(draft);
        }
    }

    /** The units from the trigger on, along the declared chain where the chain has both; empty when one is not aboard. */
    private List<Integer> steps() {
        List<Integer> steps = new ArrayList<>();
        for (String name : function.chain()) {
            Optional<Integer> unit = at.directory().find(name);
            if (unit.isEmpty()) {
                return List.of();
            }
            steps.add(unit.get());
        }
        int first = steps.indexOf(trigger);
        int last = steps.lastIndexOf(actor);
        return first >= 0 && last >= first ? steps.subList(first, steps.size()) : List.of(trigger, actor);
    }

    private boolean taken(int unit) {
        String start = name(unit) + "-";
        return !at.circuit().aboard(unit)
                || at.circuit().state().pulled().stream().anyMatch(plug -> plug.startsWith(start));
    }

    private String name(int unit) {
        return at.directory().name(unit);
    }

    /** Whether a unit is itself what acts, or has a way to something that moves; true where nothing that moves is aboard. */
    private boolean moves(int unit) {
        boolean reaches = movable(unit)
                || near(unit).stream()
                        .anyMatch(other -> movable(other) && at.circuit().aboard(other) && ways.joined(unit, other));
        return reaches || movables().isEmpty();
    }

    /** Units that share a net of signals or a bus with one: no other has a way to it in one step. */
    private Set<Integer> near(int unit) {
        Set<Integer> near = new TreeSet<>();
        for (int pin = at.wiring().firstPin(unit); pin < at.wiring().endPin(unit); pin++) {
            if ((NetRoles.bits(at.wiring().role(pin).orElse(PinRole.NONE)) & NO_SIGNAL) == 0) {
                for (int other : at.circuit().nets().pins(at.circuit().nets().of(pin))) {
                    near.add(at.wiring().unitOf(other));
                }
            }
        }
        Buses buses = Buses.of(at.circuit());
        for (BusHub hub : buses.hubs()) {
            if (hub.unit() == unit) {
                buses.segment(hub)
                        .hubs()
                        .forEach(index -> near.add(buses.hubs().get(index).unit()));
            }
        }
        return near;
    }

    private List<Integer> movables() {
        List<Integer> all = new ArrayList<>();
        for (int other = 0; other < at.aircraft().units().size(); other++) {
            if (movable(other) && at.circuit().aboard(other)) {
                all.add(other);
            }
        }
        return all;
    }

    private boolean movable(int unit) {
        UnitKind kind = at.directory().type(unit).kind().or(UnitKind.UNIT);
        return switch (kind) {
            case SPEED_CONTROLLER, ACTUATOR, EJECTOR -> true;
            default -> at.directory().type(unit).ejector().is(true);
        };
    }

    private Draft broken(int from, int to) {
        boolean sensed = from == trigger || to == actor;
        Draft draft = FailsafeChain.draft(
                function,
                (sensed
                        ? name(to) + " does not sense " + name(from)
                        : "no way from " + name(from) + " to " + name(to)));
        draft.fix("join " + name(from) + " and " + name(to) + ", or correct the chain of " + function.name());
        ways.towards(from, to).forEach(draft::at);
        for (int plug = 0; plug < at.directory().type(from).plugs().size(); plug++) {
            if (at.wiring().firstPin(from, plug) < at.wiring().endPin(from, plug) && open(from, plug)) {
                draft.cause(at.wiring().plugName(from, plug) + " open");
            }
        }
        return draft.cause(name(from) + " to " + name(to));
    }

    private boolean open(int unit, int plug) {
        for (int pin = at.wiring().firstPin(unit, plug); pin < at.wiring().endPin(unit, plug); pin++) {
            if (at.wiring().wiresAt(pin).length > 0) {
                return false;
            }
        }
        return true;
    }
}
