package ringout.draw.scene;

import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** What a scene must keep before it may be laid out; a breach is an error of the program that built it. */
final class SceneRules {
    private final Set<String> ends = new HashSet<>();
    private final Set<String> flags = new HashSet<>();
    private final Set<String> joints = new HashSet<>();
    private final Set<String> all = new HashSet<>();

    SceneRules(List<Box> boxes, List<Splice> splices, List<Reference> references) {
        for (Box box : boxes) {
            claim(box.id());
            for (Plug plug : box.plugs()) {
                claim(plug.id());
                plug.rows().forEach(row -> ends.add(claim(row.id())));
            }
        }
        splices.forEach(splice -> joints.add(claim(splice.id())));
        ends.addAll(joints);
        references.forEach(reference -> flags.add(claim(reference.id())));
    }

    void check(List<Wire> wires, List<Move> moves, List<Mark> marks) {
        Set<String> usedFlags = new HashSet<>();
        for (Wire wire : wires) {
            claim(wire.id());
            need(ends.contains(wire.from()), "wire " + wire.id() + " starts at unknown " + wire.from());
            boolean flagged = flags.contains(wire.to());
            need(flagged || ends.contains(wire.to()), "wire " + wire.id() + " ends at unknown " + wire.to());
            need(!flagged || usedFlags.add(wire.to()), "reference " + wire.to() + " ends two wires");
            need(!wire.from().equals(wire.to()), "wire " + wire.id() + " ends where it starts");
        }
        Set<String> bare = new HashSet<>(joints);
        wires.forEach(wire -> bare.removeAll(List.of(wire.from(), wire.to())));
        need(bare.isEmpty(), "no wire ends at splice " + bare);
        need(usedFlags.size() == flags.size(), "a reference ends no wire");
        for (Move move : moves) {
            claim(move.id());
            need(ends.contains(move.from()) && ends.contains(move.to()), "move " + move.id() + " has an unknown end");
            need(!move.from().equals(move.to()), "move " + move.id() + " ends where it starts");
        }
        for (Mark mark : marks) {
            mark.targets().forEach(target -> need(all.contains(target), "mark on unknown " + target));
        }
    }

    private String claim(String id) {
        need(all.add(id), "identifier used twice: " + id);
        return id;
    }

    private static void need(boolean kept, String breach) {
        if (!kept) {
            throw new IllegalArgumentException(breach);
        }
    }
}
