package ringout.check.topology;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import ringout.check.form.Check;
import ringout.check.form.CheckInfo;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.finding.Draft;
import ringout.finding.Severity;
import ringout.graph.signal.SignalWays;
import ringout.model.AircraftFunction;
import ringout.model.Unit;
import ringout.model.UnitKind;

/**
 * A function whose chain of units is not joined, or has a unit without supply.
 *
 * <p>Why it matters: the aircraft cannot do what it is listed to do, and no single lead looks wrong.
 *
 * <p>Condition: two units that follow each other in a declared chain have no signal way between them (a driven wire, a whole bus,
 * both lines of I2C, all phases of a motor), or a unit of the chain takes a supply and gets none. When no function is
 * declared, those of the airframe kind are taken: command receiver and battery monitor to the flight controller, flight
 * controller to every speed controller, that to its motor, and to every actuator unless it is a multirotor. A chain with a
 * unit that a state takes off is not judged in that state, nor a supply that only the state takes away.
 *
 * <p>Does not see: whether the units understand each other (A09, S09).
 *
 * <p>Reference: common practice, no source.
 */
@CheckInfo(
        code = "T21",
        name = "path-missing",
        severity = Severity.S2,
        since = "0.1",
        needs = {"functions with their chains, or the airframe kind", "unit type of each unit of a chain"})
public final class PathMissing implements Check {
    @Override
    public void look(Situation at, Outcomes out) {
        Chains chains = new Chains(at, out);
        List<AircraftFunction> functions = at.aircraft().functions();
        if (functions.isEmpty()) {
            chains.byKind();
        } else {
            functions.forEach(chains::declared);
        }
        chains.tell();
    }

    /** A break, and the functions it stops. */
    private record Break(Draft draft, List<String> functions) {}

    /** Walks the chains of one state. */
    private static final class Chains {
        private final Situation at;
        private final Outcomes out;
        private final SignalWays ways;
        private final Map<String, Break> breaks = new LinkedHashMap<>();
        private final TreeSet<String> untyped = new TreeSet<>();

        private Chains(Situation at, Outcomes out) {
            this.at = at;
            this.out = out;
            this.ways = SignalWays.of(at.circuit());
        }

        private void declared(AircraftFunction function) {
            List<Integer> chain = new ArrayList<>();
            for (String name : function.chain()) {
                Optional<Integer> unit = at.directory().find(name);
                if (unit.isEmpty()) {
                    nobody(function, name);
                    return;
                }
                if (!at.circuit().aboard(unit.get())) {
                    return;
                }
                chain.add(unit.get());
            }
            chain.forEach(unit -> powered(function.name(), unit));
            for (int i = 0; i + 1 < chain.size(); i++) {
                step(function.name(), chain.get(i), chain.get(i + 1));
            }
        }

        private void nobody(AircraftFunction function, String name) {
            out.finding(Draft.of(
                            Severity.S2,
                            "path missing: function " + function.name() + " runs through " + name
                                    + ", which is not aboard")
                    .about(function.name(), name)
                    .at(new ringout.finding.Place(function.at(), function.name(), "function " + function.name()))
                    .sum(String.join(" to ", function.chain()))
                    .why("the function cannot work, or its list is wrong")
                    .fix("correct " + name + " in the chain of " + function.name())
                    .cause("function " + function.name()));
        }

        /** Whether both ends are of a known type; notes those that are not. */
        private boolean typed(int... units) {
            boolean all = true;
            for (int unit : units) {
                if (!at.directory().isJoint(unit) && !at.directory().typeKnown(unit)) {
                    untyped.add(at.directory().unit(unit).type());
                    all = false;
                }
            }
            return all;
        }

        private void step(String function, int from, int to) {
            if (!typed(from, to)) {
                return;
            }
            if (ways.joined(from, to) || pulled(from) || pulled(to)) {
                out.looked();
                return;
            }
            broken(function, from, to);
        }

        /** Whether a state has pulled a plug of a unit: what that cuts off is cut off on purpose. */
        private boolean pulled(int unit) {
            for (int pin = at.wiring().firstPin(unit); pin < at.wiring().endPin(unit); pin++) {
                if (!at.circuit().mated(pin)) {
                    return true;
                }
            }
            return false;
        }

        private void broken(String function, int from, int to) {
            String a = at.directory().name(from);
            String b = at.directory().name(to);
            Break known = breaks.computeIfAbsent(a + " " + b, key -> new Break(draft(from, to), new ArrayList<>()));
            known.functions().add(function);
        }

