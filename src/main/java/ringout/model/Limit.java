package ringout.model;

import ringout.text.Span;

/** A threshold of this project. */
public record Limit(
        @Doc("where it stands in the user's file") Span at,
        @Doc("name of the threshold") String name,
        @Doc("value") Datum<Double> value,
        @Doc("why it differs") Datum<String> reason) {}
