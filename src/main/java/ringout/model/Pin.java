package ringout.model;

import ringout.text.Span;

/** One contact. */
public record Pin(
        @Doc("where it stands in the user's file") Span at,
        @Doc("number or letter of the contact") String number,
        @Doc("signal name at the contact") Datum<String> name,
        @Doc("what the contact carries") Datum<PinRole> role,

        @Doc("point inside the unit it joins: pins of one unit with equal role and equal name here are one point")
        Datum<String> inside,

        @Doc("number or name of the motor or servo output or input")
        Datum<String> output,

        @Doc("voltage of a driven high level") Datum<Double> highV,
        @Doc("voltage an input needs to read high") Datum<Double> thresholdV,
        @Doc("absolute maximum at the contact") Datum<Double> maxV,
        @Doc("how the contact drives") Datum<Drive> drive,

        @Doc("input that must be driven for the unit to do its job")
        Datum<Boolean> needed,

        @Doc("may be driven while the unit is off") Datum<Boolean> powerOffSafe,
        @Doc("pull-up inside the unit") Datum<Boolean> pulledUp,

        @Doc("trigger or feedback: level that means now") Datum<ActiveLevel> active,

        @Doc("trigger or feedback: contact free of 0V, by optocoupler or relay")
        Datum<Boolean> isolated,

        @Doc("whose transmit the name means") Datum<NamedFrom> namedFrom,
        @Doc("safety input: what it does when left open") Datum<SafeDefault> safeDefault,

        @Doc("balance or tap plug: number of the cell end it taps, counted from pack minus, which is 0")
        Datum<Integer> cellTap,

        @Doc("deliberately unused") Datum<Boolean> spare,
        @Doc("free remark") Datum<String> note) {}
