package ringout.model;

import ringout.text.Span;

/** A value of a row of the list as it is elsewhere: on the aircraft itself, or in the baseline of its type. */
public record ListedValue(
        @Doc("where it stands in the user's file") Span at,
        @Doc("unit or lead") String item,

        @Doc("field of its row: length, address, terminator")
        Datum<String> field,

        @Doc("value there") Datum<String> value,
        @Doc("what was decided: accept, correct") Datum<String> decision,
        @Doc("who decided") Datum<String> by,
        @Doc("when, YYYY-MM-DD") Datum<String> date) {}
