package ringout.model;

import ringout.text.Span;

/** A stretch along another lead. */
public record Beside(
        @Doc("where it stands in the user's file") Span at,
        @Doc("the other lead") String lead,
        @Doc("how long they run together") Datum<Double> lengthMm,
        @Doc("distance between them") Datum<Double> gapMm) {}
