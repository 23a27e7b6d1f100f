package ringout.repair.move;

import java.util.ArrayList;
import java.util.List;
import ringout.model.edit.Edit;

/**
 * Edits that might clear a finding.
 *
 * @param edits the edits, made together
 * @param cost how much is changed: a setting costs least, a new lead most; only the order matters
 */
public record Candidate(List<Edit> edits, int cost) {
    /** Keeps its own copy. */
    public Candidate {
        edits = List.copyOf(edits);
    }

    /** One edit. */
    static Candidate of(Edit edit, int cost) {
        return new Candidate(List.of(edit), cost);
    }

    /** Both together. */
    Candidate and(Candidate other) {
        List<Edit> both = new ArrayList<>(edits);
        both.addAll(other.edits);
        return new Candidate(both, cost + other.cost);
    }
}
