package ringout.model;

import java.util.List;
import ringout.text.Span;

/** Outputs driven by one timer. */
public record TimerGroup(
        @Doc("where it stands in the user's file") Span at,
        @Doc("name of the timer") String name,
        @Doc("outputs it drives") List<String> outputs) {}
