package ringout.synthetic;

import java.util.ArrayList;
import java.util.List;

/** The chain of the controller: nodes on one or both sides, a terminator at each end, addresses all different. */
final class BusPart {
    private static final int MOST_ADDRESSES = 125;

    private final Zone zone;
    private final List<Integer> addresses = new ArrayList<>();
    private final List<String> members = new ArrayList<>();
    private final int rate;

    private BusPart(Zone zone) {
        this.zone = zone;
        this.rate = zone.dice().pick(List.of(250, 500, 1000));
        for (int address = 1; address <= MOST_ADDRESSES; address++) {
            addresses.add(address);
        }
    }

    /** A setting of a bus port. */
    static Row port(String port, int address, int rate, String terminator) {
        return Row.of("port", port, "address", address, "rateKbit", rate, "terminator", terminator);
    }

    /** Declares a bus and what its members send. */
    static void declare(Zone zone, String name, int rate, List<String> members) {
        for (String member : members) {
            if (!member.endsWith(":TCAN")) {
                String sender = member.substring(0, member.indexOf(':'));
                zone.sink()
                        .add(
                                "messages",
                                Row.of("name", "state of " + sender, "bus", name, "sender", sender, "bytes", 8)
                                        .with("extended", true, "priority", 16, "periodMs", 100)
                                        .with("jitterMs", 0.2, "deadlineMs", 100));
            }
        }
        zone.sink()
                .add(
                        "buses",
                        Row.of("name", name, "kind", "can", "rateKbit", rate, "frame", "classic")
                                .with("allocator", false, "members", members));
    }

    /** Builds the chain with a number of nodes; the first fed node gives the position. */
    static void build(Zone zone, int nodes, boolean branch) {
        new BusPart(zone).chain(nodes, branch);
    }

    private void chain(int nodes, boolean branch) {
        boolean two = zone.book().twoSockets();
        int here = two ? zone.dice().below(nodes + 1) : nodes;
        members.add(zone.controller().ref() + ":BCAN");
        side("bus1", here, branch);
        if (two) {
            side("bus2", nodes - here, false);
        }
        boolean end = !two || here == 0 || here == nodes;
        zone.setting(port("BCAN", address(), rate, two ? (end ? "on" : "off") : "fixed"));
        declare(zone, "chain " + zone.number(), rate, List.copyOf(members));
    }

    private int address() {
        return addresses.remove(zone.dice().below(addresses.size()));
    }

    private void side(String socket, int nodes, boolean branch) {
        Box before = zone.controller();
        String from = socket;
        int fed = zone.dice().between(nodes == 0 ? 0 : 1, nodes);
        for (int n = 1; n <= nodes; n++) {
            if (n == 1 && branch) {
                Box tee = branch(before, from);
                before = tee;
                from = "bus2";
            }
            before = node(before, from, n <= fed, n == nodes);
            from = "bus2";
        }
    }

    /** A tee near the controller with a node on a short lead. */
    private Box branch(Box before, String from) {
        Box tee = zone.add("splice", "tee");
        zone.loom().join("chain", before, from, tee, "bus1", cable());
        Box leaf = zone.add("bus", "leaf", "ports", List.of(port("NCAN", address(), rate, "none")));
        members.add(leaf.ref() + ":NCAN");
        zone.loom()
                .join(
                        "branch",
                        tee,
                        "bus3",
                        leaf,
                        "bus1",
                        Cable.signal("can", zone.dice().between(60, 150)));
        return tee;
    }

    private Box node(Box before, String from, boolean fed, boolean last) {
        boolean plug = last && zone.dice().chance(0.3);
        String terminator = last && !plug ? "on" : "off";
        Box node = zone.add(
                "bus",
                fed ? "through" : "own",
                "ports",
                List.of(port("NCAN", address(), rate, terminator)),
                "headingDeg",
                0,
                "rollDeg",
                0);
        members.add(node.ref() + ":NCAN");
        zone.node(node);
        zone.loom().join(last ? "chain end" : "chain", before, from, node, "bus1", cable());
        if (!fed) {
            zone.feed(node, "pwr", 0.06, 0.12, 1);
        }
        if (plug) {
            terminator(node, "bus2");
        }
        return node;
    }

    private void terminator(Box node, String socket) {
        Box plug = zone.add("bus", "terminator", "ports", List.of(Row.of("port", "TCAN", "terminator", "fixed")));
        members.add(plug.ref() + ":TCAN");
        zone.loom()
                .join(
                        "terminator",
                        node,
                        socket,
                        plug,
                        "bus1",
                        Cable.signal("can", zone.dice().between(60, 100)));
    }

    private Cable cable() {
        return Cable.carrying("can", zone.dice().between(350, 900), 4, 6);
    }
}
