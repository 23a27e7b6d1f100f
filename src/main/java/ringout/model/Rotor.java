package ringout.model;

import ringout.text.Span;

/** One rotor of the frame table. */
public record Rotor(
        @Doc("where it stands in the user's file") Span at,
        @Doc("motor number") Datum<Integer> number,
        @Doc("motor unit") Datum<String> motor,
        @Doc("bearing from the nose, right positive") Datum<Double> bearingDeg,
        @Doc("distance from the hub") Datum<Double> radiusMm,
        @Doc("upper, lower or single") Datum<Level> level,
        @Doc("turning direction wanted, seen from above") Datum<Spin> spin,
        @Doc("largest thrust") Datum<Double> thrustMaxKgf,
        @Doc("controller output that drives it") Datum<String> output) {}
