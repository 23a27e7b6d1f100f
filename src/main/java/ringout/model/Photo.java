package ringout.model;

import ringout.text.Span;

/** A photo on record. */
public record Photo(
        @Doc("where it stands in the user's file") Span at,
        @Doc("joint or unit") String item,
        @Doc("file") Datum<String> file,
        @Doc("hash of the file") Datum<String> hash,
        @Doc("when") Datum<String> date,
        @Doc("who") Datum<String> by) {}
