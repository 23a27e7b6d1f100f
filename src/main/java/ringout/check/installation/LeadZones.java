package ringout.check.installation;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import ringout.check.form.Gaps;
import ringout.check.form.Situation;
import ringout.graph.Site;
import ringout.model.Datum;
import ringout.model.Lead;
import ringout.model.Zone;

/**
 * The zones leads run in: the one named in the row, or else those of the units and joints at both ends.
 */
final class LeadZones {
    private final Situation at;
    private final Map<String, Zone> byName = new TreeMap<>(String.CASE_INSENSITIVE_ORDER);

    LeadZones(Situation at) {
        this.at = at;
        at.aircraft().airframe().zones().forEach(zone -> byName.putIfAbsent(zone.name(), zone));
    }

    /** Whether nobody has listed a zone. */
    boolean none() {
        return byName.isEmpty();
    }

    /** The listed zones of a lead, by the number of its row; what is missing is noted. */
    List<Zone> of(int row, Gaps gaps) {
        Lead lead = at.aircraft().leads().get(row);
        Set<String> names = new LinkedHashSet<>();
        if (lead.zone().isKnown()) {
            names.add(lead.zone().or(""));
        } else if (lead.zone() instanceof Datum.NotAsked) {
            names.addAll(ofEnd(at.wiring().from(row)));
            names.addAll(ofEnd(at.wiring().to(row)));
        }
        if (names.isEmpty() && !lead.zone().isNotApplicable()) {
            gaps.add("zone", lead.id());
        }
        List<Zone> zones = new ArrayList<>();
        for (String name : names) {
            Zone zone = byName.get(name);
            if (zone == null) {
                gaps.add("row in the table of zones", name);
            } else {
                zones.add(zone);
            }
        }
        return zones;
    }

    private List<String> ofEnd(Site site) {
        int unit = site instanceof Site.OnPlug on ? on.unit() : site instanceof Site.OnPin pin ? pin.unit() : -1;
        if (unit < 0) {
            return List.of();
        }
        Datum<String> zone = at.directory().isJoint(unit)
                ? at.directory().joint(unit).zone()
                : at.directory().unit(unit).zone();
        return zone.known().map(List::of).orElse(List.of());
    }

    /** The zone of a unit, if it is listed; what is missing is noted. */
    List<Zone> ofUnit(int unit, Gaps gaps) {
        Datum<String> name = at.directory().unit(unit).zone();
        if (name.isMissing()) {
            gaps.add("zone", at.directory().name(unit));
        }
        if (!name.isKnown()) {
            return List.of();
        }
        Zone zone = byName.get(name.or(""));
        if (zone == null) {
            gaps.add("row in the table of zones", name.or(""));
            return List.of();
        }
        return List.of(zone);
    }

    /** How to get what is missing of zones. */
    static Gaps.Way way(String datum) {
        return switch (datum) {
            case "zone" -> new Gaps.Way("look where it lies", 1);
            case "row in the table of zones" -> new Gaps.Way("add the zone to the table", 2);
            default -> new Gaps.Way("look there", 2);
        };
    }
}
