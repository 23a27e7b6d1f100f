package ringout.model;

import ringout.text.Span;

/** A signature. */
public record Signature(
        @Doc("where it stands in the user's file") Span at,
        @Doc("what is signed") String item,
        @Doc("made, inspected, released") Datum<String> role,
        @Doc("who") Datum<String> by,
        @Doc("when") Datum<String> date,

        @Doc("mark of the list it was signed against, first eight digits")
        Datum<String> revision,

        @Doc("page it was signed on") Datum<String> page) {}
