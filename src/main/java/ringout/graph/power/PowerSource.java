package ringout.graph.power;

import java.util.List;
import java.util.Optional;
import ringout.graph.Gap;
import ringout.model.Datum;
import ringout.model.Rail;

/**
 * Something that lifts one point above another.
 *
 * @param index number among all sources of the aircraft
 * @param kind what it is
 * @param unit number of the unit it sits in
 * @param name name of the source: the unit, and the rail when the unit has several
 * @param minus vertex it lifts from: minus of a pack, 0V of a regulator; -1 when the type names none
 * @param plus vertex it lifts
 * @param inputs vertices of which one must be fed for it to work; empty for a pack
 * @param volts what it gives at rest, plus against minus
 * @param missing data that would make the range of {@code volts} known
 * @param milliohm resistance inside; not applicable to a regulator
 * @param part number of its part in the wiring; -1 when the type gives only an output pin
 * @param rail what the type says of the point it lifts
 */
public record PowerSource(
        int index,
        Kind kind,
        int unit,
        String name,
        int minus,
        int plus,
        List<Integer> inputs,
        Volts volts,
        List<Gap> missing,
        Datum<Double> milliohm,
        int part,
        Optional<Rail> rail) {
    /** What a source is. */
    public enum Kind {
        /** Cells of a pack. */
        PACK,
        /** Regulator with a common 0V. */
        REGULATOR,
        /** Converter whose output has a 0V of its own. */
        CONVERTER,
        /** Output pin of a unit whose type does not tell what feeds it. */
        OUTPUT
    }

    // Its number says which source of the aircraft it is.
    @Override
    public boolean equals(Object other) {
        return this == other
                || (other instanceof PowerSource that
                        && index == that.index
                        && plus == that.plus
                        && name.equals(that.name));
    }

    @Override
    public int hashCode() {
        return index;
    }
}
