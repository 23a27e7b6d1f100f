package ringout.graph.signal;

import java.util.List;
import java.util.Optional;
import ringout.graph.Wire;
import ringout.model.Rotor;
import ringout.model.Unit;

/**
 * One motor of the frame table and what drives it.
 *
 * @param rotor its row in the frame table, if it has one
 * @param motor the motor unit
 * @param controller number of the speed controller its phases go to, if any
 * @param phases how the phases meet
 * @param phaseWires the conductors of the phases
 * @param pulsePin the pulse input of the controller, if it has one
 * @param drivers output pins that drive this input, through boards and splices
 */
public record MotorDrive(
        Optional<Rotor> rotor,
        Unit motor,
        Optional<Integer> controller,
        PhaseOrder phases,
        List<Wire> phaseWires,
        Optional<Integer> pulsePin,
        List<Integer> drivers) {

    /** The motor number: of the frame table, else as the unit says. */
    public Optional<Integer> number() {
        return rotor.flatMap(r -> r.number().known()).or(() -> motor.motor().known());
    }
}
