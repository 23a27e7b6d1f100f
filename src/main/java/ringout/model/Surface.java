package ringout.model;

import ringout.text.Span;

/** One control surface. */
public record Surface(
        @Doc("where it stands in the user's file") Span at,
        @Doc("surface") String name,
        @Doc("servo unit") Datum<String> servo,
        @Doc("output that drives it") Datum<String> output,
        @Doc("reversal wanted") Datum<Boolean> reversed) {}
