package ringout.seeded;

import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;

/** Where a verdict without a datum, or silence about it, is right, and why. */
final class Allowed {
    /**
     * Checks that weigh solved currents against ratings: every resistance of the aircraft has a share in each of them, and an
     * absurd one moves currents everywhere. They are not held here against missing data:
     * what they are silent about is known in part only.
     */
    private static final Pattern WEIGHING = Pattern.compile("P1[1-6]|P2[2-9]|P3[0-8]");

    /** Which contacts, leads and parts there are, and what they are. */
    private static final Set<String> CONNECTIONS =
            Set.of("Pin.role", "Pin.inside", "Pin.namedFrom", "Lead.pins", "BusPort.passThrough", "InnerPart.kind");

    private static final Map<String, Set<String>> VERDICTS = Map.of(
            // a peak of unknown length is held to last, which is the safe side
            "P17", Set.of("LoadSpec.peakS"));

    private static final Map<String, Set<String>> SILENCES = Map.ofEntries(
            // members that are all set to one rate tell the rate of their bus
            Map.entry("A04", Set.of("Bus.rateKbit")),
            Map.entry("A06", Set.of("Bus.rateKbit")),
            // the controller carries the number of its motor as well
            Map.entry("A07", Set.of("Rotor.number")),
            // asks for the currents of the units that the voltage of the pack is needed for
            Map.entry("P10", Set.of("PartRating.cells", "PartRating.nominalV")),
            // bounds of an output: its rail tells them, or else its set voltage and tolerance; the highest current
            // counts,
            // which is the peak as long as that is given; P20 asks for the empty cell where nobody draws near the
            // limit; a
            // contact without a wire feeds nobody
            Map.entry(
                    "P04",
                    Set.of(
                            "Rail.minV",
                            "Rail.maxV",
                            "PartRating.outputV",
                            "LoadSpec.averageA",
                            "LoadSpec.averageW",
                            "PartRating.emptyV",
                            "Pin.role")),
            // a good contact loses far less than the limit; where the usual figure would decide, both say so
            Map.entry("P17", Set.of("Plug.contactMilliohm", "PartRating.quiescentA")),
            // the same; the worst case is at the peak, which is given; the nominal voltage of the rail tells the
            // output;
            // without a voltage of the packs nothing flows: P04 and P20 ask for it, and P10 for an efficiency
            Map.entry(
                    "P18",
                    Set.of(
                            "Plug.contactMilliohm",
                            "LoadSpec.averageA",
                            "LoadSpec.averageW",
                            "PartRating.outputV",
                            "PartRating.quiescentA",
                            "PartRating.efficiency",
                            "PartRating.cells",
                            "PartRating.nominalV",
                            "PartRating.emptyV")),
            // a peak within the continuous rating needs no peak rating
            Map.entry("P19", Set.of("Rail.peakA")),
            // the nominal voltage of the output rail tells what the regulator is set to
            Map.entry("P20", Set.of("PartRating.outputV")),
            // a contact without a wire: the others of its plug tell what the plug is for
            Map.entry("T02", Set.of("Pin.role")),
            Map.entry("P02", Set.of("Pin.role")),
            Map.entry("S04", Set.of("Pin.role")),
            // the unit has one port with a setting in this state; T06 asks for a terminator no state tells of
            Map.entry("T17", Set.of("StateSetting.port", "StateSetting.terminator")),
            // S12 asks for the direction of the motor; the table is held against itself until then
            Map.entry("S11", Set.of("Unit.reversed")),
            // the type has no terminator to be set
            Map.entry("T06", Set.of("PortSetting.terminator")),
            Map.entry("T07", Set.of("PortSetting.terminator")),
            // a leg that names no port belongs to the port named as its plug
            Map.entry("S18", Set.of("Pin.inside")),
            // the declared way tells its length; points can only prove that it is longer
            Map.entry("M02", Set.of("RoutePoint.xMm", "RoutePoint.yMm", "RoutePoint.zMm")),
            // asks by the pack that joins, not by the step
            Map.entry("B05", Set.of("Step.action", "Step.attribute")));

    private Allowed() {}

    /**
     * What a contact is, what a lead joins and what a part inside does decides which checks have to do with them at all:
     * nobody can name all that might. One line that asks for it is enough.
     */
    static boolean anyCheckAsks(String field) {
        return CONNECTIONS.contains(field);
    }

    /** Whether a check may find something because this field is unknown. */
    static boolean verdict(String code, String field) {
        return WEIGHING.matcher(code).matches()
                || VERDICTS.getOrDefault(code, Set.of()).contains(field);
    }

    /** Whether a check that minds an absurd value of this field may say nothing when it is unknown. */
    static boolean silence(String code, String field) {
        return WEIGHING.matcher(code).matches()
                || SILENCES.getOrDefault(code, Set.of()).contains(field);
    }
}
