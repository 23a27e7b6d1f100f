package ringout.repair.move;

import java.util.List;
import java.util.stream.Stream;
import ringout.model.Lead;
import ringout.model.LeadKind;
import ringout.model.edit.Edit;
import ringout.text.Span;

/** A lead of a bus taken out and a terminator switched: a ring opened and its new end closed. */
final class RingMoves implements Move {
    private final TerminatorMoves terminators = new TerminatorMoves();

    @Override
    public Stream<Candidate> around(Fault fault) {
        List<Lead> bus = fault.leads().stream()
                .filter(lead -> lead.kind().is(LeadKind.CAN))
                .toList();
        List<Candidate> switched = terminators
                .around(fault)
                .filter(candidate -> candidate.edits().size() == 1)
                .toList();
        return bus.stream()
                .map(lead -> Candidate.of(new Edit.Remove(Span.NONE, Move.lead(lead.id())), Costs.LEAD_OUT))
                .flatMap(out -> switched.stream().map(out::and));
    }
}
