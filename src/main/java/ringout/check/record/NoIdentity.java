package ringout.check.record;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import ringout.check.form.Check;
import ringout.check.form.CheckInfo;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.finding.Draft;
import ringout.finding.Place;
import ringout.finding.Severity;
import ringout.graph.Site;
import ringout.graph.Wire;
import ringout.graph.Wiring;
import ringout.model.Datum;
import ringout.model.Lead;

/**
 * A lead or conductor without identity, or two with the same.
 *
 * <p>Why it matters: labels, findings, waivers and the mechanic's finger point by identity; a lead without one cannot be
 * talked about, and with two of a name the wrong one is changed.
 *
 * <p>Condition: a row has no id, or two rows of one id do not run between the same two plugs; a conductor has an id that another
 * conductor or a lead has. Rows for single conductors of one lead share its id.
 *
 * <p>Does not see: what is printed on the label at the lead (M10).
 *
 * <p>Reference: common practice, no source.
 */
@CheckInfo(code = "X02", name = "no-or-double-identity", severity = Severity.S4, since = "0.1")
public final class NoIdentity implements Check {
    @Override
    public void look(Situation at, Outcomes out) {
        List<Lead> leads = at.aircraft().leads();
        if (leads.isEmpty()) {
            return;
        }
        out.looked();
        List<Lead> nameless = new ArrayList<>();
        Map<String, List<Integer>> byId = new LinkedHashMap<>();
        for (int i = 0; i < leads.size(); i++) {
            String id = fold(leads.get(i).id());
            if (id.isEmpty()) {
                nameless.add(leads.get(i));
            } else {
                byId.computeIfAbsent(id, key -> new ArrayList<>(1)).add(i);
            }
        }
        if (!nameless.isEmpty()) {
            out.finding(nameless(nameless));
        }
        byId.values().stream()
                .filter(rows -> rows.size() > 1 && !oneLead(at.wiring(), rows))
                .forEach(rows -> out.finding(twice(at.wiring(), rows)));
        conductors(at, out, byId);
    }

    private static String fold(String id) {
        return id.strip().toUpperCase(Locale.ROOT);
    }

    /** Whether rows of one id are the conductors of one lead: each names a pin at one end at least, all between the same plugs. */
    private static boolean oneLead(Wiring wiring, List<Integer> rows) {
        return rows.stream().map(row -> pair(wiring, row)).distinct().count() == 1
                && rows.stream()
                        .allMatch(
                                row -> wiring.from(row) instanceof Site.OnPin || wiring.to(row) instanceof Site.OnPin);
    }

    private static String pair(Wiring wiring, int row) {
        String from = plug(wiring, wiring.from(row));
        String to = plug(wiring, wiring.to(row));
        return from.compareTo(to) < 0 ? from + " " + to : to + " " + from;
    }

    private static String plug(Wiring wiring, Site site) {
        if (site instanceof Site.OnPin on) {
            return wiring.plugName(on.unit(), on.plug());
        }
        return site instanceof Site.OnPlug on ? wiring.plugName(on.unit(), on.plug()) : "?";
    }

    private static String row(Lead lead) {
        return lead.from() + " to " + lead.to();
    }

    private static Draft nameless(List<Lead> leads) {
        List<String> rows = leads.stream().map(NoIdentity::row).toList();
        Draft draft = Draft.of(
                        Severity.S4,
                        "no identity: " + (rows.size() == 1 ? "the lead " : rows.size() + " leads: ")
                                + String.join(", ", rows))
                .about(rows)
                .sum(rows.size() == 1 ? "1 row without an id" : rows.size() + " rows without an id")
                .why("nobody can point at it, and its findings cannot be waived or compared")
                .fix("give each an id and label it at both ends");
        leads.forEach(
                lead -> draft.at(new Place(lead.at(), row(lead), row(lead))).cause("id of " + row(lead)));
        return draft;
    }

    private static Draft twice(Wiring wiring, List<Integer> rows) {
        List<Lead> leads = rows.stream().map(wiring.aircraft().leads()::get).toList();
        String id = leads.get(0).id();
        boolean same = rows.stream().map(row -> pair(wiring, row)).distinct().count() == 1;
        Draft draft = Draft.of(
                        Severity.S4,
                        "double identity: " + leads.size() + " leads are called " + id + ": "
                                + leads.stream().map(NoIdentity::row).collect(Collectors.joining(", ")))
                .about(id)
                .sum(leads.size() + " rows with id " + id + " between "
                        + (same ? "the same two plugs, not told pin by pin" : "different plugs"))
                .why("the wrong one is looked at, changed or signed")
                .fix(same ? "take one row called " + id + " out, or rename it" : "rename one of the leads called " + id)
                .cause("id " + id);
        leads.forEach(lead -> draft.at(new Place(lead.at(), lead.id(), lead.id() + ": " + row(lead))));
        return draft;
    }

    /** Conductors with an id of their own: no other conductor and no lead may have it. */
    private static void conductors(Situation at, Outcomes out, Map<String, List<Integer>> leads) {
        Map<String, List<Wire>> byId = new LinkedHashMap<>();
        for (Wire wire : at.wiring().wires()) {
            if (wire.own().isPresent() && wire.own().get().id() instanceof Datum.Known<String> known) {
                byId.computeIfAbsent(fold(known.value()), key -> new ArrayList<>())
                        .add(wire);
            }
        }
        byId.forEach((id, wires) -> {
            List<Lead> others = leads.getOrDefault(id, List.of()).stream()
                    .filter(row -> wires.stream().anyMatch(wire -> wire.leadIndex() != row))
                    .map(at.aircraft().leads()::get)
                    .toList();
            if (wires.size() > 1 || !others.isEmpty()) {
                out.finding(conductor(wires, others));
            }
        });
    }

    private static Draft conductor(List<Wire> wires, List<Lead> leads) {
        String id = wires.get(0).own().map(own -> own.id().or("")).orElse("");
        String of = wires.stream().map(wire -> wire.lead().id()).distinct().collect(Collectors.joining(", "));
        String count = wires.size() == 1 ? "a conductor" : wires.size() + " conductors";
        String also = leads.isEmpty() ? "" : " and a lead";
        Draft draft = Draft.of(Severity.S4, "double identity: " + count + " of " + of + also + " are called " + id)
                .about(id)
                .sum(count + also + " with id " + id)
                .why("the wrong one is looked at, changed or signed")
                .fix("rename one conductor called " + id)
                .cause("id " + id);
        wires.forEach(wire -> draft.seen(wire.lead()));
        leads.forEach((Lead lead) -> draft.seen(lead));
        return draft;
    }
}
