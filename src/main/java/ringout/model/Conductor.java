package ringout.model;

import ringout.text.Span;

/** One wire of a lead that differs from the rest. */
public record Conductor(
        @Doc("where it stands in the user's file") Span at,
        @Doc("which wire: pin to pin") PinMap pins,
        @Doc("identity of the wire") Datum<String> id,
        @Doc("wire size") Datum<Awg> awg,
        @Doc("cross-section") Datum<Double> areaMm2,
        @Doc("length") Datum<Double> lengthMm,
        @Doc("colour letters, IEC 60757") Datum<String> colour,
        @Doc("joint it passes") Datum<String> splice) {}
