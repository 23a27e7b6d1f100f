package ringout.model;

import java.util.List;
import ringout.text.Span;

/** What an instrument said. */
public record Reading(
        @Doc("where it stands in the user's file") Span at,
        @Doc("pins or place") String where,
        @Doc("ohm, V, A") Datum<String> quantity,
        @Doc("state") Datum<String> state,
        @Doc("plugs pulled") List<String> pulled,
        @Doc("value") Datum<Double> value,

        @Doc("current that flows while it is read, for a voltage drop")
        Datum<Double> atA,

        @Doc("lower end of the band") Datum<Double> expectedLow,
        @Doc("upper end of the band") Datum<Double> expectedHigh,
        @Doc("instrument") Datum<String> instrument,
        @Doc("who") Datum<String> by,
        @Doc("when") Datum<String> date,
        @Doc("flight hours then") Datum<Double> flightHours,

        @Doc("mark of the list it was read against, first eight digits")
        Datum<String> revision,

        @Doc("free remark") Datum<String> note) {}
