package ringout.seeded;

import java.util.Map;
import java.util.Set;
import ringout.check.Catalogue;
import ringout.check.form.CheckInfo;
import ringout.check.form.Weighing;

/** Where a verdict without a datum, or silence about it, is right, and why. */
final class Allowed {
    /** Checks that weigh solved figures; they are held to what a datum may sensibly be, since all data have a share in each. */
    static boolean weighs(String code) {
        return Catalogue.all().stream()
                .filter(check -> check instanceof Weighing)
                .anyMatch(check ->
                        check.getClass().getAnnotation(CheckInfo.class).code().equals(code));
    }

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
            // a unit without bands is no radio as far as the list tells; its kind is asked for by other checks
            Map.entry("M14", Set.of("UnitType.kind")),
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
        return VERDICTS.getOrDefault(code, Set.of()).contains(field);
    }

    /** Whether a check that minds an absurd value of this field may say nothing when it is unknown. */
    static boolean silence(String code, String field) {
        return SILENCES.getOrDefault(code, Set.of()).contains(field);
    }
}
