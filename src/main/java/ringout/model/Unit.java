package ringout.model;

import java.util.List;
import ringout.text.Span;

/** A box aboard. */
public record Unit(
        @Doc("where it stands in the user's file") Span at,
        @Doc("reference, as ends of leads say") String ref,
        @Doc("unit type") String type,
        @Doc("what it is here") Datum<String> what,
        @Doc("zone it sits in") Datum<String> zone,
        @Doc("forward of the hub") Datum<Double> xMm,
        @Doc("right of the hub") Datum<Double> yMm,
        @Doc("above the hub") Datum<Double> zMm,

        @Doc("bearing of its arrow from the nose, right positive")
        Datum<Double> headingDeg,

        @Doc("roll of its arrow") Datum<Double> rollDeg,
        @Doc("orientation as set in the controller") Datum<String> orientationSetting,
        @Doc("serial number") Datum<String> serial,
        @Doc("firmware") Datum<String> firmware,
        @Doc("index set in a speed controller") Datum<Integer> index,
        @Doc("direction flag of a speed controller") Datum<Boolean> reversed,

        @Doc("throttle calibration of a speed controller as on record: 1000-2000")
        Datum<String> throttleRange,

        @Doc("hand of the propeller") Datum<Spin> propeller,
        @Doc("propeller pushes from below") Datum<Boolean> pusher,
        @Doc("motor number at its place") Datum<Integer> motor,
        @Doc("left, right, M3") Datum<String> positionRole,

        @Doc("what the documents call it: receiver 1, compass 1, battery A")
        Datum<String> instance,

        @Doc("which number the configuration gives it") Datum<String> configuredInstance,

        @Doc("satellite receiver: the other receiver of a two-antenna heading pair")
        Datum<String> headingWith,

        @Doc("aboard but not in use") Datum<Boolean> stowed,
        @Doc("works without any lead") Datum<Boolean> standAlone,
        @Doc("comes off in use") Datum<Boolean> removable,
        @Doc("units that do the same job") List<String> redundantWith,
        @Doc("bus and serial settings") List<PortSetting> ports,
        @Doc("functions of its outputs") List<OutputSetting> outputs,
        @Doc("leads its current sensor embraces") List<String> senses,
        @Doc("pack: measured voltage at rest") Datum<Double> restV,
        @Doc("pack: cycles so far") Datum<Integer> cycles,

        @Doc("pack: capacity it still has, of the one on its label")
        Datum<Double> healthPercent,

        @Doc("part of its rated output it can give where it sits: cooling, altitude; 0 to 1")
        Datum<Double> derating,

        @Doc("feed unfused by design, declared") Datum<Boolean> unfused,
        @Doc("voltage scale as configured") Datum<Double> voltScaleSet,
        @Doc("current scale as configured") Datum<Double> ampScaleSet,
        @Doc("configured offset forward") Datum<Double> leverXMm,
        @Doc("configured offset right") Datum<Double> leverYMm,
        @Doc("configured offset up") Datum<Double> leverZMm,
        @Doc("capacitance added at its supply input") Datum<Double> extraMicrofarad,
        @Doc("photo file") Datum<String> photo,

        @Doc("what this unit draws where it differs from its type")
        List<LoadSpec> loads,

        @Doc("what the unit says of itself") AsRead asRead,
        @Doc("free remark") Datum<String> note) {
    // Its name is enough to tell it from the others, and much quicker than all its fields.
    @Override
    public int hashCode() {
        return ref.hashCode();
    }
}
