package ringout.model;

import ringout.text.Span;

/** What a unit draws from one of its rails. */
public record LoadSpec(
        @Doc("where it stands in the user's file") Span at,

        @Doc("rail inside the unit; empty when there is one only")
        Datum<String> rail,

        @Doc("current at rest") Datum<Double> idleA,
        @Doc("average current") Datum<Double> averageA,
        @Doc("average power, for a load of constant power") Datum<Double> averageW,
        @Doc("peak current") Datum<Double> peakA,
        @Doc("how long the peak lasts") Datum<Double> peakS,
        @Doc("how the current follows the voltage") Datum<LoadLaw> law,
        @Doc("free remark") Datum<String> note) {}
