package ringout.graph.signal;

import java.util.Optional;
import ringout.graph.Circuit;
import ringout.model.Datum;
import ringout.model.Spin;

/**
 * Which way a motor really turns: its base direction, turned round by an odd permutation of its phases and again by the direction flag of its controller. Base is for phases A-U, B-V, C-W, seen from above.
 */
public final class ActualSpin {
    private ActualSpin() {}

    /** The direction; nothing when the base, a phase or the flag is not known. */
    public static Optional<Spin> of(Circuit circuit, MotorDrive drive) {
        Optional<Spin> base = base(circuit, drive);
        Optional<Integer> inversions = drive.phases().inversions();
        Optional<Boolean> flag = flag(circuit, drive);
        if (base.isEmpty() || inversions.isEmpty() || flag.isEmpty()) {
            return Optional.empty();
        }
        boolean turned = (inversions.get() % 2 == 1) != flag.get();
        return Optional.of(turned ? other(base.get()) : base.get());
    }

    /** The base direction of the motor type. */
    public static Optional<Spin> base(Circuit circuit, MotorDrive drive) {
        return circuit.wiring()
                .directory()
                .find(drive.motor().ref())
                .flatMap(unit ->
                        circuit.wiring().directory().type(unit).baseSpin().known());
    }

    /** The direction flag of the controller; a controller without such a flag is marked n/a and counts as not reversed. */
    public static Optional<Boolean> flag(Circuit circuit, MotorDrive drive) {
        return drive.controller().flatMap(unit -> {
            Datum<Boolean> flag = circuit.wiring().directory().unit(unit).reversed();
            return flag.isNotApplicable() ? Optional.of(false) : flag.known();
        });
    }

    /** The other direction. */
    public static Spin other(Spin spin) {
        return spin == Spin.CW ? Spin.CCW : Spin.CW;
    }
}
