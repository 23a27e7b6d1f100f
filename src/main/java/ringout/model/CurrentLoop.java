package ringout.model;

import java.util.List;
import ringout.text.Span;

/** A pair that carries changing current near the compass. */
public record CurrentLoop(
        @Doc("where it stands in the user's file") Span at,
        @Doc("what it is") String name,
        @Doc("leads that make the loop") List<String> leads,
        @Doc("unit with the compass") Datum<String> compass,
        @Doc("length of the pair") Datum<Double> lengthMm,
        @Doc("spacing of the pair") Datum<Double> spacingMm,
        @Doc("distance from the compass") Datum<Double> belowMm,
        @Doc("change of current from idle to full") Datum<Double> changeA,
        @Doc("how the pair lies") Datum<LoopLie> lie) {}
