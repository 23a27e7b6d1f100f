package ringout.check.topology;

import java.util.ArrayList;
import java.util.List;
import ringout.check.form.Thresholds;
import ringout.graph.bus.BusHub;
import ringout.graph.bus.Buses;
import ringout.graph.bus.Trunk;
import ringout.model.Datum;

/**
 * The length of one branch off a trunk, as far as it is known.
 *
 * @param foot hub of the trunk it hangs at
 * @param tip its farthest hub
 * @param links leads from the foot to the tip
 * @param all all leads of the branch
 * @param leadMm length of those leads
 * @param teeMm what T-adapters on the way add
 * @param insideMm branch inside the unit at the tip
 * @param totalMm length of everything in the branch
 * @param sum the arithmetic in words, in m
 */
record StubLength(
        BusHub foot,
        BusHub tip,
        List<Integer> links,
        List<Integer> all,
        double leadMm,
        double teeMm,
        double insideMm,
        double totalMm,
        String sum) {

    static StubLength of(Buses buses, Trunk.Branch branch, double inside) {
        BusHub foot = buses.hubs().get(branch.foot());
        BusHub tip = buses.hubs().get(branch.tip());
        long tees = passed(buses, branch).stream()
                .filter(hub -> adapter(buses, hub))
                .count();
        double tee = tees * Thresholds.BUS_TEE.value();
        double total = branch.totalMm() + tee + inside;
        return new StubLength(
                foot,
                tip,
                branch.links(),
                branch.all(),
                branch.lengthMm(),
                tee,
                inside,
                total,
                sum(buses, branch, tee, inside));
    }

    /** The branch inside a unit that sits on the trunk. */
    static StubLength inside(BusHub hub, double inside) {
        String sum = "0 m of lead + " + Metres.words(inside) + " m inside";
        return new StubLength(hub, hub, List.of(), List.of(), 0, 0, inside, inside, sum);
    }

    /** Length from the trunk to the end of the branch in mm. */
    double mm() {
        return leadMm + teeMm + insideMm;
    }

    private static List<BusHub> passed(Buses buses, Trunk.Branch branch) {
        List<BusHub> hubs = new ArrayList<>();
        int at = branch.foot();
        for (int link : branch.links()) {
            hubs.add(buses.hubs().get(at));
            at = buses.links().get(link).other(at);
        }
        return hubs;
    }

    /** Whether a passive point is a T-adapter or board with a body of its own, not a splice in the lead. */
    private static boolean adapter(Buses buses, BusHub hub) {
        return !hub.member() && !buses.circuit().wiring().directory().isJoint(hub.unit());
    }

    private static String sum(Buses buses, Trunk.Branch branch, double tee, double inside) {
        List<String> parts = new ArrayList<>();
        for (int link : branch.links()) {
            Datum<Double> length = buses.lengthMm(link);
            parts.add(buses.links().get(link).lead().id() + " "
                    + length.known().map(Metres::words).orElse("?"));
        }
        if (tee > 0) {
            parts.add(Metres.words(tee) + " in T-adapters");
        }
        if (inside > 0) {
            parts.add(Metres.words(inside) + " inside the unit");
        }
        return String.join(" + ", parts) + " = " + Metres.words(branch.lengthMm() + tee + inside) + " m";
    }
}
