package ringout.compare.match;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import ringout.graph.Site;
import ringout.graph.Wire;
import ringout.graph.Wiring;
import ringout.model.Lead;

/** Gathers the rows of a list into leads: rows of one name between the same two plugs are one lead. */
final class Cables {
    private Cables() {}

    static List<Cable> of(Wiring wiring) {
        List<Lead> leads = wiring.aircraft().leads();
        List<List<Wire>> wires = new ArrayList<>();
        leads.forEach(lead -> wires.add(new ArrayList<>(4)));
        wiring.wires().forEach(wire -> wires.get(wire.leadIndex()).add(wire));
        Map<String, List<Integer>> rows = new LinkedHashMap<>(2 * leads.size());
        for (int row = 0; row < leads.size(); row++) {
            rows.computeIfAbsent(key(wiring, leads.get(row), row), key -> new ArrayList<>(1))
                    .add(row);
        }
        List<Cable> cables = new ArrayList<>(rows.size());
        for (List<Integer> of : rows.values()) {
            List<Wire> all = new ArrayList<>();
            of.forEach(row -> all.addAll(wires.get(row)));
            cables.add(new Cable(
                    leads.get(of.get(0)).id(), of.stream().map(leads::get).toList(), all));
        }
        return cables;
    }

    /** Rows for single wires of one name meet; a row for the whole lead stands alone, so that one written twice stays two. */
    private static String key(Wiring wiring, Lead lead, int row) {
        Site from = wiring.from(row);
        Site to = wiring.to(row);
        boolean single = from instanceof Site.OnPin || to instanceof Site.OnPin;
        String id = fold(lead.id());
        if (!single || id.isEmpty()) {
            return "row " + row;
        }
        String a = plug(from);
        String b = plug(to);
        return id + "\n" + (a.compareTo(b) <= 0 ? a + "\n" + b : b + "\n" + a);
    }

    private static String plug(Site site) {
        if (site instanceof Site.OnPin pin) {
            return pin.unit() + " " + pin.plug();
        }
        return site instanceof Site.OnPlug plug ? plug.unit() + " " + plug.plug() : "?";
    }

    static String fold(String id) {
        return id.strip().toUpperCase(Locale.ROOT);
    }
}
