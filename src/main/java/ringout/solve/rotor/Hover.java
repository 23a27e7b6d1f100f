package ringout.solve.rotor;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import ringout.graph.Gap;
import ringout.model.Airframe;
import ringout.model.Datum;
import ringout.model.Rotor;
import ringout.model.Spin;
import ringout.model.Weight;

/**
 * The hover margin of an airframe at the worst of its declared weights, with rotors lost. Rotors are numbered as in the rotor
 * table. A centre of gravity that nobody has given is taken at the hub.
 */
public final class Hover {
    private static final double MM = 1000;

    private final boolean holdYaw;
    private final List<Thruster> rotors = new ArrayList<>();
    private final List<Lifted> weights = new ArrayList<>();
    private final List<Gap> missing = new ArrayList<>();
    private final Map<BitSet, OptionalDouble> known = new HashMap<>();

    /** The margins of an airframe, with yaw held or given up. */
    public Hover(Airframe airframe, boolean holdYaw) {
        this.holdYaw = holdYaw;
        airframe.rotors().forEach(this::rotor);
        if (airframe.weights().isEmpty()) {
            missing.add(new Gap("weight", "the aircraft"));
        }
        airframe.weights().forEach(this::weight);
    }

    private void rotor(Rotor rotor) {
        String name = name(rotor);
        double bearing = need(rotor.bearingDeg(), "bearing", name);
        double radius = need(rotor.radiusMm(), "distance from the hub", name);
        double max = need(rotor.thrustMaxKgf(), "largest thrust", name);
        if (rotor.spin().isMissing() && holdYaw) {
            missing.add(new Gap("turning direction", name));
        }
        rotors.add(Thruster.at(
                rotor.number().or(rotors.size() + 1),
                bearing,
                radius,
                rotor.spin().is(Spin.CW),
                max));
    }

    private void weight(Weight weight) {
        String name = "weight " + weight.name();
        double kg = need(weight.kg(), "mass", name);
        weights.add(new Lifted(kg, offset(weight.cgXMm(), name), offset(weight.cgYMm(), name)));
    }

    private double offset(Datum<Double> mm, String name) {
        if (mm instanceof Datum.Unknown) {
            missing.add(new Gap("centre of gravity", name));
        }
        return mm.or(0.0) / MM;
    }

    private double need(Datum<Double> value, String datum, String of) {
        if (!value.isKnown()) {
            missing.add(new Gap(datum, of));
        }
        return value.or(0.0);
    }

    /** Name of a rotor: its motor, else its number. */
    public static String name(Rotor rotor) {
        return rotor.motor()
                .or(rotor.number().known().map(number -> "M" + number).orElse("a rotor"));
    }

    /** Data without which nothing can be said. */
    public List<Gap> missing() {
        return List.copyOf(missing);
    }

    /** The largest thrust of any rotor in kgf. */
    public double largestKgf() {
        return rotors.stream().mapToDouble(Thruster::maxKgf).max().orElse(0);
    }

    /** The margin in kgf without some rotors at the worst weight; nothing where no balance exists. */
    public OptionalDouble without(BitSet lost) {
        OptionalDouble margin = known.get(lost);
        if (margin == null) {
            margin = solve(lost);
            known.put((BitSet) lost.clone(), margin);
        }
        return margin;
    }

    private OptionalDouble solve(BitSet lost) {
        List<Thruster> turning = new ArrayList<>();
        for (int i = 0; i < rotors.size(); i++) {
            if (!lost.get(i)) {
                turning.add(rotors.get(i));
            }
        }
        OptionalDouble worst = OptionalDouble.empty();
        for (Lifted weight : weights) {
            OptionalDouble margin = HoverMargin.of(turning, weight, holdYaw);
            if (margin.isEmpty()) {
                return margin;
            }
            if (worst.isEmpty() || margin.getAsDouble() < worst.getAsDouble()) {
                worst = margin;
            }
        }
        return worst;
    }
}
