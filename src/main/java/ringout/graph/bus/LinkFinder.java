package ringout.graph.bus;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import ringout.graph.Circuit;
import ringout.graph.Wire;

/** Groups the conductors between hubs into links, one a lead and pair of hubs. */
final class LinkFinder {
    private record Key(int run, int low, int high) {
        @Override
        public boolean equals(Object other) {
            return this == other
                    || (other instanceof Key that && run == that.run && low == that.low && high == that.high);
        }

        @Override
        public int hashCode() {
            return 31 * (31 * run + low) + high;
        }
    }

    /** Conductors by the leg they leave the from hub at, and the leg they arrive at. */
    private static final class Draft {
        private final int from;
        private final int to;
        private final Wire[] byLeg = new Wire[2];
        private final int[] arrives = {-1, -1};
        private boolean split;

        private Draft(int from, int to) {
            this.from = from;
            this.to = to;
        }

        private void put(int leg, Wire wire, int arrival) {
            if (byLeg[leg] == null) {
                byLeg[leg] = wire;
                arrives[leg] = arrival;
            }
        }

        private boolean both() {
            return byLeg[0] != null && byLeg[1] != null && arrives[0] != arrives[1];
        }

        private int first() {
            return byLeg[0] != null ? 0 : 1;
        }

        /** Takes in the other leg from another lead between the same hubs; whether that made a pair. */
        private boolean completedBy(Draft half) {
            int leg = half.first();
            boolean along = half.from == from;
            int near = along ? leg : half.arrives[leg];
            int far = along ? half.arrives[leg] : leg;
            if (byLeg[near] != null || arrives[1 - near] == far) {
                return false;
            }
            put(near, half.byLeg[leg], far);
            split = true;
            return true;
        }
    }

    private final HubFinder hubs;
    private final Runs runs;
    private final Map<Key, Draft> drafts = new HashMap<>();
    private final List<Draft> inOrder = new ArrayList<>();

    LinkFinder(Circuit circuit, HubFinder hubs, Runs runs) {
        this.hubs = hubs;
        this.runs = runs;
        for (Wire wire : circuit.wiring().wires()) {
            if (hubs.hubOf(wire.fromPin()) >= 0 && hubs.hubOf(wire.toPin()) >= 0 && circuit.mated(wire)) {
                add(wire);
            }
        }
    }

    private void add(Wire wire) {
        int a = hubs.hubOf(wire.fromPin());
        int b = hubs.hubOf(wire.toPin());
        Key key = new Key(runs.of(wire), Math.min(a, b), Math.max(a, b));
        Draft draft = drafts.get(key);
        if (draft == null) {
            draft = new Draft(a, b);
            drafts.put(key, draft);
            inOrder.add(draft);
        }
        boolean along = draft.from == a;
        int near = along ? wire.fromPin() : wire.toPin();
        int far = along ? wire.toPin() : wire.fromPin();
        draft.put(hubs.legOfPin(near), wire, hubs.legOfPin(far));
    }

    List<BusLink> links() {
        List<Draft> whole = new ArrayList<>(inOrder.size());
        Map<Long, Draft> halves = new HashMap<>();
        for (Draft draft : inOrder) {
            boolean half = !draft.both();
            Draft waiting = half ? halves.putIfAbsent(ends(draft), draft) : null;
            if (waiting == null || waiting.split || !waiting.completedBy(draft)) {
                whole.add(draft);
            }
        }
        List<BusLink> links = new ArrayList<>(whole.size());
        whole.forEach(draft -> links.add(link(draft, links.size())));
        return links;
    }

    private static long ends(Draft draft) {
        return (long) Math.min(draft.from, draft.to) << 32 | Math.max(draft.from, draft.to);
    }

    private static BusLink.Legs legs(Draft draft) {
        if (draft.both()) {
            return draft.split ? BusLink.Legs.SPLIT : BusLink.Legs.BOTH;
        }
        return draft.first() == 0 ? BusLink.Legs.HIGH_ONLY : BusLink.Legs.LOW_ONLY;
    }

    /** The conductors of a link in order, and whether it crosses. */
    private static BusLink link(Draft draft, int index) {
        int first = draft.first();
        Wire wire = draft.byLeg[first];
        List<Wire> wires = draft.both() ? List.of(wire, draft.byLeg[1 - first]) : List.of(wire);
        return new BusLink(index, draft.from, draft.to, legs(draft), draft.arrives[first] != first, wires);
    }
}
