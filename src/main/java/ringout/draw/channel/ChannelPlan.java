package ringout.draw.channel;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import ringout.draw.channel.TurnOrder.Mates;

/**
 * Where each net of a channel turns. Where no order keeps two nets off each other (the crossed pair: each has its left
 * end where the other has its right end), one of them turns a second time, on a height that no terminal uses.
 */
public final class ChannelPlan {
    /**
     * A vertical piece.
     *
     * @param track its track, from 0 at the left
     * @param from the height it is entered at
     * @param to the height it is left at
     */
    public record Turn(int track, int from, int to) {}

    private final List<List<Turn>> turns;
    private final int tracks;
    private final boolean clean;

    private ChannelPlan(List<List<Turn>> turns, int tracks, boolean clean) {
        this.turns = turns;
        this.tracks = tracks;
        this.clean = clean;
    }

    /** {@return the plan for the nets of one channel} */
    public static ChannelPlan of(List<Net> nets) {
        Pieces pieces = new Pieces(nets);
        TurnOrder order = pieces.order();
        int most = 2 * nets.size();
        for (int i = 0; i < most && order.firstOverlap().length > 0; i++) {
            if (!pieces.splitOneOf(order.firstOverlap())) {
                break;
            }
            order = pieces.order();
        }
        int[] track = Tracks.of(pieces.nets, order);
        int tracks = 0;
        for (int t : track) {
            tracks = Math.max(tracks, t + 1);
        }
        return new ChannelPlan(pieces.turns(track), tracks, order.firstOverlap().length == 0);
    }

    /** {@return the turns of a net, by its number, from its first terminal to its second; none if it runs straight} */
    public List<Turn> turns(int net) {
        return turns.get(net);
    }

    /** {@return the number of tracks} */
    public int tracks() {
        return tracks;
    }

    /** {@return whether no two nets lie on each other} */
    public boolean clean() {
        return clean;
    }

    /** The nets in pieces of one turn each. */
    private static final class Pieces {
        private final List<Net> whole;
        private final List<Net> nets = new ArrayList<>();
        private final List<Integer> owner = new ArrayList<>();
        private final List<Mates> mates = new ArrayList<>();
        private final Set<Integer> usedHeights = new HashSet<>();

        Pieces(List<Net> whole) {
            this.whole = whole;
            for (int i = 0; i < whole.size(); i++) {
                usedHeights.add(whole.get(i).a());
                usedHeights.add(whole.get(i).b());
                if (!whole.get(i).straight()) {
                    nets.add(whole.get(i));
                    owner.add(i);
                }
            }
        }

        TurnOrder order() {
            return TurnOrder.of(nets, mates);
        }

        private boolean isMate(int piece) {
            return mates.stream().anyMatch(m -> m.first() == piece || m.second() == piece);
        }

        /** Splits the one of two nets, at the height, that leaves the best order. */
        boolean splitOneOf(int[] pair) {
            int bestPiece = -1;
            int bestHeight = 0;
            int bestCost = Integer.MAX_VALUE;
            for (int piece : pair) {
                if (isMate(piece)) {
                    continue;
                }
                for (int height : heightsNear(nets.get(piece))) {
                    Pieces trial = copy();
                    trial.split(piece, height);
                    TurnOrder order = trial.order();
                    int cost = 1000 * order.overlaps() + order.crossings();
                    if (cost < bestCost) {
                        bestCost = cost;
                        bestPiece = piece;
                        bestHeight = height;
                    }
                }
            }
            if (bestPiece >= 0) {
                split(bestPiece, bestHeight);
            }
            return bestPiece >= 0;
        }

        /** Free heights, those between the ends first. */
        private List<Integer> heightsNear(Net net) {
            List<Integer> free = new ArrayList<>();
            for (int h = net.top() + 1; h < net.bottom(); h++) {
                addIfFree(free, h);
            }
            for (int d = 1; d <= 6 && free.size() < 3; d++) {
                addIfFree(free, net.bottom() + d);
                addIfFree(free, net.top() - d);
            }
            return free;
        }

        private void addIfFree(List<Integer> free, int height) {
            if (!usedHeights.contains(height)) {
                free.add(height);
            }
        }

        private Pieces copy() {
            Pieces copy = new Pieces(List.of());
            copy.nets.addAll(nets);
            copy.owner.addAll(owner);
            copy.mates.addAll(mates);
            return copy;
        }

        /** The piece keeps the end that is reached first from the left; a new piece takes the other. */
        private void split(int piece, int height) {
            Net net = nets.get(piece);
            boolean swap = !net.leftA() && net.leftB();
            boolean firstLeft = swap ? net.leftB() : net.leftA();
            boolean lastLeft = swap ? net.leftA() : net.leftB();
            int first = swap ? net.b() : net.a();
            int last = swap ? net.a() : net.b();
            nets.set(piece, new Net(net.link(), firstLeft, first, false, height));
            nets.add(new Net(net.link(), true, height, lastLeft, last));
            owner.add(owner.get(piece));
            mates.add(new Mates(piece, nets.size() - 1));
            usedHeights.add(height);
        }

        List<List<Turn>> turns(int[] track) {
            List<List<Turn>> turns = new ArrayList<>();
            for (int i = 0; i < whole.size(); i++) {
                turns.add(turnsOf(i, track));
            }
            return turns;
        }

        private List<Turn> turnsOf(int net, int[] track) {
            int first = owner.indexOf(net);
            int second = owner.lastIndexOf(net);
            if (first < 0) {
                return List.of();
            }
            Net a = nets.get(first);
            if (first == second) {
                return List.of(new Turn(track[first], a.a(), a.b()));
            }
            Net b = nets.get(second);
            if (a.a() == whole.get(net).a() && a.leftA() == whole.get(net).leftA()) {
                return List.of(new Turn(track[first], a.a(), a.b()), new Turn(track[second], b.a(), b.b()));
            }
            return List.of(new Turn(track[second], b.b(), b.a()), new Turn(track[first], a.b(), a.a()));
        }
    }
}
