package ringout.check.signal;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import ringout.check.form.Check;
import ringout.check.form.CheckInfo;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.finding.Draft;
import ringout.finding.Severity;
import ringout.graph.Trail;
import ringout.graph.signal.MotorDrive;
import ringout.graph.signal.MotorDrives;
import ringout.model.Datum;
import ringout.model.Lead;
import ringout.model.Rotor;
import ringout.model.Unit;
import ringout.model.shape.Scalars;

/**
 * A motor driven by the wrong output, or sitting at the wrong bearing.
 *
 * <p>Why it matters: the controller pushes up one corner and another rises: the aircraft turns over at take-off.
 *
 * <p>Condition: the output that drives a speed controller, through boards and splices, is not the one the frame table gives for the
 * bearing of its motor; or the motor unit sits more than 15 degrees from the bearing of the table. A function set on the output
 * ("motor 3") counts before the number of the output. The frame table is data of the project, several conventions exist.
 *
 * <p>Does not see: controllers driven over a bus (A07), a motor that turns the wrong way (S12).
 *
 * <p>Reference: the frame table of the aircraft and its source.
 */
@CheckInfo(
        code = "S10",
        name = "motor-order",
        severity = Severity.S2,
        since = "0.1",
        needs = {"frame table", "output of each motor", "bearing of each motor"})
public final class MotorOrder implements Check {
    private static final double TOLERANCE_DEG = 15;

    /** A motor and the channel that drives it. */
    private record Driven(MotorDrive drive, String wanted, String got, int output) {}

    @Override
    public void look(Situation at, Outcomes out) {
        List<Driven> wrong = new ArrayList<>();
        List<String> untabled = new ArrayList<>();
        for (MotorDrive drive : MotorDrives.of(at.circuit())) {
            place(out, drive);
            if (drive.drivers().size() == 1) {
                if (drive.rotor().isEmpty()) {
                    untabled.add(drive.motor().ref());
                } else {
                    channel(at, out, drive, wrong);
                }
            }
        }
        if (!untabled.isEmpty()) {
            out.cannotTell(
                    "frame table: motor number and output for " + String.join(", ", untabled),
                    "copy it from the controller's frame setting",
                    5,
                    untabled.toArray(new String[0]));
        }
        if (!wrong.isEmpty()) {
            out.finding(draft(at, wrong));
        }
    }

    private static void place(Outcomes out, MotorDrive drive) {
        Datum<Double> bearing = drive.rotor().map(Rotor::bearingDeg).orElse(Datum.notAsked());
        Unit motor = drive.motor();
        if (bearing instanceof Datum.Unknown) {
            out.cannotTell("bearing of " + motor.ref(), "copy it from the frame setting", 2, motor.ref());
        }
        if (bearing.isKnown() && (motor.xMm() instanceof Datum.Unknown || motor.yMm() instanceof Datum.Unknown)) {
            out.cannotTell("place of " + motor.ref(), "measure it from the hub", 3, motor.ref());
        }
        if (!bearing.isKnown() || !motor.xMm().isKnown() || !motor.yMm().isKnown()) {
            return;
        }
        double sits = Math.toDegrees(Math.atan2(motor.yMm().or(0.0), motor.xMm().or(0.0)));
        double off = Math.abs(Math.IEEEremainder(sits - bearing.or(0.0), 360));
        out.looked();
        if (off > TOLERANCE_DEG) {
            String angle = Scalars.number(Math.rint(sits));
            String table = Scalars.number(bearing.or(0.0));
            out.finding(Draft.of(
                            Severity.S2,
                            "motor order: " + motor.ref() + " sits at bearing " + angle + ", the frame table says "
                                    + table)
                    .about(motor.ref())
                    .sum("bearing from x, y: " + angle + " degrees, table " + table)
                    .judged(sits, bearing.or(0.0), "degrees", "frame table")
                    .input(motor.xMm())
                    .why("the controller pushes the wrong corner up")
                    .fix("put " + motor.ref() + " at bearing " + table + ", or mend the frame table")
                    .at(motor, "place"));
        }
    }

