package ringout.check.address;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ringout.check.form.Check;
import ringout.check.form.CheckInfo;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.finding.Draft;
import ringout.finding.Severity;
import ringout.graph.signal.MotorDrive;
import ringout.graph.signal.MotorDrives;
import ringout.model.BusKind;
import ringout.model.Datum;
import ringout.model.PortSetting;
import ringout.model.Unit;

/**
 * A speed controller on a bus whose index is not the number of the motor it drives.
 *
 * <p>Why it matters: the flight controller speeds up another motor than it means to, and the aircraft flips at take-off.
 *
 * <p>Condition: the index set in the controller (plus one when its tool counts from zero) differs from the number of the motor on
 * its phases. An address that leaves the pattern of the others (a fixed number plus the motor number) is S4, or S2 when no
 * index is listed.
 *
 * <p>Does not see: controllers driven by pulses, which have no index (S10).
 *
 * <p>Reference: common practice, no source.
 */
@CheckInfo(
        code = "A07",
        name = "esc-index",
        severity = Severity.S2,
        since = "0.1",
        needs = {"index of each bus-driven speed controller", "whether its tool counts from zero", "motor number"})
public final class EscIndex implements Check {
    /** A bus-driven controller: its unit, the number of its motor, and what is listed of it. */
    private record Esc(
            Unit unit,
            Optional<Integer> motor,
            Datum<Integer> index,
            Datum<Boolean> zeroBased,
            Optional<Integer> address,
            boolean askAddress) {}

    @Override
    public void look(Situation at, Outcomes out) {
        List<Esc> all = new ArrayList<>();
        for (MotorDrive drive : MotorDrives.of(at.circuit())) {
            drive.controller().ifPresent(unit -> {
                if (drive.pulsePin().isEmpty() && onBus(at, unit)) {
                    all.add(esc(at, unit, drive));
                }
            });
        }
        List<Esc> open = new ArrayList<>();
        Optional<Integer> pattern = pattern(all);
        for (Esc esc : all) {
            look(out, esc, pattern, open);
        }
        ask(out, open);
        ask(
                out,
                "address of ",
                "read it with the tool of the bus",
                all.stream()
                        .filter(esc -> esc.askAddress() && pattern.isPresent())
                        .toList());
    }

    private static boolean onBus(Situation at, int unit) {
        return at.directory().type(unit).ports().stream()
                .anyMatch(port -> port.kind().or(BusKind.CAN) == BusKind.CAN);
    }

    private static Esc esc(Situation at, int unit, MotorDrive drive) {
        Unit record = at.directory().unit(unit);
        Optional<Integer> address = record.ports().stream()
                .map(PortSetting::address)
                .flatMap(datum -> datum.known().stream())
                .findFirst();
        boolean ask = record.ports().stream().anyMatch(port -> port.address() instanceof Datum.Unknown);
        Optional<Integer> number = drive.number().or(() -> record.motor().known());
        return new Esc(record, number, record.index(), at.directory().type(unit).zeroBasedIndex(), address, ask);
    }

    /** The number that most addresses exceed their motor number by, when more than half do and at least three. */
    private static Optional<Integer> pattern(List<Esc> all) {
        Map<Integer, Integer> votes = new HashMap<>();
        for (Esc esc : all) {
            if (esc.address().isPresent() && esc.motor().isPresent()) {
                votes.merge(esc.address().get() - esc.motor().get(), 1, Integer::sum);
            }
        }
        return votes.entrySet().stream()
                .filter(vote -> vote.getValue() >= 3 && 2 * vote.getValue() > all.size())
                .map(Map.Entry::getKey)
                .findFirst();
    }

    private static void look(Outcomes out, Esc esc, Optional<Integer> pattern, List<Esc> open) {
        boolean unsureZero = esc.index().isKnown() && esc.zeroBased() instanceof Datum.Unknown;
        if (esc.motor().isEmpty() || unsureZero) {
            open.add(esc);
            return;
        }
        int motor = esc.motor().orElse(0);
        Optional<Integer> byAddress = esc.address().flatMap(address -> pattern.map(offset -> address - offset));
        if (esc.index().isKnown()) {
            out.looked();
            int shown = esc.index().or(0);
            int index = esc.zeroBased().is(true) ? shown + 1 : shown;
            if (index != motor) {
                Draft draft = draft(esc, motor, shown, index);
                out.finding(
                        byAddress.filter(number -> number == index).isPresent()
                                ? draft.cause(esc.unit().ref() + "/address")
                                : draft);
                return;
            }
        } else if (esc.index() instanceof Datum.Unknown || (esc.index().isMissing() && byAddress.isEmpty())) {
            open.add(esc);
        }
        byAddress.filter(number -> number != motor).ifPresent(number -> out.finding(odd(esc, motor, number)));
    }

    private static void ask(Outcomes out, List<Esc> open) {
        ask(
                out,
                "motor number of ",
                "turn the motor with the propeller off to see which one it is",
                open.stream().filter(esc -> esc.motor().isEmpty()).toList());
        ask(
                out,
                "index of ",
                "read it with the tool of the controller",
                open.stream()
                        .filter(esc -> esc.motor().isPresent() && !esc.index().isKnown())
                        .toList());
        ask(
                out,
                "whether the tool counts from zero, for ",
                "look at the highest and lowest index the tool offers",
                open.stream()
                        .filter(esc -> esc.motor().isPresent() && esc.index().isKnown())
                        .toList());
    }

    private static void ask(Outcomes out, String datum, String how, List<Esc> open) {
        if (!open.isEmpty()) {
            String[] refs = open.stream().map(esc -> esc.unit().ref()).sorted().toArray(String[]::new);
            out.cannotTell(datum + String.join(", ", refs), how, 3 * refs.length, refs);
        }
    }

    private static Draft draft(Esc esc, int motor, int shown, int index) {
        String as = shown == index ? "" : " (shown as " + shown + ", counted from zero)";
        int want = shown == index ? motor : motor - 1;
        return Draft.of(
                        Severity.S2,
                        "controller index: " + esc.unit().ref() + " has index " + index + as + ", M" + motor + " needs "
                                + motor)
                .about(esc.unit().ref())
                .at(esc.unit(), "index")
                .input(esc.index())
                .sum("index " + index + as + ", motor number " + motor)
                .judged(index, motor, "index", "common practice, no source")
                .why("the flight controller speeds up another motor than it means to")
                .meter("propellers off: command motor " + motor + " and see which one turns")
                .fix("set the index of " + esc.unit().ref() + " to " + want);
    }

    private static Draft odd(Esc esc, int motor, int number) {
        int address = esc.address().orElse(0);
        int offset = address - number;
        int wants = offset + motor;
        boolean only = esc.index().isMissing();
        return Draft.of(
                        only ? Severity.S2 : Severity.S4,
                        "controller index: " + esc.unit().ref() + " has address " + address + ", M" + motor + " needs "
                                + wants + " like the others")
                .about(esc.unit().ref())
                .at(esc.unit(), "address")
                .sum("address " + address + ", the others have " + offset + " + motor number = " + wants)
                .judged(address, wants, "address", "common practice, no source")
                .why(
                        only
                                ? "the flight controller may speed up another motor than it means to"
                                : "the numbers no longer tell which motor it is")
                .fix("set the address of " + esc.unit().ref() + " to " + wants);
    }
}
