package ringout.solve.rating;

import java.util.List;
import ringout.graph.Gap;
import ringout.graph.Wire;
import ringout.graph.wire.Ampacity;
import ringout.model.Aircraft;
import ringout.model.RuleSet;

/**
 * What a wire may carry, what may protect it and what may drop along it. There are two sets of rules with different bases, and
 * a project names the one it works by; values of one must not be held against the other. Each finding prints the set it used.
 */
public sealed interface WireRules permits ShortLeadPractice, AircraftChart {
    /** The rules a project works by; short-lead practice when it names none. */
    static WireRules of(Aircraft aircraft) {
        return aircraft.project().ruleSet().or(RuleSet.SHORT_LEAD) == RuleSet.AIRCRAFT_CHART
                ? new AircraftChart()
                : new ShortLeadPractice();
    }

    /** Name of the set, printed in each finding that uses it. */
    String title();

    /** Where the currents come from. */
    String currentSource();

    /** Where the largest protectors come from. */
    String protectorSource();

    /** The current a conductor carries all day in A, all factors in; a band when data are missing. */
    Ampacity ampacity(Wire wire);

    /** How that current comes about: {@code 16 AWG free air}. */
    String words(Wire wire);

    /** Data that would close the band of the current. */
    List<Gap> missing(Wire wire);

    /** The largest protector of a conductor in A; a band when data are missing. */
    Ampacity protector(Wire wire, Protector kind);

    /** Data that would close the band of the protector. */
    List<Gap> missing(Wire wire, Protector kind);

    /** The other set. */
    default WireRules other() {
        return this instanceof AircraftChart ? new ShortLeadPractice() : new AircraftChart();
    }
}
