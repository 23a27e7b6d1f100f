package ringout.check.address;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import ringout.check.form.Check;
import ringout.check.form.CheckInfo;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.finding.Draft;
import ringout.finding.Severity;
import ringout.graph.PortSettings;
import ringout.graph.bus.BusHub;
import ringout.graph.bus.BusSegment;
import ringout.graph.bus.Buses;
import ringout.model.Datum;
import ringout.model.PortSetting;
import ringout.model.Unit;

/**
 * Two members of one bus with the same node address.
 *
 * <p>Why it matters: both answer to the same calls; one unit "comes and goes", and each works alone on the bench.
 *
 * <p>Condition: equal addresses within one piece of bus. A unit may carry the same address on two buses.
 *
 * <p>Does not see: addresses given out on the bus, addresses not recorded (A02).
 *
 * <p>Reference: DroneCAN specification, section 4.1 (node identity).
 */
@CheckInfo(
        code = "A01",
        name = "duplicate-address",
        severity = Severity.S2,
        since = "0.1",
        needs = {"address of each bus unit"})
public final class DuplicateAddress implements Check {
    @Override
    public void look(Situation at, Outcomes out) {
        Buses buses = Buses.of(at.circuit());
        for (BusSegment segment : buses.segments()) {
            Map<Integer, List<Unit>> byAddress = new TreeMap<>();
            for (int hub : segment.hubs()) {
                address(at, buses.hubs().get(hub), byAddress);
            }
            if (!byAddress.isEmpty() && !segment.links().isEmpty()) {
                out.looked();
                byAddress.forEach((address, units) -> look(out, buses, segment, address, units));
            }
        }
    }

    private static void address(Situation at, BusHub hub, Map<Integer, List<Unit>> byAddress) {
        if (hub.member() && !at.directory().isJoint(hub.unit())) {
            Unit unit = at.directory().unit(hub.unit());
            Datum<Integer> address =
                    PortSettings.of(unit, hub.port()).map(PortSetting::address).orElse(Datum.notAsked());
            address.known()
                    .ifPresent(value -> byAddress
                            .computeIfAbsent(value, key -> new ArrayList<>())
                            .add(unit));
        }
    }

    private static void look(Outcomes out, Buses buses, BusSegment segment, int address, List<Unit> units) {
        if (units.size() < 2) {
            return;
        }
        String names = String.join(" and ", units.stream().map(Unit::ref).toList());
        Draft draft = Draft.of(
                        Severity.S2,
                        "duplicate address: " + address + " is used by " + names + " on " + buses.name(segment))
                .about(units.stream().map(Unit::ref).toList())
                .sum("address " + address + " of " + names + ", every address once on a bus")
                .source("DroneCAN specification, section 4.1")
                .why("one of them comes and goes, bus errors only with both plugged")
                .meter("unplug one of the two: the other stays listed under " + address)
                .fix("give " + names.replace(" and ", " or ") + " a free address");
        units.forEach(unit -> draft.at(unit, "address"));
        out.finding(draft);
    }
}
