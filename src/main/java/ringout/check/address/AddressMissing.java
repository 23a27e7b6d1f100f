package ringout.check.address;

import java.util.ArrayList;
import java.util.List;
import ringout.check.form.Check;
import ringout.check.form.CheckInfo;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.finding.Draft;
import ringout.finding.Severity;
import ringout.model.Datum;

/**
 * A bus unit without an address, on a bus that gives none out.
 *
 * <p>Why it matters: such a unit listens at best; it is missing on the ground station and in every log.
 *
 * <p>Condition: the unit is known to have no address (marked n/a, or 0 for anonymous), and neither the bus nor a unit on it gives
 * addresses out. As long as nobody looked, it is a question, not a finding.
 *
 * <p>Does not see: whether a unit takes the address that is given out.
 *
 * <p>Reference: DroneCAN specification, section 4.1 (node identity, 0 is anonymous).
 */
@CheckInfo(
        code = "A02",
        name = "address-missing",
        severity = Severity.S3,
        since = "0.1",
        needs = {"address of each bus unit", "whether addresses are given out on the bus"})
public final class AddressMissing implements Check {
    @Override
    public void look(Situation at, Outcomes out) {
        for (Members members : Members.all(at)) {
            if (members.allocator().is(true)) {
                out.looked();
            } else {
                look(out, members);
            }
        }
    }

    private static void look(Outcomes out, Members members) {
        List<Members.Member> open = new ArrayList<>();
        List<Members.Member> without = new ArrayList<>();
        for (Members.Member node : members.nodes()) {
            Datum<Integer> address = members.address(node);
            if (address.isMissing()) {
                open.add(node);
            } else if (address.isNotApplicable() || address.is(0)) {
                without.add(node);
            } else {
                out.looked();
            }
        }
        members.ask(out, "address", "read it from the unit with everything else unplugged", open);
        if (!without.isEmpty() && members.allocator().isMissing()) {
            out.cannotTell(
                    "whether addresses are given out on " + members.name(),
                    "look it up in the parameters of the flight controller",
                    3,
                    members.name());
        } else {
            without.forEach(node -> out.finding(draft(members, node)));
        }
    }

    private static Draft draft(Members members, Members.Member node) {
        String ref = node.unit().ref();
        return Draft.of(
                        Severity.S3,
                        "address missing: " + node.words() + " has none, and " + members.name() + " gives none out")
                .about(ref)
                .at(node.unit(), "address")
                .sum("no address at " + node.words() + ", no unit on " + members.name() + " gives one")
                .source("DroneCAN specification, section 4.1")
                .why("it listens at best, and is missing on the ground station")
                .fix("set an address at " + ref + ", or let a unit give addresses out");
    }
}
