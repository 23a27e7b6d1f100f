package ringout.model;

import java.util.List;
import ringout.text.Span;

/** A test on the plan. */
public record PlannedTest(
        @Doc("where it stands in the user's file") Span at,
        @Doc("test") String id,
        @Doc("ohms, volts, look, function") Datum<String> kind,
        @Doc("pins it uses") List<String> pins,
        @Doc("state it is made in") Datum<String> state,
        @Doc("step it belongs to") Datum<String> step,
        @Doc("expected reading") Datum<String> expected) {}
