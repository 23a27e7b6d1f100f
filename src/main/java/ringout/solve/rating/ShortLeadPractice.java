package ringout.solve.rating;

import java.util.List;
import ringout.graph.Gap;
import ringout.graph.Wire;
import ringout.graph.wire.Ampacity;
import ringout.graph.wire.WireTable;

/**
 * Short-lead practice: the current of a single wire in free air with the factors for silicone in moving air and for the bundle; a
 * fuse or breaker up to that current; 5 % of the voltage may drop continuously, 8 % for seconds. Common practice, no source.
 */
public record ShortLeadPractice() implements WireRules {
    @Override
    public String title() {
        return "short-lead practice";
    }

    @Override
    public String currentSource() {
        return title() + ": " + WireTable.FREE_AIR_SOURCE;
    }

    @Override
    public String protectorSource() {
        return currentSource();
    }

    @Override
    public Ampacity ampacity(Wire wire) {
        return Ampacity.of(wire);
    }

    @Override
    public String words(Wire wire) {
        return Ampacity.words(wire);
    }

    @Override
    public List<Gap> missing(Wire wire) {
        return Ampacity.missing(wire);
    }

    @Override
    public Ampacity protector(Wire wire, Protector kind) {
        return ampacity(wire);
    }

    @Override
    public List<Gap> missing(Wire wire, Protector kind) {
        return missing(wire);
    }
}
