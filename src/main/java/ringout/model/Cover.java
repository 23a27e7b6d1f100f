package ringout.model;

import java.util.List;
import ringout.text.Span;

/** A lid and what it hides. */
public record Cover(
        @Doc("where it stands in the user's file") Span at,
        @Doc("lid") String name,
        @Doc("units, plugs and joints under it") List<String> hides,

        @Doc("plugs and pins under it that are still reached through a hole")
        List<String> reachableThrough,

        @Doc("minutes off and on again") Datum<Double> minutes,
        @Doc("covers that must come off first") List<String> under,
        @Doc("units fitted on it") List<String> carries) {}
