package ringout.check.open;

import java.util.List;
import ringout.model.Datum;

/**
 * A datum that is missing.
 *
 * @param record the record it is missing of, by its place in the list
 * @param field the field of that record
 * @param datum what it is, in trade words
 * @param how the cheapest way to get it
 * @param minutes how long that takes
 * @param of the rows, units, plugs or parts it is missing of, as the user names them
 * @param ends what it may be; the same place means the same direction in all of them
 */
public record OpenDatum(
        String record, String field, String datum, String how, int minutes, List<String> of, List<Datum<?>> ends) {
    /** What it is at one end; data with fewer ends stay at their last. */
    Datum<?> at(int way) {
        return ends.get(Math.min(way, ends.size() - 1));
    }

    /** Whether it belongs to a lead, contact or joint. */
    boolean inTheWay() {
        return !record.equals(OpenDataFinder.PROJECT) && !record.contains("part") && !record.startsWith("event");
    }

    /** The same of fewer things. */
    OpenDatum of(List<String> fewer) {
        return new OpenDatum(record, field, datum, how, minutes, List.copyOf(fewer), ends);
    }
}
