package ringout.trace.predict;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import ringout.graph.Circuit;
import ringout.graph.Trail;
import ringout.graph.Wiring;
import ringout.model.UnitKind;

/** The way by which a unit is heard, from the controller outwards, as a person can follow it. */
public final class SignalWay {
    private SignalWay() {}

    /** The links from a controller to a unit, fewest first found, each along its first line; empty when nothing hears it. */
    public static List<Trail> to(Circuit circuit, int unit) {
        List<DataLink> links = DataLinks.of(circuit);
        Wiring wiring = circuit.wiring();
        DataLink[] by = new DataLink[wiring.aircraft().units().size()];
        boolean[] reached = new boolean[by.length];
        ArrayDeque<Integer> open = new ArrayDeque<>();
        for (int one = 0; one < by.length; one++) {
            if (circuit.aboard(one) && wiring.directory().type(one).kind().is(UnitKind.CONTROLLER)) {
                reached[one] = true;
                open.add(one);
            }
        }
        while (!open.isEmpty()) {
            int near = open.remove();
            for (DataLink link : links) {
                int far = link.from() == near ? link.to() : link.to() == near ? link.from() : -1;
                if (far >= 0 && !reached[far]) {
                    reached[far] = true;
                    by[far] = link;
                    open.add(far);
                }
            }
        }
        return trails(circuit, by, unit);
    }

    private static List<Trail> trails(Circuit circuit, DataLink[] by, int unit) {
        List<Trail> trails = new ArrayList<>();
        int far = unit;
        while (far >= 0 && far < by.length && by[far] != null) {
            DataLink link = by[far];
            DataLink.Line line = link.lines().get(0);
            boolean outwards = link.to() == far;
            circuit.trail(outwards ? line.a() : line.b(), outwards ? line.b() : line.a())
                    .ifPresent(trail -> trails.add(0, trail));
            far = outwards ? link.from() : link.to();
        }
        return List.copyOf(trails);
    }

    /** The leads of some trails, in order. */
    public static Set<String> leads(List<Trail> trails) {
        Set<String> leads = new LinkedHashSet<>();
        for (Trail trail : trails) {
            trail.steps().stream()
                    .filter(step -> step.kind() == Trail.Kind.LEAD)
                    .forEach(step -> leads.add(step.name()));
        }
        return leads;
    }
}