        private Draft draft(int from, int to) {
            String a = at.directory().name(from);
            String b = at.directory().name(to);
            Draft draft = Draft.of(Severity.S2, "path missing: no signal way from " + a + " to " + b)
                    .about(a, b)
                    .explains("S22")
                    .cause(a + " to " + b)
                    .fix("join " + a + " and " + b + ", or correct the chain");
            for (int unit : new int[] {from, to}) {
                if (!at.directory().isJoint(unit)) {
                    draft.seen(at.directory().unit(unit));
                    if (!ways.powered(unit)) {
                        draft.cause(unfed(unit));
                    }
                }
            }
            Mates.between(at, from, to).forEach(mates -> mates.causes(at).forEach(draft::cause));
            ways.towards(from, to).forEach(lead -> draft.cause(lead.id()));
            ways.undriven(from, to).forEach(pin -> draft.cause(plug(pin) + " open"));
            HubPlugs.openBeyond(at, from).forEach(draft::cause);
            HubPlugs.openBeyond(at, to).forEach(draft::cause);
            ways.halves(from, to).forEach(lead -> draft.cause(lead.id()));
            return draft;
        }

        private String plug(int pin) {
            return at.wiring().plugName(at.wiring().unitOf(pin), at.wiring().plugIndex(pin));
        }

        /** The token that findings about a unit without supply share. */
        private String unfed(int unit) {
            return at.directory().name(unit) + " unfed";
        }

        private void powered(String function, int unit) {
            if (at.directory().isJoint(unit) || !typed(unit)) {
                return;
            }
            if (ways.powered(unit)) {
                out.looked();
                return;
            }
            if (SignalWays.of(at.whole()).powered(unit)) {
                return;
            }
            String name = at.directory().name(unit);
            Break known = breaks.computeIfAbsent(
                    name,
                    key -> new Break(
                            Draft.of(Severity.S2, "path missing: " + name + " has no supply")
                                    .about(name)
                                    .seen(at.directory().unit(unit))
                                    .cause(unfed(unit))
                                    .fix("bring " + name + " its supply"),
                            new ArrayList<>()));
            known.functions().add(function);
        }

        private void byKind() {
            Map<UnitKind, List<Integer>> byKind = new HashMap<>();
            List<Unit> units = at.aircraft().units();
            for (int unit = 0; unit < units.size(); unit++) {
                int index = unit;
                if (at.circuit().aboard(unit)) {
                    at.directory()
                            .type(unit)
                            .kind()
                            .known()
                            .ifPresent(kind -> byKind.computeIfAbsent(kind, key -> new ArrayList<>())
                                    .add(index));
                }
            }
            if (!byKind.containsKey(UnitKind.CONTROLLER)) {
                return;
            }
            if (at.aircraft().airframe().kind().isMissing()) {
                out.cannotTell(
                        "functions of the aircraft, or the kind of its airframe",
                        "declare what it must be able to do and through which units, or at least the airframe kind",
                        10);
                return;
            }
            for (DefaultFunctions.Leg leg : DefaultFunctions.of(at)) {
                leg(leg, byKind.getOrDefault(leg.from(), List.of()), byKind.getOrDefault(leg.to(), List.of()));
            }
        }

        private void leg(DefaultFunctions.Leg leg, List<Integer> from, List<Integer> to) {
            if (from.isEmpty() || to.isEmpty()) {
                return;
            }
            List<Integer> each = leg.everySource() ? from : to;
            List<Integer> any = leg.everySource() ? to : from;
            for (int unit : each) {
                powered(leg.name(), unit);
                if (any.stream().noneMatch(other -> ways.joined(unit, other)) && typed(unit) && !pulled(unit)) {
                    int nearest = any.get(0);
                    broken(leg.name(), leg.everySource() ? unit : nearest, leg.everySource() ? nearest : unit);
                } else {
                    out.looked();
                }
            }
        }

        private void tell() {
            breaks.values().forEach(found -> {
                String names = String.join(", ", new TreeSet<>(found.functions()));
                out.finding(found.draft()
                        .sum("functions that stop: " + names)
                        .why("a function of the aircraft does not work, and no single lead looks wrong"));
            });
            if (!untyped.isEmpty()) {
                out.cannotTell(
                        "unit type " + String.join(", ", untyped),
                        "add its plugs and pins to the library",
                        10 * untyped.size(),
                        untyped.toArray(new String[0]));
            }
        }
    }
}
