package ringout.check.installation;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.Collectors;
import ringout.check.form.Check;
import ringout.check.form.CheckInfo;
import ringout.check.form.Gaps;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.finding.Draft;
import ringout.finding.Severity;
import ringout.graph.Wire;
import ringout.graph.signal.NetRoles;
import ringout.model.Lead;
import ringout.model.PinRole;
import ringout.model.PointFlag;
import ringout.model.RoutePoint;
import ringout.model.Zone;

/**
 * A lead that lies on carbon or metal without a sleeve or grommet.
 *
 * <p>Why it matters: carbon is a conductor, and its cut edges are sharp. An insulation worn through puts the supply on the frame; on
 * a battery lead nothing limits the current.
 *
 * <p>Condition: a point of the way is marked carbon and not guarded, or the zone of the lead is conductive, and the lead
 * has no sleeve. Without a zone in its row a lead counts as running in the zones of the units it joins. S2 for a lead on a
 * pack with no fuse before it, else S3.
 *
 * <p>Does not see: a bare 0V lug on the frame, what the sleeve is worth, whether the lead really touches.
 *
 * <p>Reference: common practice, no source.
 */
@CheckInfo(
        code = "M28",
        name = "bare-on-conductive-frame",
        severity = Severity.S3,
        since = "0.3",
        needs = {"sleeve of each lead", "whether each zone is conductive"})
public final class BareOnConductiveFrame implements Check {
    private static final long PACKS = NetRoles.bits(PinRole.PACK_PLUS);

    @Override
    public void look(Situation at, Outcomes out) {
        LeadZones zones = new LeadZones(at);
        Gaps gaps = new Gaps();
        List<Lead> leads = at.aircraft().leads();
        for (int row = 0; row < leads.size(); row++) {
            List<RoutePoint> carbon = carbon(leads.get(row));
            if (!carbon.isEmpty()) {
                points(at, out, gaps, row, carbon);
            } else if (!zones.none()) {
                zones(at, out, gaps, row, zones);
            }
        }
        gaps.tell(out, datum -> switch (datum) {
            case "sleeve", "guard on carbon" -> new Gaps.Way("look at the lead", 1);
            default -> LeadZones.way(datum);
        });
    }

    private static List<RoutePoint> carbon(Lead lead) {
        if (lead.route().isEmpty()) {
            return List.of();
        }
        return lead.route().stream()
                .filter(point -> point.flags().contains(PointFlag.CARBON))
                .toList();
    }

    private static void points(Situation at, Outcomes out, Gaps gaps, int row, List<RoutePoint> carbon) {
        Lead lead = at.aircraft().leads().get(row);
        if (Insulated.sleeved(lead)) {
            out.looked();
        } else if (carbon.stream().anyMatch(point -> point.guarded().is(false))) {
            out.finding(draft(at, row, "over carbon on its way"));
        } else if (carbon.stream().anyMatch(point -> point.guarded().isMissing())) {
            gaps.add("guard on carbon", lead.id());
        } else {
            out.looked();
        }
    }

    private static void zones(Situation at, Outcomes out, Gaps gaps, int row, LeadZones zones) {
        Lead lead = at.aircraft().leads().get(row);
        if (Insulated.sleeved(lead) || lead.sleeve().isNotApplicable()) {
            out.looked();
            return;
        }
        Gaps open = new Gaps();
        List<Zone> conductive = new ArrayList<>();
        for (Zone zone : zones.of(row, open)) {
            if (zone.conductive().is(true)) {
                conductive.add(zone);
            } else if (zone.conductive().isMissing()) {
                open.add("material", zone.name());
            }
        }
        if (conductive.isEmpty()) {
            gaps.addAll(open);
            if (open.isEmpty()) {
                out.looked();
            }
        } else if (lead.sleeve().isMissing()) {
            gaps.add("sleeve", lead.id());
        } else {
            out.finding(draft(
                    at,
                    row,
                    "in "
                            + conductive.stream()
                                    .map(BareOnConductiveFrame::words)
                                    .collect(Collectors.joining(", "))));
        }
    }

    private static String words(Zone zone) {
        return zone.name()
                + zone.material().known().map(what -> " (" + what + ")").orElse("");
    }

    private static Draft draft(Situation at, int row, String where) {
        Lead lead = at.aircraft().leads().get(row);
        List<Wire> unfused = unfused(at, row);
        boolean pack = !unfused.isEmpty();
        TreeSet<String> packs = new TreeSet<>();
        unfused.forEach(wire -> NetRoles.of(at.whole())
                .pins(net(at, wire), PACKS)
                .forEach(pin -> packs.add(at.directory().name(at.wiring().unitOf(pin)))));
        String supply = pack ? "unfused lead of " + String.join(", ", packs) : "lead";
        return Draft.of(
                        pack ? Severity.S2 : Severity.S3,
                        supply + " bare on a conductive frame: " + lead.id() + " " + where)
                .about(lead.id())
                .at(lead)
                .sum(lead.id() + " " + where + ", sleeve " + lead.sleeve().or("none")
                        + (pack ? "; no fuse between it and " + String.join(", ", packs) : ""))
                .why(
                        pack
                                ? "worn through, the whole pack feeds into the frame and nothing stops it"
                                : "carbon conducts and its edges cut: worn through, the frame is on the supply or a"
                                        + " signal on the frame")
                .meter("packs off: main + to the frame, and main - to the frame, must read over 1 Mohm")
                .fix("put a sleeve over " + lead.id() + " or grommets where it touches");
    }

    /** Net of the copper of a conductor; a fuse at one of its ends is no part of it. */
    private static int net(Situation at, Wire wire) {
        return at.whole().nets().of(at.wiring().graph().from(at.wiring().conductorEdge(wire)));
    }

    /** Its conductors that are one point with a plus of a pack: nothing lies between. */
    private static List<Wire> unfused(Situation at, int row) {
        NetRoles roles = NetRoles.of(at.whole());
        return RowWires.of(at, row).stream()
                .filter(wire -> roles.any(net(at, wire), PACKS))
                .toList();
    }
}
