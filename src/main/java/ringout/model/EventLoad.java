package ringout.model;

import ringout.text.Span;

/** One load of an event. */
public record EventLoad(
        @Doc("where it stands in the user's file") Span at,
        @Doc("unit, or a range such as ESC1..6") String unit,
        @Doc("rail") Datum<String> rail,
        @Doc("current") Datum<Double> amps,
        @Doc("power") Datum<Double> watts,
        @Doc("how long") Datum<Double> seconds,
        @Doc("takes its peak") Datum<Boolean> peak) {}
