package ringout.model;

import java.util.List;
import ringout.text.Span;

/** What the connections are carried by. */
public record Airframe(
        @Doc("where it stands in the user's file") Span at,
        @Doc("hexacopter, coaxial octocopter, fixed wing") Datum<String> kind,
        @Doc("where the frame table comes from") Datum<String> conventionSource,
        @Doc("rotor margin must hold yaw") Datum<Boolean> yawMustHold,
        @Doc("rotor table") List<Rotor> rotors,
        @Doc("control surface table") List<Surface> surfaces,
        @Doc("weights to check") List<Weight> weights,
        @Doc("horizontal Earth field in microtesla") Datum<Double> earthFieldUt,
        @Doc("planned mission") Datum<Double> missionMin,
        @Doc("reserve asked for") Datum<Double> missionReserveMin,
        @Doc("lowest temperature of the packs in flight") Datum<Double> coldestC,
        @Doc("current loops near the compass") List<CurrentLoop> loops,
        @Doc("lids and what they hide") List<Cover> covers,
        @Doc("zones with material and temperature") List<Zone> zones,
        @Doc("holes that leads pass") List<Hole> holes,
        @Doc("switch or plug that isolates the packs") List<String> isolator,

        @Doc("plugs of the packs in the order they are made")
        List<String> plugOrder) {}
