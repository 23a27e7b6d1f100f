package ringout.model;

import ringout.text.Span;

/** A remark on record that belongs to no row of its own. */
public record RecordNote(
        @Doc("where it stands in the user's file") Span at,
        @Doc("what it is about: lead, unit, plug, page") String item,
        @Doc("the remark") Datum<String> text,
        @Doc("who") Datum<String> by,
        @Doc("when") Datum<String> date,

        @Doc("mark of the list it was written against, first eight digits")
        Datum<String> revision) {}
