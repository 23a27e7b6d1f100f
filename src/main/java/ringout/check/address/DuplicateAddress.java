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
import ringout.model.Datum;
import ringout.model.Unit;

/**
 * Two members of one bus with the same node address.
 *
 * <p>Why it matters: both answer to the same calls; one unit "comes and goes", its uptime jumps, and each works alone on the
 * bench.
 *
 * <p>Condition: equal addresses of two units within one piece of bus. A unit may carry the same address on two buses. An
 * address that is given out on the bus is unset by design.
 *
 * <p>Does not see: addresses given out on the bus, addresses of units not joined in this state.
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
        for (Members members : Members.all(at)) {
            look(out, members);
        }
    }

    private static void look(Outcomes out, Members members) {
        Map<Integer, List<Members.Member>> byAddress = new TreeMap<>();
        List<Members.Member> open = new ArrayList<>();
        boolean given = members.allocator().is(true);
        for (Members.Member node : members.nodes()) {
            Datum<Integer> address = members.address(node);
            address.known()
                    .ifPresent(value -> byAddress
                            .computeIfAbsent(value, key -> new ArrayList<>())
                            .add(node));
            if (address.isMissing() && !given) {
                open.add(node);
            }
        }
        if (open.isEmpty() && members.nodes().size() > 1) {
            out.looked();
        }
        byAddress.forEach((address, nodes) -> {
            if (address != 0
                    && nodes.stream().map(Members.Member::unit).distinct().count() > 1) {
                out.finding(draft(members, address, nodes));
            }
        });
        members.ask(out, "address", "read it from the unit with everything else unplugged", open);
    }

    private static Draft draft(Members members, int address, List<Members.Member> nodes) {
        List<String> units =
                nodes.stream().map(node -> node.unit().ref()).distinct().toList();
        String last = units.get(units.size() - 1);
        String names = String.join(", ", units.subList(0, units.size() - 1)) + " and " + last;
        Draft draft = Draft.of(
                        Severity.S2, "duplicate address: " + address + " is used by " + names + " on " + members.name())
                .about(units)
                .sum("address " + address + " of " + names + ", every address once on a bus")
                .source("DroneCAN specification, section 4.1")
                .why("one of them comes and goes, bus errors only with both plugged")
                .meter("unplug one of them: another stays listed under " + address)
                .fix("give " + String.join(" or ", units) + " a free address: " + free(members))
                .explains("A07");
        for (Members.Member node : nodes) {
            Unit unit = node.unit();
            draft.at(unit, "address").input(members.address(node));
        }
        members.bridges().forEach(draft::cause);
        return draft;
    }

    /** The lowest address nobody has, of those for units. */
    private static int free(Members members) {
        List<Integer> used = members.nodes().stream()
                .flatMap(node -> members.address(node).known().stream())
                .toList();
        int free = AddressOutOfRange.LOWEST;
        while (used.contains(free)) {
            free++;
        }
        return free;
    }
}
