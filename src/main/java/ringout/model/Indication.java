package ringout.model;

import ringout.text.Span;

/** What a person can see of a unit. */
public record Indication(
        @Doc("where it stands in the user's file") Span at,
        @Doc("what is seen") String shows,
        @Doc("what it means") Datum<String> meaning,
        @Doc("function or unit whose loss it tells") Datum<String> of) {}
