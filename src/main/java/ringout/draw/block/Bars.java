package ringout.draw.block;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import ringout.draw.scene.WireKind;

/**
 * Leads of a bus between units of one row lie along one height just above it, so that the bus is seen as a bar; those that would
 * lie on each other take the next height.
 */
final class Bars {
    private final Map<Integer, Integer> track = new HashMap<>();
    private final List<Integer> tracks = new ArrayList<>();

    Bars(Strips strips) {
        for (int r = 0; r < strips.rows.size(); r++) {
            tracks.add(fill(strips, r));
        }
    }

    private int fill(Strips strips, int r) {
        List<Integer> along = new ArrayList<>();
        for (int lead = 0; lead < strips.leads.size(); lead++) {
            boolean here = strips.row(strips.from[lead]) == r && strips.row(strips.to[lead]) == r;
            if (here && strips.leads.get(lead).kind() == WireKind.BUS) {
                along.add(lead);
            }
        }
        along.sort(Comparator.comparingInt((Integer lead) -> left(strips, lead)).thenComparingInt(lead -> lead));
        List<Integer> ends = new ArrayList<>();
        for (int lead : along) {
            int t = 0;
            while (t < ends.size() && ends.get(t) >= left(strips, lead)) {
                t++;
            }
            int right = Math.max(strips.from[lead].x, strips.to[lead].x);
            if (t == ends.size()) {
                ends.add(right);
            } else {
                ends.set(t, right);
            }
            track.put(lead, t);
        }
        return ends.size();
    }

    private static int left(Strips strips, int lead) {
        return Math.min(strips.from[lead].x, strips.to[lead].x);
    }

    /** How many heights the bars of a row take. */
    int tracks(int row) {
        return tracks.get(row);
    }

    /** The height of a lead, from 0 at the row, if it lies in a bar. */
    OptionalInt track(int lead) {
        return track.containsKey(lead) ? OptionalInt.of(track.get(lead)) : OptionalInt.empty();
    }
}
