package ringout.draw.scene;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** What a bus scene must keep before it may be laid out. */
final class BusRules {
    private final Set<String> all = new HashSet<>();
    private final Set<String> terminators = new HashSet<>();

    private BusRules() {}

    static void check(
            List<BusPoint> trunk,
            List<BusLead> leads,
            List<BusStub> stubs,
            Optional<BusLead> ring,
            List<Move> moves,
            List<Mark> marks) {
        BusRules rules = new BusRules();
        need(!trunk.isEmpty() && leads.size() == trunk.size() - 1, "a trunk of n points has n-1 leads");
        Set<String> hangable = new HashSet<>();
        for (BusPoint point : trunk) {
            rules.claim(point.id());
            hangable.add(point.id());
            if (point instanceof BusMember member) {
                rules.claimTerminator(member);
            }
        }
        leads.forEach(lead -> rules.claim(lead.id()));
        for (BusStub stub : stubs) {
            rules.claim(stub.member().id());
            rules.claim(stub.lead().id());
            rules.claimTerminator(stub.member());
            need(hangable.remove(stub.at()), "no point, or a second stub, at " + stub.at());
        }
        for (BusPoint point : trunk) {
            need(point instanceof BusMember || !hangable.contains(point.id()), "nothing hangs from tee " + point.id());
        }
        boolean closable = trunk.size() > 1
                && trunk.get(0) instanceof BusMember
                && trunk.get(trunk.size() - 1) instanceof BusMember;
        need(ring.isEmpty() || closable, "a ring closes between two members");
        ring.ifPresent(lead -> rules.claim(lead.id()));
        for (Move move : moves) {
            boolean known = rules.terminators.contains(move.from()) && rules.terminators.contains(move.to());
            need(known && !move.from().equals(move.to()), "move " + move.id() + " is not between two terminators");
        }
        for (Mark mark : marks) {
            mark.targets().forEach(target -> need(rules.all.contains(target), "mark on unknown " + target));
        }
    }

    private void claimTerminator(BusMember member) {
        if (member.terminator() != Terminator.NONE) {
            claim(member.terminatorId());
            terminators.add(member.terminatorId());
        }
    }

    private void claim(String id) {
        need(all.add(id), "identifier used twice: " + id);
    }

    private static void need(boolean kept, String breach) {
        if (!kept) {
            throw new IllegalArgumentException(breach);
        }
    }
}
