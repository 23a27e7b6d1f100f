package ringout.check.signal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ringout.check.form.Check;
import ringout.check.form.CheckInfo;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.finding.Draft;
import ringout.finding.Severity;
import ringout.graph.signal.MotorDrive;
import ringout.graph.signal.MotorDrives;
import ringout.model.Datum;
import ringout.model.Spin;

/**
 * A propeller of the wrong hand for its motor.
 *
 * <p>Why it matters: it pushes air the wrong way: no lift, or thrust down, from one corner.
 *
 * <p>Condition: the hand of the propeller, as the direction it turns seen from above when it lifts, is not the wanted spin of its
 * rotor. The same holds for a pusher: its hand is given by the direction it turns seen from above.
 *
 * <p>Does not see: a propeller mounted upside down; the actual spin of the motor (S12).
 *
 * <p>Reference: frame table of the aircraft; common practice, no source.
 */
@CheckInfo(
        code = "S13",
        name = "propeller-hand",
        severity = Severity.S2,
        since = "0.1",
        needs = {"hand of each propeller", "wanted direction of each motor"})
public final class PropellerHand implements Check {
    @Override
    public void look(Situation at, Outcomes out) {
        List<String> unknown = new ArrayList<>();
        for (MotorDrive drive : MotorDrives.of(at.circuit())) {
            Datum<Spin> hand = drive.motor().propeller();
            Optional<Spin> wanted = drive.rotor().flatMap(rotor -> rotor.spin().known());
            if (hand.isNotApplicable()) {
                continue;
            }
            if (!hand.isKnown() || wanted.isEmpty()) {
                unknown.add(drive.motor().ref());
                continue;
            }
            out.looked();
            if (!hand.is(wanted.get())) {
                out.finding(draft(drive, hand, wanted.get()));
            }
        }
        if (!unknown.isEmpty()) {
            out.cannotTell(
                    "hand of the propeller or wanted direction at " + String.join(", ", unknown),
                    "read the mark on the blade",
                    2,
                    unknown.toArray(new String[0]));
        }
    }

    private static Draft draft(MotorDrive drive, Datum<Spin> hand, Spin wanted) {
        String name =
                drive.number().map(number -> "M" + number).orElse(drive.motor().ref());
        String fitted = hand.or(wanted).word();
        return Draft.of(
                        Severity.S2,
                        "propeller of the wrong hand: " + name + " turns " + wanted.word() + " and carries a " + fitted
                                + " propeller")
                .about(drive.motor().ref())
                .sum("propeller " + fitted + ", rotor wants " + wanted.word())
                .input(hand)
                .source("frame table")
                .why("it pushes air the wrong way: no lift from this corner")
                .meter("power off, propellers stopped: read the mark on the blade")
                .fix("fit a " + wanted.word() + " propeller on " + name)
                .at(drive.motor(), "propeller");
    }
}
