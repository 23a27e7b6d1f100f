package ringout.check.address;

import ringout.check.form.Check;
import ringout.check.form.CheckInfo;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.finding.Draft;
import ringout.finding.Severity;
import ringout.model.Datum;

/**
 * A node address outside the range, or one kept for tools.
 *
 * <p>Why it matters: an address that cannot be sent makes the unit mute; one kept for tools clashes with the laptop on the bench.
 *
 * <p>Condition: addresses run from 1 to 127; 126 and 127 are kept for tools; 0 is anonymous (A02).
 *
 * <p>Does not see: protocols with another range.
 *
 * <p>Reference: DroneCAN specification, section 4.1 (range); 126 and 127 for tools: common practice of that specification, from
 * memory.
 */
@CheckInfo(
        code = "A03",
        name = "address-out-of-range",
        severity = Severity.S3,
        since = "0.1",
        needs = {"address of each bus unit"})
public final class AddressOutOfRange implements Check {
    static final int LOWEST = 1;
    private static final int TOOLS = 126;
    private static final int HIGHEST = 127;

    @Override
    public void look(Situation at, Outcomes out) {
        for (Members members : Members.all(at)) {
            boolean given = members.allocator().is(true);
            members.ask(
                    out,
                    "address",
                    "read it from the unit with everything else unplugged",
                    members.nodes().stream()
                            .filter(node -> !given && members.address(node).isMissing())
                            .toList());
            for (Members.Member node : members.nodes()) {
                members.address(node).known().ifPresent(address -> look(out, members, node, address));
            }
        }
    }

    private static void look(Outcomes out, Members members, Members.Member node, int address) {
        out.looked();
        boolean outside = address < 0 || address > HIGHEST;
        if (outside || address >= TOOLS) {
            out.finding(draft(members.address(node), node, address, outside));
        }
    }

    private static Draft draft(Datum<Integer> datum, Members.Member node, int address, boolean outside) {
        String ref = node.unit().ref();
        return Draft.of(
                        Severity.S3,
                        outside
                                ? "address out of range: " + node.words() + " has " + address + ", addresses run from "
                                        + LOWEST + " to " + HIGHEST
                                : "address kept for tools: " + node.words() + " has " + address)
                .about(ref)
                .at(node.unit(), "address")
                .input(datum)
                .sum("address " + address + ", units take " + LOWEST + " to " + (TOOLS - 1))
                .judged(address, outside ? HIGHEST : TOOLS - 1.0, "address", "DroneCAN specification, section 4.1")
                .why(outside ? "the unit cannot take part" : "a tool on the bench takes the same address")
                .fix("give " + ref + " an address from " + LOWEST + " to " + (TOOLS - 1))
                .cause("range of " + ref);
    }
}
