package ringout.model;

import ringout.text.Span;

/** A setting that differs in a state. */
public record StateSetting(
        @Doc("where it stands in the user's file") Span at,
        @Doc("unit") String unit,
        @Doc("port") Datum<String> port,
        @Doc("terminator in this state") Datum<TerminatorState> terminator) {}
