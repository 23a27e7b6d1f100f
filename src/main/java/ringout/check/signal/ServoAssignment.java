package ringout.check.signal;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import ringout.check.form.Check;
import ringout.check.form.CheckInfo;
import ringout.check.form.Gaps;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.finding.Severity;
import ringout.graph.signal.PulseLinks;
import ringout.graph.signal.Sides;
import ringout.model.Datum;
import ringout.model.OutputSetting;
import ringout.model.Surface;
import ringout.model.Unit;
import ringout.model.UnitKind;

/**
 * A servo driven by another output than its surface wants, left and right exchanged, or turned the other way than recorded.
 *
 * <p>Why it matters: the aircraft rolls away from the command, or one leg of the gear goes up while the other goes down.
 *
 * <p>Condition: the output that drives the servo of a surface is not the one of the surface table, or its reversal is set otherwise than
 * recorded. For actuators without a surface: the function of the output names another side than the place of the actuator.
 * Two servos each at the output of the other are one finding. S2 for surfaces and what flight depends on, else S3.
 *
 * <p>Does not see: a linkage fitted to the other side of the horn; travel and trim.
 *
 * <p>Reference: surface table of the aircraft.
 */
@CheckInfo(
        code = "S16",
        name = "servo-assignment",
        severity = Severity.S2,
        since = "0.1",
        needs = {"surface table, or place of each actuator and function of its output", "reversal set and recorded"})
public final class ServoAssignment implements Check {
    @Override
    public void look(Situation at, Outcomes out) {
        Map<Integer, PulseLinks.Link> drives = new TreeMap<>();
        for (PulseLinks.Link link : PulseLinks.of(at.circuit())) {
            drives.putIfAbsent(at.wiring().unitOf(link.input()), link);
        }
        Gaps gaps = new Gaps();
        List<ServoFault> wrong = new ArrayList<>();
        Set<Integer> tabled = new HashSet<>();
        for (Surface surface : at.aircraft().airframe().surfaces()) {
            Optional<Integer> servo = surface.servo().known().flatMap(at.directory()::find);
            if (servo.isEmpty()) {
                gaps.add("servo", "surface " + surface.name());
                continue;
            }
            tabled.add(servo.get());
            Optional.ofNullable(drives.get(servo.get()))
                    .ifPresent(link -> surface(at, out, surface, link, wrong, gaps));
        }
        drives.forEach((unit, link) -> {
            if (!tabled.contains(unit) && at.directory().type(unit).kind().is(UnitKind.ACTUATOR)) {
                bySide(at, out, unit, link, wrong, gaps);
            }
        });
        tell(at, out, wrong);
        gaps.tell(
                out,
                datum -> datum.endsWith("set")
                        ? new Gaps.Way("read it from the parameter list", 1)
                        : new Gaps.Way("move the stick and see what moves which way, then write it down", 5));
    }

    private static void surface(
            Situation at, Outcomes out, Surface surface, PulseLinks.Link link, List<ServoFault> wrong, Gaps gaps) {
        String got = PulseLinks.name(at.wiring(), link.output());
        Datum<String> wanted = surface.output();
        if (wanted.isMissing()) {
            gaps.add("output", "surface " + surface.name());
        }
        if (wanted.isKnown()) {
            out.looked();
            if (!wanted.or("").equalsIgnoreCase(got)) {
                wrong.add(new ServoFault(link, surface.name(), got, wanted.or(""), Severity.S2));
            }
        }
        sense(at, out, surface, link, gaps);
    }

    private static void sense(Situation at, Outcomes out, Surface surface, PulseLinks.Link link, Gaps gaps) {
        Datum<Boolean> set = PulseLinks.setting(at.wiring(), link.output())
                .map(OutputSetting::reversed)
                .orElse(Datum.notAsked());
        Datum<Boolean> recorded = surface.reversed();
        if (recorded.isMissing()) {
            gaps.add("reversal recorded", "surface " + surface.name());
        }
        if (set.isMissing()) {
            Unit unit = at.wiring().unit(link.output());
            gaps.add("reversal set", unit.ref() + " output " + PulseLinks.name(at.wiring(), link.output()));
        }
        if (recorded.isKnown() && set.isKnown()) {
            out.looked();
            if (!recorded.is(set.or(false))) {
                out.finding(ServoFault.turned(at, surface, link, set.or(false)));
            }
        }
    }

    /** An actuator without a surface: its place against the function of the output that drives it. */
    private static void bySide(
            Situation at, Outcomes out, int unit, PulseLinks.Link link, List<ServoFault> wrong, Gaps gaps) {
        Unit actuator = at.directory().unit(unit);
        Datum<String> function = PulseLinks.setting(at.wiring(), link.output())
                .map(OutputSetting::function)
                .orElse(Datum.notAsked());
        Datum<String> role = actuator.positionRole();
        if (function.isMissing()) {
            Unit driver = at.wiring().unit(link.output());
            gaps.add("function set", driver.ref() + " output " + PulseLinks.name(at.wiring(), link.output()));
        }
        if (role.isMissing()) {
            gaps.add("surface or place", actuator.ref());
        }
        if (function.isKnown() && role.isKnown()) {
            out.looked();
            if (Sides.of(function.or("")).contradicts(Sides.of(role.or("")))) {
                Severity severity = at.flightCritical(actuator.ref()) ? Severity.S2 : Severity.S3;
                wrong.add(new ServoFault(link, role.or("") + " actuator", function.or(""), role.or(""), severity));
            }
        }
    }

    private static void tell(Situation at, Outcomes out, List<ServoFault> wrong) {
        wrong.sort(java.util.Comparator.comparing(fault -> fault.servo(at).ref()));
        while (!wrong.isEmpty()) {
            ServoFault first = wrong.remove(0);
            Optional<ServoFault> partner = wrong.stream()
                    .filter(other -> first.exchangedWith(at, other))
                    .findFirst();
            partner.ifPresent(wrong::remove);
            out.finding(first.draft(at, partner));
        }
    }
}
