package ringout.graph.bus;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import ringout.graph.Circuit;
import ringout.graph.Wire;
import ringout.model.Lead;

/** Groups the conductors between hubs into links, one a lead and pair of hubs. */
final class LinkFinder {
    private record Key(String lead, int low, int high) {}

    /** Conductors by the leg they leave the from hub at, and the leg they arrive at. */
    private static final class Draft {
        private final Lead lead;
        private final int from;
        private final int to;
        private final Wire[] byLeg = new Wire[2];
        private final int[] arrives = {-1, -1};

        private Draft(Lead lead, int from, int to) {
            this.lead = lead;
            this.from = from;
            this.to = to;
        }
    }

    private final Circuit circuit;
    private final HubFinder hubs;
    private final Map<Key, Draft> drafts = new HashMap<>();
    private final List<Draft> inOrder = new ArrayList<>();

    LinkFinder(Circuit circuit, HubFinder hubs) {
        this.circuit = circuit;
        this.hubs = hubs;
        for (Wire wire : circuit.wiring().wires()) {
            if (hubs.hubOfPin(wire.fromPin()) >= 0 && hubs.hubOfPin(wire.toPin()) >= 0 && circuit.mated(wire)) {
                add(wire);
            }
        }
    }

    private void add(Wire wire) {
        int a = hubs.hubOfPin(wire.fromPin());
        int b = hubs.hubOfPin(wire.toPin());
        String id = wire.lead().id().isEmpty()
                ? "#" + wire.leadIndex()
                : wire.lead().id();
        Key key = new Key(id, Math.min(a, b), Math.max(a, b));
        Draft draft = drafts.get(key);
        if (draft == null) {
            draft = new Draft(wire.lead(), a, b);
            drafts.put(key, draft);
            inOrder.add(draft);
        }
        boolean along = draft.from == a;
        int near = along ? wire.fromPin() : wire.toPin();
        int far = along ? wire.toPin() : wire.fromPin();
        int leg = hubs.legOfPin(near);
        if (draft.byLeg[leg] == null) {
            draft.byLeg[leg] = wire;
            draft.arrives[leg] = hubs.legOfPin(far);
        }
    }

    List<BusLink> links() {
        List<BusLink> links = new ArrayList<>(inOrder.size());
        for (Draft draft : inOrder) {
            links.add(link(draft, links.size()));
        }
        return links;
    }

    private static BusLink link(Draft draft, int index) {
        boolean high = draft.byLeg[0] != null;
        boolean low = draft.byLeg[1] != null && (!high || draft.arrives[0] != draft.arrives[1]);
        int first = high ? 0 : 1;
        boolean crossed = draft.arrives[first] != first;
        BusLink.Legs legs = high && low ? BusLink.Legs.BOTH : high ? BusLink.Legs.HIGH_ONLY : BusLink.Legs.LOW_ONLY;
        return new BusLink(index, draft.lead, draft.from, draft.to, legs, crossed, draft.byLeg[first]);
    }

    /** The circuit looked at. */
    Circuit circuit() {
        return circuit;
    }
}
