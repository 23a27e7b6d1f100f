package ringout.sheet.page;

import java.util.List;
import java.util.Optional;
import ringout.trace.predict.ReadingBand;
import ringout.trace.predict.TestCard;

/**
 * A test that a search on the page asks for.
 *
 * @param card what is done
 * @param place the plug, lead or unit it is made at; empty for one of the whole aircraft
 * @param unit what the meter is set to: ohm, V or A; empty where no number is read
 * @param bands the readings that mean each outcome, from the lowest up
 * @param over the outcome that a meter over its range means; empty where it means none
 */
public record PageTest(TestCard card, String place, String unit, List<ReadingBand> bands, Optional<String> over) {
    /** Keeps its own copy. */
    public PageTest {
        bands = List.copyOf(bands);
    }
}
