package ringout.draw.channel;

import java.util.List;

/** Tracks for an order: as few as the order allows, and brackets as near to their own edge as they can. */
final class Tracks {
    private Tracks() {}

    /** {@return the track of each net, from 0 at the left} */
    static int[] of(List<Net> nets, TurnOrder turnOrder) {
        int[] track = turnOrder.tracks();
        int[] order = turnOrder.order();
        int last = 0;
        for (int t : track) {
            last = Math.max(last, t);
        }
        for (int i = order.length - 1; i >= 0; i--) {
            Net net = nets.get(order[i]);
            if (!net.leftA() && !net.leftB()) {
                track[order[i]] = rightmost(nets, order, track, i, last);
            }
        }
        return track;
    }

    private static int rightmost(List<Net> nets, int[] order, int[] track, int place, int last) {
        int most = last;
        for (int j = place + 1; j < order.length; j++) {
            if (nets.get(order[place]).touches(nets.get(order[j]))) {
                most = Math.min(most, track[order[j]] - 1);
            }
        }
        return most;
    }
}
