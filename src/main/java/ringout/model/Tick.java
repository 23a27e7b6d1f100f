package ringout.model;

import ringout.text.Span;

/** One tick of the pen at one end of a lead: half-plugged is a state, so each end has its own. */
public record Tick(
        @Doc("where it stands in the user's file") Span at,
        @Doc("lead, as its label says") String lead,
        @Doc("from or to, or the plug it was ticked at") Datum<String> end,
        @Doc("made, plugged, rung out, inspected") Datum<String> what,
        @Doc("who") Datum<String> by,
        @Doc("when") Datum<String> date,

        @Doc("mark of the list it was ticked against, first eight digits")
        Datum<String> revision,

        @Doc("free remark") Datum<String> note) {}
