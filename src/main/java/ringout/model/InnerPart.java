package ringout.model;

import ringout.text.Span;

/** A two-terminal part inside a unit type, between two points inside. */
public record InnerPart(
        @Doc("where it stands in the user's file") Span at,
        @Doc("name of the part") String name,
        @Doc("what the part is") Datum<PartKind> kind,

        @Doc("point or pin it comes from; of a source its minus")
        String from,

        @Doc("point or pin it goes to; of a source its plus")
        String to,

        @Doc("return point of a regulator") Datum<String> zero,
        @Doc("values") PartRating rating,
        @Doc("free remark") Datum<String> note) {}
