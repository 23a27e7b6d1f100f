package ringout.check.misplug;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ringout.graph.Site;
import ringout.graph.Wiring;
import ringout.model.Datum;
import ringout.model.Lead;
import ringout.model.Plug;

/**
 * A plug at the end of one lead or several, in its socket on a unit. It is what a hand takes hold of: all its conductors go
 * together.
 *
 * @param unit number of the unit
 * @param plug number of the socket in its type
 * @param ends the ends of leads in it
 */
public record PlugBody(int unit, int plug, List<End> ends) {
    /**
     * One end of a row of the list.
     *
     * @param row number of the row
     * @param from whether it is the from end
     * @param site what it points to
     * @param far what the other end points to
     */
    public record End(int row, boolean from, Site site, Site far) {
        /** The row. */
        Lead lead(Wiring wiring) {
            return wiring.aircraft().leads().get(row);
        }

        /** Key code of its plug. */
        Datum<String> key(Wiring wiring) {
            return from ? lead(wiring).fromKey() : lead(wiring).toKey();
        }
    }

    /** Keeps its own copy. */
    public PlugBody {
        ends = List.copyOf(ends);
    }

    /** All plugs with a lead, in the order of the rows. In a clamp each lead is a body of its own. */
    static List<PlugBody> all(Wiring wiring) {
        Map<List<Integer>, List<End>> bySocket = new LinkedHashMap<>();
        int rows = wiring.aircraft().leads().size();
        for (int row = 0; row < rows; row++) {
            Site from = wiring.from(row);
            Site to = wiring.to(row);
            put(wiring, bySocket, new End(row, true, from, to));
            put(wiring, bySocket, new End(row, false, to, from));
        }
        List<PlugBody> bodies = new ArrayList<>();
        bySocket.forEach((at, ends) -> bodies.add(new PlugBody(at.get(0), at.get(1), ends)));
        return bodies;
    }

    private static void put(Wiring wiring, Map<List<Integer>, List<End>> bySocket, End end) {
        int unit = unit(end.site());
        if (unit < 0
                || unit(end.far()) < 0
                || wiring.directory().isJoint(unit)
                || !wiring.directory().typeKnown(unit)) {
            return;
        }
        int plug = plug(end.site());
        boolean clamp = wiring.directory().type(unit).plugs().get(plug).pins().size() == 1;
        bySocket.computeIfAbsent(List.of(unit, plug, clamp ? end.row() : -1), key -> new ArrayList<>())
                .add(end);
    }

    /** The unit an end points to, or -1. */
    static int unit(Site site) {
        if (site instanceof Site.OnPlug on) {
            return on.unit();
        }
        return site instanceof Site.OnPin on ? on.unit() : -1;
    }

    /** The plug an end points to, or -1. */
    static int plug(Site site) {
        if (site instanceof Site.OnPlug on) {
            return on.plug();
        }
        return site instanceof Site.OnPin on ? on.plug() : -1;
    }

    /** The socket it is in. */
    Plug socket(Wiring wiring) {
        return wiring.directory().type(unit).plugs().get(plug);
    }

    /** UNIT-PLUG. */
    public String name(Wiring wiring) {
        return wiring.plugName(unit, plug);
    }

    /** Key code of the lead's plug, where a row tells it. */
    Optional<Datum<String>> leadKey(Wiring wiring) {
        return ends.stream()
                .map(end -> end.key(wiring))
                .filter(key -> !(key instanceof Datum.NotAsked))
                .findFirst();
    }
}
