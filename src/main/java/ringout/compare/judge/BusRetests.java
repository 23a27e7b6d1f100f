package ringout.compare.judge;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import ringout.compare.match.Match;
import ringout.graph.Circuit;
import ringout.graph.Site;
import ringout.graph.bus.BusHub;
import ringout.graph.bus.BusSegment;
import ringout.graph.bus.Buses;
import ringout.model.End;
import ringout.solve.meter.BusQuestion;
import ringout.solve.meter.BusTable;
import ringout.solve.meter.Reading;

/** Ohms of the buses that are touched: at both ends with everything mated, and into the lead at the far end. */
final class BusRetests {
    private final Match match;
    private final Circuit before;
    private final Circuit circuit;

    BusRetests(Match match, Circuit before, Circuit circuit) {
        this.match = match;
        this.before = before;
        this.circuit = circuit;
    }

    List<Retest> at(Set<Integer> pins) {
        Buses buses = Buses.of(circuit);
        Set<Integer> touched = new LinkedHashSet<>();
        for (int pin : pins) {
            buses.hubOfPin(pin)
                    .map(buses::segment)
                    .filter(BusSegment::wired)
                    .ifPresent(one -> touched.add(one.index()));
        }
        List<Retest> tests = new ArrayList<>();
        touched.forEach(segment -> table(buses, buses.segments().get(segment), tests));
        return tests;
    }

    private void table(Buses buses, BusSegment segment, List<Retest> tests) {
        boolean pairs = segment.hubs().stream().map(buses.hubs()::get).allMatch(BusRetests::whole);
        if (!pairs) {
            return;
        }
        BusTable table = BusQuestion.asListed(circuit, segment);
        List<Integer> mated = spots(table, BusTable.Side.MATED);
        List<Integer> into = spots(table, BusTable.Side.INTO_LEAD);
        if (!mated.isEmpty()) {
            add(table, mated.get(0), "everything mated", tests);
            if (mated.size() > 1) {
                add(table, mated.get(mated.size() - 1), "everything mated", tests);
            }
        }
        if (!into.isEmpty()) {
            add(table, into.get(into.size() - 1), "plug pulled, into the lead", tests);
        }
    }

    private static boolean whole(BusHub hub) {
        return hub.high() >= 0 && hub.low() >= 0;
    }

    private static List<Integer> spots(BusTable table, BusTable.Side side) {
        List<Integer> spots = new ArrayList<>();
        for (int i = 0; i < table.spots().size(); i++) {
            if (table.spots().get(i).side() == side) {
                spots.add(i);
            }
        }
        return spots;
    }

    private void add(BusTable table, int spot, String how, List<Retest> tests) {
        String plug = table.spots().get(spot).plug();
        tests.add(new Retest(
                Retest.Kind.BUS,
                (table.bus().isEmpty() ? "bus" : table.bus()) + " between H and L at " + plug + ", " + how,
                List.of(plug),
                Optional.of(table.rows().get(0).readings().get(spot)),
                putBack(table.spots().get(spot))));
    }

    /** The reading at the same plug of the base. */
    private Optional<Reading> putBack(BusTable.Spot spot) {
        if (!(circuit.wiring().directory().resolve(new End(spot.plug())) instanceof Site.OnPlug on)) {
            return Optional.empty();
        }
        int pin = match.pinBack(circuit.wiring().firstPin(on.unit(), on.plug()));
        if (pin < 0) {
            return Optional.empty();
        }
        int unit = before.wiring().unitOf(pin);
        int plug = before.wiring().plugIndex(pin);
        String name = before.wiring().plugName(unit, plug);
        for (BusSegment segment : BusQuestion.at(before, unit, plug)) {
            BusTable table = BusQuestion.asListed(before, segment);
            for (int i = 0; i < table.spots().size(); i++) {
                BusTable.Spot twin = table.spots().get(i);
                if (twin.plug().equals(name) && twin.side() == spot.side()) {
                    return Optional.of(table.rows().get(0).readings().get(i));
                }
            }
        }
        return Optional.empty();
    }
}
