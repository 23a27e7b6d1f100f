package ringout.model;

import ringout.text.Span;

/** A line of the bill of material. */
public record BomLine(
        @Doc("where it stands in the user's file") Span at,
        @Doc("part") String part,
        @Doc("count") Datum<Integer> count) {}
