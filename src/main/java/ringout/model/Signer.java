package ringout.model;

import ringout.text.Span;

/** Who the initials of the signatures stand for. */
public record Signer(
        @Doc("where it stands in the user's file") Span at,
        @Doc("initials, as the signatures say") String initials,
        @Doc("full name") Datum<String> fullName,
        @Doc("licence or number") Datum<String> licence) {}
