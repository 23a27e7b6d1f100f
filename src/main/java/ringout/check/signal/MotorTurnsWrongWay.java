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
import ringout.graph.Trail;
import ringout.graph.signal.ActualSpin;
import ringout.graph.signal.MotorDrive;
import ringout.graph.signal.MotorDrives;
import ringout.model.Spin;
import ringout.model.Unit;

/**
 * A motor that turns the wrong way, by its phases or its direction flag.
 *
 * <p>Why it matters: no electrical symptom at all; thrust or yaw from one corner is wrong at take-off.
 *
 * <p>Formula: actual spin = base of the motor type x (-1)^(inversions of the phase permutation) x (-1)^(direction flag), against the
 * frame table. Leads and flag both reversed cancel.
 *
 * <p>Does not see: a motor whose base direction differs from its type; an unknown base is told with its test.
 *
 * <p>Reference: parity of a permutation; common practice of three-phase motors.
 */
@CheckInfo(
        code = "S12",
        name = "motor-turns-wrong-way",
        severity = Severity.S2,
        since = "0.1",
        needs = {"base direction of the motor type", "direction flag of the controller", "wanted direction"})
public final class MotorTurnsWrongWay implements Check {
    @Override
    public void look(Situation at, Outcomes out) {
        List<String> noBase = new ArrayList<>();
        List<String> noFlag = new ArrayList<>();
        List<String> noLetter = new ArrayList<>();
        for (MotorDrive drive : MotorDrives.of(at.circuit())) {
            if (!drive.phases().lettered()) {
                noLetter.add(drive.motor().ref());
            } else if (!drive.phaseWires().isEmpty() && !drive.phases().complete()) {
                out.finding(open(drive));
            } else if (drive.phases().complete()) {
                look(at, out, drive, noBase, noFlag);
            }
        }
        if (!noLetter.isEmpty()) {
            out.cannotTell(
                    "phase letters at " + String.join(", ", noLetter) + " and its controller",
                    "look at the case and the maker's drawing",
                    3,
                    noLetter.toArray(new String[0]));
        }
        if (!noBase.isEmpty()) {
            String motors = String.join(", ", noBase);
            out.cannotTell(
                    "base or wanted direction of " + motors,
                    "bump it, propellers off",
                    4,
                    noBase.toArray(new String[0]));
        }
        if (!noFlag.isEmpty()) {
            String units = String.join(", ", noFlag);
            out.cannotTell("direction flag of " + units, "read its settings", 4, noFlag.toArray(new String[0]));
        }
    }

    private static void look(Situation at, Outcomes out, MotorDrive drive, List<String> noBase, List<String> noFlag) {
        Optional<Spin> wanted = drive.rotor().flatMap(rotor -> rotor.spin().known());
        if (wanted.isEmpty() || ActualSpin.base(at.circuit(), drive).isEmpty()) {
            noBase.add(drive.motor().ref());
            return;
        }
        Optional<Spin> actual = ActualSpin.of(at.circuit(), drive);
        if (actual.isEmpty()) {
            noFlag.add(controller(at, drive).ref());
            return;
        }
        out.looked();
        if (!actual.equals(wanted)) {
            out.finding(draft(at, drive, actual.get(), wanted.get()));
        }
    }

    private static Unit controller(Situation at, MotorDrive drive) {
        return drive.controller().map(unit -> at.directory().unit(unit)).orElse(drive.motor());
    }

    private static Draft open(MotorDrive drive) {
        String name = name(drive);
        Draft draft = Draft.of(
                        Severity.S2,
                        "phases incomplete: " + name + " has "
                                + drive.phases().pairs().size() + " of three phases joined")
                .about(drive.motor().ref())
                .sum("joined: " + drive.phases().words())
                .why("the motor jerks, does not start and overheats its controller")
                .meter("power off: the three phase pairs of the motor read equal within 5 %")
                .fix("join each phase of " + drive.motor().ref() + " to one phase of its controller")
                .seen(drive.motor());
        drive.phaseWires().forEach(wire -> draft.at(wire.lead()));
        return draft;
    }

    private static Draft draft(Situation at, MotorDrive drive, Spin actual, Spin wanted) {
        Unit controller = controller(at, drive);
        int inversions = drive.phases().inversions().orElse(0);
        boolean flag = ActualSpin.flag(at.circuit(), drive).orElse(false);
        String base = ActualSpin.base(at.circuit(), drive).map(Spin::word).orElse("?");
        Draft draft = Draft.of(
                        Severity.S2,
                        "motor turns the wrong way: " + name(drive) + " turns " + actual.word() + ", wants "
                                + wanted.word())
                .about(drive.motor().ref())
                .path(at.circuit()
                        .trail(
                                drive.phaseWires().get(0).fromPin(),
                                drive.phaseWires().get(0).toPin())
                        .orElse(Trail.NONE))
                .sum("base " + base + ", phases " + drive.phases().words() + " (" + inversions
                        + (inversions == 1 ? " inversion" : " inversions") + "), direction flag "
                        + (flag ? "on" : "off")
                        + ": turns " + actual.word())
                .source("frame table, "
                        + at.aircraft().airframe().conventionSource().or("no source given"))
                .why("no electrical symptom; thrust and yaw of one corner are wrong at take-off")
                .meter("propellers off: bump " + name(drive) + " and look from above")
                .fix((flag
                                ? "clear the direction flag of " + controller.ref()
                                : "exchange two phases at " + drive.motor().ref())
                        + (flag ? "" : ", or set the direction flag of " + controller.ref()))
                .explains("S11")
                .at(controller, "reversed")
                .seen(drive.motor())
                .cause(drive.motor().ref() + " spin");
        drive.phaseWires().forEach(wire -> draft.at(wire.lead()));
        return draft;
    }

    private static String name(MotorDrive drive) {
        return drive.number().map(number -> "M" + number).orElse(drive.motor().ref());
    }
}
