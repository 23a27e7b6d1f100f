package ringout.model;

import ringout.text.Span;

/** A splice, clamp or stud: one electrical point where conductors meet. */
public record Joint(
        @Doc("where it stands in the user's file") Span at,
        @Doc("identity") String id,
        @Doc("what it is") Datum<JointKind> kind,
        @Doc("number it is drawn for") Datum<Integer> conductors,
        @Doc("rated current") Datum<Double> ratingA,
        @Doc("resistance") Datum<Double> milliohm,
        @Doc("zone") Datum<String> zone,
        @Doc("forward of the hub") Datum<Double> xMm,
        @Doc("right of the hub") Datum<Double> yMm,
        @Doc("above the hub") Datum<Double> zMm,
        @Doc("free remark") Datum<String> note) {}
