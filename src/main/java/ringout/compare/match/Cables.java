package ringout.compare.match;

import java.util.ArrayList;
import java.util.HashMap;
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
        List<List<Integer>> rows = new ArrayList<>(leads.size());
        Map<String, List<Integer>> single = new HashMap<>();
        for (int row = 0; row < leads.size(); row++) {
            boolean alone = !single(wiring, row) || leads.get(row).id().isBlank();
            List<Integer> known = alone ? null : single.get(key(wiring, row));
            if (known != null) {
                known.add(row);
            } else {
                List<Integer> one = new ArrayList<>(1);
                one.add(row);
                rows.add(one);
                if (!alone) {
                    single.put(key(wiring, row), one);
                }
            }
        }
        List<Cable> cables = new ArrayList<>(rows.size());
        for (List<Integer> of : rows) {
            List<Wire> all = new ArrayList<>();
            of.forEach(row -> all.addAll(wires.get(row)));
            cables.add(new Cable(
                    leads.get(of.get(0)).id(), of.stream().map(leads::get).toList(), all));
        }
        return cables;
    }

    private static boolean single(Wiring wiring, int row) {
        return wiring.from(row) instanceof Site.OnPin || wiring.to(row) instanceof Site.OnPin;
    }

    /** Rows for single wires of one name meet; a row for the whole lead stands alone, so that one written twice stays two. */
    private static String key(Wiring wiring, int row) {
        String a = plug(wiring.from(row));
        String b = plug(wiring.to(row));
        return fold(wiring.aircraft().leads().get(row).id()) + "\n"
                + (a.compareTo(b) <= 0 ? a + "\n" + b : b + "\n" + a);
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
