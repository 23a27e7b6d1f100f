package ringout.check.signal;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import ringout.check.form.Check;
import ringout.check.form.CheckInfo;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.finding.Draft;
import ringout.finding.Severity;
import ringout.graph.signal.ActualSpin;
import ringout.graph.signal.MotorDrive;
import ringout.graph.signal.MotorDrives;
import ringout.model.Level;
import ringout.model.Rotor;
import ringout.model.Spin;

/**
 * A pattern of turning directions that cannot fly: torques that do not cancel, equal neighbours, equal coaxial pairs.
 *
 * <p>Why it matters: without balance the aircraft turns round its mast, or has no yaw control.
 *
 * <p>Condition: the actual spins (S12) where known, else the frame table: their sum is not zero, two neighbours by bearing on a flat
 * ring are equal, or the two rotors of one arm are equal. A frame table with a source is legal as it stands: then only motors
 * that turn against the table count.
 *
 * <p>Does not see: differing thrust or propellers of differing size.
 *
 * <p>Reference: common practice, no source; the frame table of the aircraft.
 */
@CheckInfo(
        code = "S11",
        name = "rotation-pattern",
        severity = Severity.S2,
        since = "0.1",
        needs = {"actual direction of each motor"})
public final class RotationPattern implements Check {
    private record Turning(MotorDrive drive, Rotor rotor, Spin spin) {}

    @Override
    public void look(Situation at, Outcomes out) {
        List<Turning> ring = new ArrayList<>();
        List<String> open = new ArrayList<>();
        boolean asTable = true;
        for (MotorDrive drive : MotorDrives.of(at.circuit())) {
            Optional<Rotor> rotor = drive.rotor();
            Optional<Spin> wanted = rotor.flatMap(r -> r.spin().known());
            Optional<Spin> spin = ActualSpin.of(at.circuit(), drive).or(() -> wanted);
            if (rotor.isEmpty() || spin.isEmpty() || !rotor.get().bearingDeg().isKnown()) {
                open.add(drive.motor().ref());
                continue;
            }
            asTable &= spin.equals(wanted);
            ring.add(new Turning(drive, rotor.get(), spin.get()));
        }
        if (ring.size() + open.size() < 2) {
            return;
        }
        if (!open.isEmpty()) {
            out.cannotTell(
                    "turning direction and bearing of " + String.join(", ", open),
                    "fill in the frame table from the controller's frame setting",
                    5,
                    open.toArray(new String[0]));
            return;
        }
        out.looked();
        boolean sourced = at.aircraft().airframe().conventionSource().isKnown();
        List<String> wrong = sourced && asTable ? List.of() : wrong(ring);
        if (!wrong.isEmpty()) {
            out.finding(draft(ring, wrong));
        }
    }

    private static List<String> wrong(List<Turning> ring) {
        List<String> wrong = new ArrayList<>();
        long clockwise =
                ring.stream().filter(turning -> turning.spin() == Spin.CW).count();
        if (2 * clockwise != ring.size()) {
            wrong.add(clockwise + " CW against " + (ring.size() - clockwise) + " CCW");
        }
        List<Turning> sorted = ring.stream()
                .sorted(Comparator.comparing((Turning turning) ->
                                turning.rotor().bearingDeg().or(0.0))
                        .thenComparing(turning -> turning.rotor().level().or(Level.SINGLE)))
                .toList();
        boolean coaxial =
                ring.stream().anyMatch(turning -> turning.rotor().level().or(Level.SINGLE) != Level.SINGLE);
        for (int i = 0; i < sorted.size(); i++) {
            Turning here = sorted.get(i);
            Turning next = sorted.get((i + 1) % sorted.size());
            boolean pair = here.rotor().bearingDeg().equals(next.rotor().bearingDeg());
            if (here.spin() == next.spin() && (pair || !coaxial)) {
                wrong.add(name(here) + " and " + name(next) + " both "
                        + here.spin().word());
            }
        }
        return wrong;
    }

    private static String name(Turning turning) {
        return turning.drive()
                .number()
                .map(number -> "M" + number)
                .orElse(turning.drive().motor().ref());
    }

    private static Draft draft(List<Turning> ring, List<String> wrong) {
        Draft draft = Draft.of(Severity.S2, "rotation pattern: " + String.join(", ", wrong))
                .about("rotors")
                .sum(String.join("; ", wrong))
                .why("the aircraft turns round its mast or cannot be steered in yaw")
                .meter("propellers off: bump each motor and look from above")
                .fix("turn round the motors that differ from the frame table");
        for (Turning turning : ring) {
            boolean against =
                    turning.rotor().spin().isKnown() && !turning.rotor().spin().is(turning.spin());
            if (against) {
                draft.cause(turning.drive().motor().ref() + " spin")
                        .seen(turning.drive().motor());
            }
        }
        return draft;
    }
}
