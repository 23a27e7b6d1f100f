package ringout.model;

import ringout.text.Span;

/** What must be true before a unit is powered. */
public record Prerequisite(
        @Doc("where it stands in the user's file") Span at,
        @Doc("condition") String what,
        @Doc("severity when broken") Datum<String> severity) {}
