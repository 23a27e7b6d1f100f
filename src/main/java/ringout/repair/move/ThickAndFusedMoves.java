package ringout.repair.move;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import ringout.model.Lead;
import ringout.model.edit.Edit;

/** Thicker wire and another fuse, or one fuse of two in a row taken out: a load wired too thin and fused too high at once. */
final class ThickAndFusedMoves implements Move {
    private final WireMoves wires = new WireMoves();
    private final FuseMoves fuses = new FuseMoves();

    @Override
    public Stream<Candidate> around(Fault fault) {
        List<Candidate> out = fault.leads().stream()
                .filter(lead -> lead.fuseA().isKnown())
                .flatMap(lead -> taken(lead))
                .toList();
        List<Candidate> fused = Stream.concat(out.stream(), fuses.around(fault)).toList();
        List<Candidate> both = new ArrayList<>(out);
        List<Candidate> thicker = wires.around(fault).toList();
        for (Candidate wire : thicker) {
            fused.stream().filter(fuse -> meet(wire, fuse)).forEach(fuse -> both.add(wire.and(fuse)));
        }
        return both.stream();
    }

    private static Stream<Candidate> taken(Lead lead) {
        return Move.setting(Move.lead(lead.id()).then("fuseA"), "n/a", Costs.FUSE);
    }

    /** Whether the fuse is that of one of the leads made thicker. */
    private static boolean meet(Candidate wire, Candidate fuse) {
        Set<String> leads = new HashSet<>();
        wire.edits().forEach(edit -> leads.add(lead(edit)));
        return fuse.edits().stream().map(ThickAndFusedMoves::lead).allMatch(leads::contains);
    }

    private static String lead(Edit edit) {
        return edit.path().steps().get(0).pick().key();
    }
}