    private static void channel(Situation at, Outcomes out, MotorDrive drive, List<Driven> wrong) {
        int output = drive.drivers().get(0);
        Optional<String> got = channel(at, output);
        Optional<String> wanted = drive.rotor()
                .flatMap(rotor -> rotor.output() instanceof Datum.Unknown
                        ? Optional.empty()
                        : rotor.output().known().or(() -> rotor.number().known().map(String::valueOf)));
        if (got.isEmpty()) {
            String name = at.wiring().name(output);
            out.cannotTell("number of output " + name, "look it up in the controller's pin-out", 3, name);
        } else if (wanted.isEmpty()) {
            String motor = drive.motor().ref();
            out.cannotTell("output for " + motor + " in the frame table", "copy it from the frame setting", 5, motor);
        } else {
            out.looked();
            if (!got.get().equalsIgnoreCase(wanted.get())) {
                wrong.add(new Driven(drive, wanted.get(), got.get(), output));
            }
        }
    }

    /** The channel of an output: the motor it is set to, else its number. */
    private static Optional<String> channel(Situation at, int output) {
        Datum<String> name = at.wiring().pin(output).output();
        Optional<String> set = at.wiring().unit(output).outputs().stream()
                .filter(setting -> name.is(setting.output()))
                .flatMap(setting -> setting.function().known().stream())
                .filter(function -> function.toLowerCase(Locale.ROOT).matches("motor\\s*\\d+"))
                .map(function -> function.replaceAll("\\D", ""))
                .findFirst();
        return set.or(name::known);
    }

    private static Draft draft(Situation at, List<Driven> wrong) {
        List<String> motors =
                wrong.stream().map(driven -> driven.drive().motor().ref()).toList();
        List<String> words = wrong.stream().map(MotorOrder::words).toList();
        Draft draft = Draft.of(Severity.S2, "motor order: " + String.join(", ", words))
                .about(motors)
                .sum(String.join(
                        "; ",
                        wrong.stream()
                                .map(d -> name(d) + ": output " + d.got() + ", table " + d.wanted())
                                .toList()))
                .source("frame table, "
                        + at.aircraft().airframe().conventionSource().or("no source given"))
                .why("the controller pushes up one corner and another rises")
                .meter("propellers off: command one motor at a time and see which turns");
        blame(at, wrong, draft);
        return draft;
    }

    private static void blame(Situation at, List<Driven> wrong, Draft draft) {
        List<Lead> common = new ArrayList<>();
        for (Driven driven : wrong) {
            Trail way = way(at, driven);
            if (driven.equals(wrong.get(0))) {
                draft.path(way);
                common.addAll(Leads.along(at, way));
            } else {
                List<Lead> leads = Leads.along(at, way);
                common.retainAll(leads);
            }
        }
        if (common.isEmpty()) {
            wrong.forEach(driven -> Leads.along(at, way(at, driven)).stream()
                    .filter(lead -> !common.contains(lead))
                    .forEach(common::add));
        }
        common.forEach(draft::at);
        String leads = String.join(", ", common.stream().map(Lead::id).toList());
        String list = String.join(
                ", ",
                wrong.stream().map(d -> name(d) + " to output " + d.wanted()).toList());
        draft.fix("bring " + list + (leads.isEmpty() ? "" : " in " + leads));
        wrong.forEach(driven -> draft.seen(driven.drive().motor()));
    }

    private static Trail way(Situation at, Driven driven) {
        int input = driven.drive().pulsePin().orElse(driven.output());
        return at.circuit().trail(driven.output(), input).orElse(Trail.NONE);
    }

    private static String words(Driven driven) {
        return name(driven) + " is driven by output " + driven.got();
    }

    private static String name(Driven driven) {
        return driven.drive()
                .number()
                .map(number -> "M" + number)
                .orElse(driven.drive().motor().ref());
    }
}
