package ringout.check;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import ringout.graph.Site;
import ringout.graph.Wiring;
import ringout.model.Aircraft;
import ringout.model.Datum;
import ringout.model.Lead;
import ringout.model.Pin;
import ringout.model.PinMap;
import ringout.model.PinRole;
import ringout.model.Plug;
import ringout.model.shape.Shape;

/**
 * A lead between two plugs of which it is marked "?" which contacts it joins.
 *
 * @param row its place in the list
 * @param lead the lead
 * @param from plug at the from end
 * @param to plug at the to end
 */
record UnknownLead(int row, Lead lead, Plug from, Plug to) {
    /** All in order, with equal contacts the other way round, without those that feed, and without those of a bus. */
    static final int WAYS = 4;

    private static final Set<PinRole> FEEDING = Set.of(PinRole.SUPPLY_OUT, PinRole.SUPPLY_THROUGH, PinRole.PACK_PLUS);

    private static final Set<PinRole> BUS = Set.of(PinRole.CAN_H, PinRole.CAN_L);

    static List<UnknownLead> all(Wiring wiring) {
        List<UnknownLead> all = new ArrayList<>();
        List<Lead> leads = wiring.aircraft().leads();
        for (int row = 0; row < leads.size(); row++) {
            if (leads.get(row).pins() instanceof Datum.Unknown
                    && wiring.from(row) instanceof Site.OnPlug from
                    && wiring.to(row) instanceof Site.OnPlug to) {
                all.add(new UnknownLead(row, leads.get(row), plug(wiring, from), plug(wiring, to)));
            }
        }
        return List.copyOf(all);
    }

    private static Plug plug(Wiring wiring, Site.OnPlug site) {
        return wiring.directory().type(site.unit()).plugs().get(site.plug());
    }

    /** The datum, as one asks for it. */
    String missing() {
        return "pins of " + lead.id();
    }

    /** An aircraft with its leads joining what suits, in one way. */
    static Aircraft with(Aircraft aircraft, List<UnknownLead> unknown, int way) {
        List<Lead> leads = new ArrayList<>(aircraft.leads());
        unknown.forEach(one ->
                leads.set(one.row, Shape.of(Lead.class).with(one.lead, "pins", Datum.of(one.suiting(way % WAYS)))));
        return Shape.of(Aircraft.class).with(aircraft, "leads", List.copyOf(leads));
    }

    private PinMap suiting(int way) {
        List<Pin> free = new ArrayList<>(to.pins());
        if (way == 1) {
            Collections.reverse(free);
        }
        Map<String, String> pairs = new LinkedHashMap<>();
        for (Pin pin : from.pins()) {
            PinRole role = pin.role().or(PinRole.NONE);
            if ((way == 2 && FEEDING.contains(role)) || (way == 3 && BUS.contains(role))) {
                continue;
            }
            Optional<Pin> mate =
                    free.stream().filter(other -> suits(pin, other)).findFirst();
            mate.ifPresent(other -> {
                free.remove(other);
                pairs.put(pin.number(), other.number());
            });
        }
        return new PinMap(pairs.entrySet().stream()
                .map(pair -> new PinMap.Pair(pair.getKey(), pair.getValue()))
                .toList());
    }

    private static boolean suits(Pin one, Pin other) {
        Optional<PinRole> role = other.role().known();
        return one.role()
                .known()
                .filter(known -> known != PinRole.NONE && role.isPresent())
                .filter(known -> Suiting.of(known).contains(role.orElse(known)))
                .isPresent();
    }
}
