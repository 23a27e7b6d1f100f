package ringout.model;

import java.util.List;
import ringout.text.Span;

/** A hole that leads pass. */
public record Hole(
        @Doc("where it stands in the user's file") Span at,
        @Doc("hole") String name,
        @Doc("diameter") Datum<Double> diameterMm,
        @Doc("leads through it") List<String> leads,
        @Doc("largest plug that must pass") Datum<Double> plugMm) {}
