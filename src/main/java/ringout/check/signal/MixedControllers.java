package ringout.check.signal;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import ringout.check.form.Check;
import ringout.check.form.CheckInfo;
import ringout.check.form.Gaps;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.finding.Draft;
import ringout.finding.Severity;
import ringout.graph.signal.MotorDrive;
import ringout.graph.signal.MotorDrives;
import ringout.model.Datum;
import ringout.model.Level;
import ringout.model.Unit;

/**
 * Speed controllers of one rotor ring that differ in type, firmware or throttle calibration.
 *
 * <p>Why it matters: equal commands then give unequal thrust; the aircraft leans or turns, and the controller's margin is used up
 * holding it.
 *
 * <p>Condition: among the controllers of the rotors of one level (single, upper, lower) the type differs; or, among those of the type
 * most have, the firmware or the throttle calibration on record. A controller driven over a bus needs no calibration. S2 where
 * flight depends on one of them, else S3.
 *
 * <p>Does not see: other settings of the controllers; upper against lower rotors, which may differ by design.
 *
 * <p>Reference: common practice, no source.
 */
@CheckInfo(
        code = "S15",
        name = "mixed-controllers",
        severity = Severity.S2,
        since = "0.1",
        needs = {"frame table", "firmware and throttle calibration of each speed controller"})
public final class MixedControllers implements Check {
    private static final String NONE = "n/a";
    private static final String TABLE = "frame table";

    /** A controller of a lift motor. */
    private record Controller(Unit unit, boolean byPulses) {}

    @Override
    public void look(Situation at, Outcomes out) {
        boolean table = !at.aircraft().airframe().rotors().isEmpty();
        List<Controller> untabled = new ArrayList<>();
        Map<Level, List<Controller>> rings = new EnumMap<>(Level.class);
        for (MotorDrive drive : MotorDrives.of(at.circuit())) {
            if (drive.controller().isPresent()) {
                Controller controller = new Controller(
                        at.directory().unit(drive.controller().get()),
                        drive.pulsePin().isPresent());
                if (drive.rotor().isPresent()) {
                    Level level = drive.rotor().get().level().or(Level.SINGLE);
                    rings.computeIfAbsent(level, key -> new ArrayList<>()).add(controller);
                } else if (!table) {
                    untabled.add(controller);
                }
            }
        }
        Gaps gaps = new Gaps();
        if (untabled.size() > 1) {
            gaps.add(TABLE, "the motors of " + untabled.size() + " speed controllers");
        }
        rings.values().stream().filter(ring -> ring.size() > 1).forEach(ring -> ring(at, out, ring, gaps));
        gaps.tell(
                out,
                datum -> datum.equals(TABLE)
                        ? new Gaps.Way("copy it from the controller's frame setting", 5)
                        : new Gaps.Way("read it with the tool of the controller", 2));
    }

    private static void ring(Situation at, Outcomes out, List<Controller> ring, Gaps gaps) {
        List<Controller> alike = facet(
                at, out, ring, "type", controller -> Datum.of(controller.unit().type()), gaps);
        facet(at, out, alike, "firmware", controller -> controller.unit().firmware(), gaps);
        facet(
                at,
                out,
                alike,
                "throttle calibration",
                controller -> controller.byPulses() ? controller.unit().throttleRange() : Datum.notApplicable(),
                gaps);
    }

    /** Compares one thing of all; gives those that have what most have. */
    private static List<Controller> facet(
            Situation at,
            Outcomes out,
            List<Controller> ring,
            String what,
            Function<Controller, Datum<String>> value,
            Gaps gaps) {
        Map<String, List<Controller>> byValue = new TreeMap<>();
        int known = 0;
        for (Controller controller : ring) {
            Datum<String> own = value.apply(controller);
            if (own.isMissing()) {
                gaps.add(what, controller.unit().ref());
            } else {
                known++;
                byValue.computeIfAbsent(own.or(NONE).strip(), key -> new ArrayList<>())
                        .add(controller);
            }
        }
        String most = byValue.entrySet().stream()
                .reduce((a, b) -> b.getValue().size() > a.getValue().size() ? b : a)
                .map(Map.Entry::getKey)
                .orElse("");
        if (byValue.size() > 1) {
            out.finding(draft(at, what, byValue, most));
        } else if (known == ring.size()) {
            out.looked();
        }
        return byValue.getOrDefault(most, List.of());
    }

    private static Draft draft(Situation at, String what, Map<String, List<Controller>> byValue, String most) {
        List<Unit> odd = byValue.entrySet().stream()
                .filter(entry -> !entry.getKey().equals(most))
                .flatMap(entry -> entry.getValue().stream().map(Controller::unit))
                .toList();
        String words = byValue.entrySet().stream()
                .filter(entry -> !entry.getKey().equals(most))
                .map(entry -> entry.getKey() + " at " + refs(entry.getValue()))
                .collect(Collectors.joining(", "));
        boolean grave = byValue.values().stream()
                .flatMap(List::stream)
                .anyMatch(controller -> at.flightCritical(controller.unit().ref()));
        List<String> refs = odd.stream().map(Unit::ref).toList();
        Draft draft = Draft.of(
                        grave ? Severity.S2 : Severity.S3,
                        "mixed controllers: " + what + " " + words + ", " + most + " at the others")
                .about(refs)
                .about(what)
                .sum(what + " on one ring: "
                        + byValue.entrySet().stream()
                                .map(entry -> entry.getKey() + " at " + refs(entry.getValue()))
                                .collect(Collectors.joining("; ")))
                .why("equal commands give unequal thrust, and the margin is used up holding the aircraft level")
                .meter("propellers off: all motors at one low command, compare speed by sound or tachometer")
                .fix(fix(what, String.join(", ", refs), most));
        odd.forEach(unit -> draft.at(unit, what));
        return draft;
    }

    private static String fix(String what, String refs, String most) {
        return switch (what) {
            case "type" -> "fit " + most + " at " + refs + ", or one type at all of the ring";
            case "firmware" -> "bring the firmware of " + refs + " to " + most;
            default -> "calibrate the throttle of " + refs + " to " + most + " like the others";
        };
    }

    private static String refs(List<Controller> controllers) {
        return controllers.stream()
                .map(controller -> controller.unit().ref())
                .sorted()
                .collect(Collectors.joining(", "));
    }
}
