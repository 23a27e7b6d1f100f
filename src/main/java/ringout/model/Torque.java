package ringout.model;

import ringout.text.Span;

/** A screw joint on record. */
public record Torque(
        @Doc("where it stands in the user's file") Span at,
        @Doc("plug or joint") String item,
        @Doc("torque") Datum<Double> newtonMetre,
        @Doc("witness mark seen") Datum<Boolean> witness) {}
