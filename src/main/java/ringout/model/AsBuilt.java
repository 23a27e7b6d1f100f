package ringout.model;

import java.util.List;
import ringout.text.Span;

/** What was built, read and signed. */
public record AsBuilt(
        @Doc("where it stands in the user's file") Span at,
        @Doc("flight hours so far") Datum<Double> flightHours,
        @Doc("day of this record, YYYY-MM-DD") Datum<String> asOf,
        @Doc("telemetry network id of this tail") Datum<String> networkId,
        @Doc("system id of this tail") Datum<String> systemId,
        @Doc("command link binding of this tail") Datum<String> binding,

        @Doc("identities of the other tails that fly in the same area")
        List<FleetTail> fleet,

        @Doc("checksum of the parameter file on record") Datum<String> parameterChecksum,
        @Doc("checksum as read") Datum<String> parameterChecksumRead,

        @Doc("parameters that differ from the file on record as read")
        List<String> parametersDiffer,

        @Doc("parameters that may differ: counters, calibration values")
        List<String> parametersExcluded,

        @Doc("procedure") List<Step> steps,
        @Doc("planned tests") List<PlannedTest> tests,
        @Doc("what the meter said") List<Reading> readings,
        @Doc("meters") List<Instrument> instruments,
        @Doc("ticks at the ends of leads") List<Tick> ticks,
        @Doc("signatures") List<Signature> signatures,
        @Doc("who the initials stand for") List<Signer> signers,
        @Doc("photos by file and hash") List<Photo> photos,
        @Doc("remarks that belong to no row of their own") List<RecordNote> notes,
        @Doc("changes with reason") List<Change> changes,

        @Doc("values found on the aircraft, where they were looked at")
        List<ListedValue> found,

        @Doc("values of the baseline of the type") List<ListedValue> baseline,
        @Doc("pages of the document pack handed over") List<Page> pages,
        @Doc("bill of material") List<BomLine> bom,
        @Doc("screws with torque and witness mark") List<Torque> torques) {}
