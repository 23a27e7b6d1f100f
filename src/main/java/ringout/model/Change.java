package ringout.model;

import java.util.List;
import ringout.text.Span;

/** A change on record. */
public record Change(
        @Doc("where it stands in the user's file") Span at,
        @Doc("change") String id,
        @Doc("rows touched") List<String> objects,
        @Doc("why") Datum<String> reason,
        @Doc("who") Datum<String> by,
        @Doc("when") Datum<String> date) {}
