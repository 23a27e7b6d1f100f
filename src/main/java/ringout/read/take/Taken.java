package ringout.read.take;

import java.util.List;
import ringout.model.Aircraft;
import ringout.text.Problem;

/**
 * What came of taking files back into a record.
 *
 * @param aircraft the aircraft with all of it on record
 * @param added how many entries are new
 * @param known how many were on record already, word for word
 * @param conflicts entries that say something else than another of the same thing, or are about nothing of this list; both are
 *     kept
 * @param problems what cannot be taken at all; with one of these nothing is
 */
public record Taken(Aircraft aircraft, int added, int known, List<String> conflicts, List<Problem> problems) {}
