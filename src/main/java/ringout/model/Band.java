package ringout.model;

import ringout.text.Span;

/** A radio band. */
public record Band(
        @Doc("where it stands in the user's file") Span at,
        @Doc("lower edge") Datum<Double> lowMhz,
        @Doc("upper edge") Datum<Double> highMhz,
        @Doc("transmitter power") Datum<Double> powerW) {}
