package ringout.model;

import java.util.List;
import ringout.text.Span;

/** A change on record. */
public record Change(
        @Doc("where it stands in the user's file") Span at,
        @Doc("change") String id,
        @Doc("what was changed") Datum<String> what,
        @Doc("rows touched") List<String> objects,
        @Doc("why") Datum<String> reason,
        @Doc("who") Datum<String> by,
        @Doc("when") Datum<String> date,
        @Doc("checks that were run again") List<String> checks,
        @Doc("tests to repeat") List<String> tests,
        @Doc("signatures that lapse by it") List<String> lapses) {}
