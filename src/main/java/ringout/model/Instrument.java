package ringout.model;

import ringout.text.Span;

/** A meter. */
public record Instrument(
        @Doc("where it stands in the user's file") Span at,
        @Doc("instrument") String name,
        @Doc("calibration valid until") Datum<String> calibratedUntil) {}
