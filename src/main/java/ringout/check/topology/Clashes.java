package ringout.check.topology;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import ringout.check.form.Situation;
import ringout.graph.EdgeKind;
import ringout.graph.Wire;
import ringout.graph.Wiring;
import ringout.graph.index.PathSearch;
import ringout.graph.index.Walk;
import ringout.model.Datum;
import ringout.model.OutputSetting;
import ringout.model.PinRole;
import ringout.model.Rail;
import ringout.model.shape.Scalars;

/**
 * Nets on which roles meet that may not. The roles most pins of a net agree with are taken as right; each pin that does not
 * fit them is put down to the conductor nearest to it.
 */
final class Clashes {
    /**
     * Two pins that meet and may not.
     *
     * @param one the pin that does not fit its net
     * @param other the nearest pin it clashes with
     * @param wire the conductor that brings it there
     * @param note what makes it wrong when that is not the roles alone; else empty
     */
    record Meeting(int one, int other, Wire wire, String note) {
        /** Whether one of the two brings a supply. */
        boolean burns(Wiring wiring) {
            return supply(wiring, one) || supply(wiring, other);
        }
    }

    /** A datum that decides whether two pins may meet. */
    record Open(String datum, String how, int minutes, String pin) {}

    private final Situation at;
    private final Wiring wiring;
    private final Map<String, List<Meeting>> byPlugs = new TreeMap<>();
    private final List<Open> open = new ArrayList<>();
    private final List<PathSearch> search = new ArrayList<>();

    Clashes(Situation at) {
        this.at = at;
        this.wiring = at.wiring();
    }

    /** Meetings by the two plugs their conductor joins, so that one lead gives one finding. */
    Map<String, List<Meeting>> byPlugs() {
        return byPlugs;
    }

    /** Data that are missing. */
    List<Open> open() {
        return open;
    }

    void add(int net) {
        int[] pins = at.circuit().nets().pins(net);
        Map<PinRole, Integer> counts = new EnumMap<>(PinRole.class);
        for (int pin : pins) {
            wiring.role(pin).ifPresent(role -> counts.merge(role, 1, Integer::sum));
        }
        PinRole right = right(counts);
        for (int pin : pins) {
            Optional<PinRole> role = wiring.role(pin);
            if (role.isPresent() && RolesThatMeet.verdict(role.get(), right) != RolesThatMeet.Verdict.FINE) {
                nearest(pin, role.get());
            }
        }
    }

    /** The role most pins of the net get along with; of equal ones the first in the order of the roles. */
    private static PinRole right(Map<PinRole, Integer> counts) {
        PinRole best = PinRole.PASSIVE;
        int most = -1;
        for (PinRole role : counts.keySet()) {
            int agree = 0;
            for (Map.Entry<PinRole, Integer> other : counts.entrySet()) {
                boolean fine = RolesThatMeet.verdict(role, other.getKey()) == RolesThatMeet.Verdict.FINE;
                agree += fine ? other.getValue() : 0;
            }
            if (agree > most && role != PinRole.PASSIVE && role != PinRole.NONE) {
                most = agree;
                best = role;
            }
        }
        return best;
    }

    private void nearest(int pin, PinRole role) {
        if (search.isEmpty()) {
            search.add(new PathSearch(at.circuit().nets().graph()));
        }
        search.get(0)
                .fewestEdges(pin, other -> clash(role, other), edge -> true)
                .ifPresent(walk -> meeting(pin, walk));
    }

    private boolean clash(PinRole role, int other) {
        return wiring.isPin(other)
                && wiring.role(other)
                        .filter(met -> RolesThatMeet.verdict(role, met) != RolesThatMeet.Verdict.FINE)
                        .isPresent();
    }

    private void meeting(int pin, Walk walk) {
        int other = walk.end();
        Judged judged =
                switch (RolesThatMeet.verdict(role(pin), role(other))) {
                    case LEVEL -> level(input(pin, other), input(pin, other) == pin ? other : pin);
                    case SETTING -> setting(wiring.is(pin, PinRole.PULSE_OUT) ? pin : other);
                    default -> new Judged(false, "");
                };
        for (int i = 0; i < walk.edgeCount() && !judged.fine(); i++) {
            if (wiring.kind(walk.edge(i)) == EdgeKind.CONDUCTOR) {
                Wire wire = wiring.wires().get(wiring.ref(walk.edge(i)));
                List<Meeting> meetings = byPlugs.computeIfAbsent(plugs(wire), key -> new ArrayList<>());
                if (meetings.stream().noneMatch(known -> known.wire().equals(wire) && sameSide(known.one(), pin))) {
                    meetings.add(new Meeting(pin, other, wire, judged.note()));
                }
                return;
            }
        }
    }

    /** Whether two pins are one point of one unit: one conductor brings both, and one is enough to tell. */
    private boolean sameSide(int one, int other) {
        return wiring.unitOf(one) == wiring.unitOf(other) && role(one) == role(other);
    }

    /** Whether a meeting is fine after all, and why not. */
    private record Judged(boolean fine, String note) {}

    private PinRole role(int pin) {
        return wiring.role(pin).orElse(PinRole.NONE);
    }

    private int input(int pin, int other) {
        return supply(wiring, pin) ? other : pin;
    }

    private static boolean supply(Wiring wiring, int pin) {
        return wiring.role(pin).filter(RolesThatMeet::supply).isPresent();
    }

    private String plugs(Wire wire) {
        return plug(wire.fromPin()) + " " + plug(wire.toPin());
    }

    private String plug(int pin) {
        return wiring.plugName(wiring.unitOf(pin), wiring.plugIndex(pin));
    }

    /** Whether an input stands the rail it sits on; asks when a voltage is missing. */
    private Judged level(int input, int supply) {
        Datum<Double> most = wiring.pin(input).maxV();
        Optional<Double> rail = rail(supply);
        if (most.isKnown() && rail.isPresent()) {
            String note = "stands " + Scalars.number(most.or(0.0)) + " V, the rail reaches "
                    + Scalars.number(rail.orElse(0.0)) + " V";
            return new Judged(most.or(0.0) >= rail.orElse(0.0), note);
        }
        String name = wiring.name(input);
        open.add(
                most.isKnown()
                        ? new Open(
                                "highest voltage of the rail at " + wiring.name(supply),
                                "measure it with a full pack",
                                3,
                                name)
                        : new Open("highest voltage of input " + name, "look it up in the maker's data", 5, name));
        return new Judged(true, "");
    }

    private Optional<Double> rail(int supply) {
        String inside = wiring.pin(supply).inside().or("");
        return at.directory().type(wiring.unitOf(supply)).rails().stream()
                .filter(rail -> rail.name().equals(inside))
                .map(Rail::maxV)
                .flatMap(volts -> volts.known().stream())
                .findFirst();
    }

    /** Whether an output that may drive motors is set to something else; asks when it is not known. */
    private Judged setting(int output) {
        String number = wiring.pin(output).output().or("");
        Datum<String> function = wiring.unit(output).outputs().stream()
                .filter(setting -> setting.output().equals(number))
                .map(OutputSetting::function)
                .findFirst()
                .orElse(Datum.notAsked());
        if (!function.isKnown()) {
            String name = wiring.name(output);
            open.add(new Open("function of output " + name, "read it from the parameters", 3, name));
            return new Judged(true, "");
        }
        boolean motor = function.or("").toLowerCase(Locale.ROOT).startsWith("motor");
        return new Judged(!motor, "is set to " + function.or(""));
    }
}
