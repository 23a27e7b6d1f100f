package ringout.model;

import java.util.List;
import ringout.text.Span;

/** One type or one tail: units, leads, joints, buses, airframe, states and records, as read. */
public record Aircraft(
        @Doc("where it stands in the user's file") Span at,
        @Doc("name of the aircraft type") String name,
        @Doc("short designation, printed on every sheet") Datum<String> designation,

        @Doc("serial-numbered aircraft this list describes; empty for the type itself")
        Datum<String> tail,

        @Doc("revision letter of the design") Datum<String> typeRevision,
        @Doc("revision number of this as-built") Datum<String> tailRevision,
        @Doc("free remark") Datum<String> note,

        @Doc("files with unit types shared by several aircraft, relative to this file")
        List<String> library,

        @Doc("unit types, in the order of the file") List<UnitType> types,
        @Doc("boxes aboard") List<Unit> units,
        @Doc("the from-to list") List<Lead> leads,

        @Doc("splices, clamps and studs that are not part of a unit")
        List<Joint> joints,

        @Doc("declared buses") List<Bus> buses,

        @Doc("bus messages, for occupancy and response time")
        List<Message> messages,

        @Doc("rotors, weights, covers, zones and fields") Airframe airframe,

        @Doc("declared states; none means one state called \"as flown\"")
        List<State> states,

        @Doc("loads that peak together") List<Event> events,

        @Doc("what the aircraft must be able to do, and through which units")
        List<AircraftFunction> functions,

        @Doc("rule set, limits and colours of this project") Project project,
        @Doc("findings accepted with a reason and an end") List<Waiver> waivers,
        @Doc("what was built, read and signed") AsBuilt record) {}
