package ringout.graph;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ringout.model.Conductor;
import ringout.model.Lead;
import ringout.model.PinMap;
import ringout.model.PinRole;

/** Turns the rows of the list into conductors, pin to pin. */
final class LeadWires {
    /**
     * A conductor before it has a place in the graph.
     *
     * @param lead number of the row
     * @param unitA number of the unit at the from end
     * @param pinA pin in the type of that unit
     * @param unitB number of the unit at the to end
     * @param pinB pin in the type of that unit
     */
    record Pairing(int lead, int unitA, int pinA, int unitB, int pinB, Optional<Conductor> own) {}

    private final Directory directory;
    private final List<Pairing> pairings = new ArrayList<>();
    private final List<LooseEnd> loose = new ArrayList<>();
    private final Site[] fromSites;
    private final Site[] toSites;
    private int row;

    LeadWires(Directory directory) {
        this.directory = directory;
        List<Lead> leads = directory.aircraft().leads();
        fromSites = new Site[leads.size()];
        toSites = new Site[leads.size()];
        for (row = 0; row < leads.size(); row++) {
            read(leads.get(row));
        }
    }

    List<Pairing> pairings() {
        return pairings;
    }

    List<LooseEnd> loose() {
        return loose;
    }

    Site from(int lead) {
        return fromSites[lead];
    }

    Site to(int lead) {
        return toSites[lead];
    }

    private void read(Lead lead) {
        Site a = directory.resolve(lead.from());
        Site b = directory.resolve(lead.to());
        fromSites[row] = a;
        toSites[row] = b;
        told(lead, a, true);
        told(lead, b, false);
        if (a instanceof Site.Loose || b instanceof Site.Loose) {
            return;
        }
        if (a instanceof Site.OnPin || b instanceof Site.OnPin) {
            single(lead, a, b);
        } else if (lead.pins().isKnown()) {
            mapped(lead, (Site.OnPlug) a, (Site.OnPlug) b);
        } else {
            straight((Site.OnPlug) a, (Site.OnPlug) b, lead);
        }
    }

    private void told(Lead lead, Site site, boolean from) {
        if (site instanceof Site.Loose l) {
            loose.add(new LooseEnd(lead, from, l.why(), l.hint()));
        }
    }

    private void single(Lead lead, Site a, Site b) {
        int pinA = onlyPin(lead, a, true);
        int pinB = onlyPin(lead, b, false);
        if (pinA >= 0 && pinB >= 0) {
            add(unit(a), pinA, unit(b), pinB, own(lead));
        }
    }

    private static Optional<Conductor> own(Lead lead) {
        return lead.conductors().isEmpty()
                ? Optional.empty()
                : Optional.of(lead.conductors().get(0));
    }

    private int onlyPin(Lead lead, Site site, boolean from) {
        if (site instanceof Site.OnPin pin) {
            return pin.pin();
        }
        Site.OnPlug plug = (Site.OnPlug) site;
        TypeLayout layout = directory.layout(plug.unit());
        int count = layout.endPin(plug.plug()) - layout.firstPin(plug.plug());
        if (count == 1) {
            return layout.firstPin(plug.plug());
        }
        loose.add(new LooseEnd(
                lead,
                from,
                "the other end names a pin, this end only the plug " + name(plug),
                "it has " + count + " pins: name one"));
        return -1;
    }

    private static int unit(Site site) {
        return site instanceof Site.OnPin pin ? pin.unit() : ((Site.OnPlug) site).unit();
    }

    private void mapped(Lead lead, Site.OnPlug a, Site.OnPlug b) {
        Map<String, Conductor> own = own(lead.conductors());
        for (PinMap.Pair pair : lead.pins().or(new PinMap(List.of())).pairs()) {
            int pinA = pin(lead, a, pair.from(), true);
            int pinB = pin(lead, b, pair.to(), false);
            if (pinA >= 0 && pinB >= 0) {
                add(a.unit(), pinA, b.unit(), pinB, own(own, pair.from(), pair.to()));
            }
        }
    }

    private static Map<String, Conductor> own(List<Conductor> conductors) {
        if (conductors.isEmpty()) {
            return Map.of();
        }
        Map<String, Conductor> byPair = new HashMap<>();
        for (Conductor conductor : conductors) {
            byPair.put(conductor.pins().toString(), conductor);
        }
        return byPair;
    }

    private static Optional<Conductor> own(Map<String, Conductor> own, String from, String to) {
        return own.isEmpty() ? Optional.empty() : Optional.ofNullable(own.get(from + ">" + to));
    }

    private int pin(Lead lead, Site.OnPlug site, String name, boolean from) {
        TypeLayout layout = directory.layout(site.unit());
        int pin = layout.pin(site.plug(), name);
        if (pin < 0) {
            int count = layout.endPin(site.plug()) - layout.firstPin(site.plug());
            loose.add(new LooseEnd(lead, from, "no pin '" + name + "' on " + name(site), "it has " + count + " pins"));
        }
        return pin;
    }

    private String name(Site.OnPlug site) {
        return directory.name(site.unit()) + "-"
                + directory.type(site.unit()).plugs().get(site.plug()).name();
    }

    private void straight(Site.OnPlug a, Site.OnPlug b, Lead lead) {
        TypeLayout layoutA = directory.layout(a.unit());
        TypeLayout layoutB = directory.layout(b.unit());
        Map<String, Conductor> own = own(lead.conductors());
        for (int pinA = layoutA.firstPin(a.plug()); pinA < layoutA.endPin(a.plug()); pinA++) {
            String number = layoutA.pin(pinA).number();
            int pinB = layoutB.pin(b.plug(), number);
            if (pinB >= 0 && fitted(layoutA, pinA) && fitted(layoutB, pinB)) {
                add(a.unit(), pinA, b.unit(), pinB, own(own, number, number));
            }
        }
    }

    private static boolean fitted(TypeLayout layout, int pin) {
        return layout.role(pin) != PinRole.NONE;
    }

    private void add(int unitA, int pinA, int unitB, int pinB, Optional<Conductor> own) {
        pairings.add(new Pairing(row, unitA, pinA, unitB, pinB, own));
    }
}
