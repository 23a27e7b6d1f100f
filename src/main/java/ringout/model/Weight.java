package ringout.model;

import ringout.text.Span;

/** A weight the aircraft flies at. */
public record Weight(
        @Doc("where it stands in the user's file") Span at,
        @Doc("case") String name,
        @Doc("mass") Datum<Double> kg,
        @Doc("centre of gravity forward") Datum<Double> cgXMm,
        @Doc("centre of gravity right") Datum<Double> cgYMm) {}
