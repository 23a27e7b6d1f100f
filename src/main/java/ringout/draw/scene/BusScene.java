package ringout.draw.scene;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A bus diagram: the trunk to scale of its length, what hangs off it, and where its terminators are.
 *
 * @param info the title block
 * @param name the bus, such as {@code CAN2}
 * @param rate such as {@code 1 Mbit/s}; may be empty
 * @param trunk members and tees in the order of the trunk; at least one
 * @param leads the leads between them, one fewer
 * @param stubs what hangs off; at most one at each point
 * @param ring a lead from the last point back to the first, which makes the bus a ring
 * @param moves arrows between terminators ({@link BusMember#terminatorId})
 * @param ohms expected readings, in the order to be printed
 * @param marks badges on members, terminators and leads
 * @param findings the finding list
 * @param notes lines printed below the finding list
 */
public record BusScene(
        SheetInfo info,
        String name,
        String rate,
        List<BusPoint> trunk,
        List<BusLead> leads,
        List<BusStub> stubs,
        Optional<BusLead> ring,
        List<Move> moves,
        List<OhmsLine> ohms,
        List<Mark> marks,
        List<FindingLine> findings,
        List<String> notes) {
    /** Keeps unmodifiable copies and refuses a scene that contradicts itself. */
    public BusScene {
        trunk = List.copyOf(trunk);
        leads = List.copyOf(leads);
        stubs = List.copyOf(stubs);
        moves = List.copyOf(moves);
        ohms = List.copyOf(ohms);
        marks = List.copyOf(marks);
        findings = List.copyOf(findings);
        notes = List.copyOf(notes);
        BusRules.check(trunk, leads, stubs, ring, moves, marks);
    }

    /** {@return all members, those of the trunk first} */
    public List<BusMember> members() {
        List<BusMember> members = new ArrayList<>();
        for (BusPoint point : trunk) {
            if (point instanceof BusMember member) {
                members.add(member);
            }
        }
        stubs.forEach(stub -> members.add(stub.member()));
        return members;
    }
}
