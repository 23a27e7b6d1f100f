package ringout.compare.judge;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import ringout.compare.difference.Difference;
import ringout.compare.difference.Kind;
import ringout.graph.Circuit;
import ringout.graph.Wire;
import ringout.graph.signal.MotorDrive;
import ringout.graph.signal.MotorDrives;

/** Number and direction of every motor whose pulse, phases, controller or output is touched. */
final class MotorRetests {
    private final Circuit circuit;
    private final List<MotorDrive> drives;

    MotorRetests(Circuit circuit) {
        this.circuit = circuit;
        this.drives = circuit.wiring().aircraft().airframe().rotors().isEmpty() ? List.of() : MotorDrives.of(circuit);
    }

    List<Retest> of(Difference difference, Set<Wire> wires) {
        List<Retest> tests = new ArrayList<>();
        for (MotorDrive drive : drives) {
            if (wires(drive, wires) || units(drive, difference)) {
                String number = drive.number()
                        .map(n -> "motor " + n)
                        .orElse(drive.motor().ref());
                String spin = drive.rotor()
                        .flatMap(rotor -> rotor.spin().known())
                        .map(way -> ", turns " + way.word() + " seen from above")
                        .orElse("");
                tests.add(Retest.of(
                        Retest.Kind.MOTOR, "command " + number + ": it alone turns" + spin + ", propellers off"));
            }
        }
        return tests;
    }

    private boolean wires(MotorDrive drive, Set<Wire> wires) {
        Set<Integer> nets = new HashSet<>();
        drive.pulsePin().ifPresent(pin -> nets.add(circuit.nets().of(pin)));
        drive.phaseWires().forEach(wire -> nets.add(circuit.nets().of(wire.fromPin())));
        return wires.stream().anyMatch(wire -> nets.contains(circuit.nets().of(wire.fromPin())));
    }

    /** A setting or another box of the chain; a label or a place is none. */
    private boolean units(MotorDrive drive, Difference difference) {
        boolean counts = difference.kind() == Kind.SETTING
                || difference.kind() == Kind.FIRMWARE
                || difference.kind() == Kind.SERIAL
                || difference.kind() == Kind.UNIT_TYPE
                || difference.kind() == Kind.RATE;
        Set<String> units = difference.touched().unitsThere();
        boolean driven = drive.controller()
                .map(unit -> units.contains(circuit.wiring().directory().name(unit)))
                .orElse(false);
        boolean commanded = drive.drivers().stream()
                .anyMatch(pin -> units.contains(
                        circuit.wiring().directory().name(circuit.wiring().unitOf(pin))));
        return counts && (driven || commanded || units.contains(drive.motor().ref()));
    }
}
