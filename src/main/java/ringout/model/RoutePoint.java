package ringout.model;

import java.util.List;
import ringout.text.Span;

/** A point a lead passes. */
public record RoutePoint(
        @Doc("where it stands in the user's file") Span at,
        @Doc("forward of the hub") Datum<Double> xMm,
        @Doc("right of the hub") Datum<Double> yMm,
        @Doc("above the hub") Datum<Double> zMm,

        @Doc("edge, hinge, hole, clamp, sweep, bend, carbon")
        List<PointFlag> flags,

        @Doc("hole or cover it passes") Datum<String> through,
        @Doc("bend radius here") Datum<Double> bendMm,
        @Doc("grommet or sleeve here") Datum<Boolean> guarded) {}
