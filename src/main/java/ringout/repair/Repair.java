package ringout.repair;

import java.util.List;
import ringout.model.Aircraft;
import ringout.model.edit.Edit;

/**
 * A change of the list that was tried on a copy: it clears its finding, raises no other of S1 to S3, and leaves nothing more
 * undecided.
 *
 * @param finding identity of the headline it clears
 * @param code code of its check
 * @param title its title
 * @param edits the edits, made together
 * @param words each edit in words: field, value now, value then
 * @param sureness how far the list alone can say that this is the right one
 * @param others number of other changes as small that clear it too
 * @param decide the one measurement that says whether the aircraft is wrong or the list is; may be empty
 * @param mended the list after the repair
 */
public record Repair(
        String finding,
        String code,
        String title,
        List<Edit> edits,
        List<String> words,
        Sureness sureness,
        int others,
        String decide,
        Aircraft mended) {
    /** How far the list alone can say that a repair is the right one. */
    public enum Sureness {
        /** No other change as small clears the finding. */
        ONLY("the only change as small that clears it"),
        /** Others as small clear it too. */
        ONE_OF_SEVERAL("one of several as small that clear it"),
        /** Something in it has to be chosen or measured before it is made. */
        TO_BE_COMPLETED("clears it; fill in what is marked ? before it is made");

        private final String words;

        Sureness(String words) {
            this.words = words;
        }

        /** In words. */
        public String words() {
            return words;
        }
    }

    /** Keeps its own copies. */
    public Repair {
        edits = List.copyOf(edits);
        words = List.copyOf(words);
    }
}
