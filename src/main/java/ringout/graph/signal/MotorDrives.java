package ringout.graph.signal;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import ringout.graph.Circuit;
import ringout.graph.Directory;
import ringout.graph.Wire;
import ringout.graph.Wiring;
import ringout.model.Datum;
import ringout.model.PinRole;
import ringout.model.Rotor;
import ringout.model.Unit;
import ringout.model.UnitKind;

/**
 * The way from a controller's output to every motor: output, boards and splices, pulse input of the speed controller, its
 * phases, motor. Motors are units of kind "motor" and units the frame table names.
 */
public final class MotorDrives {
    private final Circuit circuit;
    private final Wiring wiring;
    private final List<MotorDrive> all = new ArrayList<>();

    private MotorDrives(Circuit circuit) {
        this.circuit = circuit;
        this.wiring = circuit.wiring();
        Map<String, Rotor> rotors = new HashMap<>();
        for (Rotor rotor : wiring.aircraft().airframe().rotors()) {
            rotor.motor().known().ifPresent(name -> rotors.put(fold(name), rotor));
        }
        Directory directory = wiring.directory();
        for (int unit = 0; unit < wiring.aircraft().units().size(); unit++) {
            Optional<Rotor> rotor = Optional.ofNullable(rotors.get(fold(directory.name(unit))));
            boolean motor = directory.type(unit).kind().is(UnitKind.MOTOR);
            if (circuit.aboard(unit) && (motor || rotor.isPresent())) {
                all.add(drive(unit, rotor));
            }
        }
    }

    /** The drives of a circuit, found once, in the order of the units. */
    public static List<MotorDrive> of(Circuit circuit) {
        return Collections.unmodifiableList(circuit.know(MotorDrives.class, MotorDrives::new).all);
    }

    private static String fold(String name) {
        return name.toUpperCase(Locale.ROOT);
    }

    private MotorDrive drive(int motor, Optional<Rotor> rotor) {
        List<Wire> wires = new ArrayList<>();
        List<PhaseOrder.Pair> pairs = new ArrayList<>();
        int controller = -1;
        for (int pin = wiring.firstPin(motor); pin < wiring.endPin(motor); pin++) {
            for (int w : wiring.is(pin, PinRole.PHASE) ? wiring.wiresAt(pin) : new int[0]) {
                Wire wire = wiring.wires().get(w);
                int far = wire.otherPin(pin);
                if (wiring.is(far, PinRole.PHASE) && circuit.mated(wire)) {
                    wires.add(wire);
                    pairs.add(new PhaseOrder.Pair(letter(far), letter(pin)));
                    controller = controller < 0 ? wiring.unitOf(far) : controller;
                }
            }
        }
        pairs.sort((a, b) -> a.controller().compareTo(b.controller()));
        Unit unit = wiring.directory().unit(motor);
        Optional<Integer> pulse = controller < 0 ? pulsePin(motor) : pulsePin(controller);
        return new MotorDrive(
                rotor,
                unit,
                controller < 0 ? Optional.empty() : Optional.of(controller),
                new PhaseOrder(List.copyOf(pairs)),
                List.copyOf(wires),
                pulse,
                pulse.map(this::drivers).orElse(List.of()));
    }

    private String letter(int pin) {
        if (wiring.pin(pin).name() instanceof Datum.Unknown) {
            return PhaseOrder.UNKNOWN;
        }
        return wiring.pin(pin).name().or(wiring.pin(pin).number());
    }

    private Optional<Integer> pulsePin(int unit) {
        for (int pin = wiring.firstPin(unit); pin < wiring.endPin(unit); pin++) {
            if (wiring.is(pin, PinRole.PULSE_IN)) {
                return Optional.of(pin);
            }
        }
        return Optional.empty();
    }

    private List<Integer> drivers(int pin) {
        return NetRoles.of(circuit).pins(circuit.nets().of(pin), NetRoles.bits(PinRole.PULSE_OUT));
    }
}
