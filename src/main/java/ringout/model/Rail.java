package ringout.model;

import ringout.text.Span;

/** A supply point inside a unit. */
public record Rail(
        @Doc("where it stands in the user's file") Span at,

        @Doc("name of the point, as pins, parts and loads refer to it")
        String name,

        @Doc("nominal voltage") Datum<Double> nominalV,

        @Doc("lowest voltage: of an input, what it needs; of an output, what it gives")
        Datum<Double> minV,

        @Doc("highest voltage: of an input, what it stands; of an output, what it gives")
        Datum<Double> maxV,

        @Doc("continuous rating") Datum<Double> continuousA,
        @Doc("peak rating") Datum<Double> peakA,
        @Doc("return point of this rail") Datum<String> zero,
        @Doc("output joined to others by diodes inside") Datum<Boolean> ored,
        @Doc("may share a net with an equal source") Datum<Boolean> parallelRated,
        @Doc("does not pass current backwards") Datum<Boolean> reverseBlocking,
        @Doc("has a filter against a disturbed supply") Datum<Boolean> filtered,
        @Doc("free remark") Datum<String> note) {}
