package ringout.compare.judge;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import ringout.compare.difference.Difference;
import ringout.compare.difference.Kind;
import ringout.compare.match.Match;
import ringout.graph.Circuit;
import ringout.graph.Wire;
import ringout.model.CurrentLoop;
import ringout.solve.meter.Expected;
import ringout.solve.meter.Reading;

/** What must be tested again because of a difference, test by test, with what the meter must show on the aircraft as it is now. */
final class RetestPlan {
    /** A lead that is another lead: made anew, so every conductor of it is rung out. */
    private static final Set<Kind> MADE_ANEW =
            Set.of(Kind.LENGTH, Kind.SIZE, Kind.COLOUR, Kind.FUSE, Kind.CONNECTOR, Kind.JOINT);

    private static final Set<Kind> TOLD_BY_UNIT = Set.of(
            Kind.ADDRESS, Kind.FIRMWARE, Kind.RATE, Kind.TERMINATOR, Kind.SETTING, Kind.ORIENTATION, Kind.SERIAL);

    private final Match match;
    private final Circuit other;
    private final Circuit whole;
    private final Circuit before;
    private final BusRetests buses;
    private final PowerRetests power;
    private final MotorRetests motors;

    RetestPlan(Match match, Circuit base, Circuit other) {
        this.match = match;
        this.other = other;
        this.whole = other.whole();
        this.before = base.whole();
        this.buses = new BusRetests(match, before, whole);
        this.power = new PowerRetests(match, before, whole);
        this.motors = new MotorRetests(whole);
    }

    List<Retest> after(Difference difference) {
        List<Retest> tests = new ArrayList<>();
        if (difference.kind().ofRecord()) {
            return tests;
        }
        Set<Wire> wires = wires(difference);
        wires.forEach(wire -> ring(wire, tests));
        gone(difference, tests);
        boolean connects = difference.kind().ofConnections()
                || MADE_ANEW.contains(difference.kind())
                || difference.kind() == Kind.UNIT_NEW;
        boolean terminator = difference.kind() == Kind.TERMINATOR;
        boolean box = difference.kind() == Kind.UNIT_TYPE || difference.kind() == Kind.PINOUT;
        if (connects || terminator || box) {
            tests.addAll(buses.at(pins(difference, wires, terminator || box)));
        }
        if (connects || box || difference.kind() == Kind.RATING) {
            tests.addAll(power.below(difference, wires));
        }
        tests.addAll(motors.of(difference, wires));
        compass(difference, tests);
        if (TOLD_BY_UNIT.contains(difference.kind())) {
            tests.add(Retest.of(Retest.Kind.READ_BACK, difference.what()));
        }
        return tests;
    }

    /** The conductors of the other aircraft a difference touches. */
    private Set<Wire> wires(Difference difference) {
        Set<Wire> wires = new LinkedHashSet<>(difference.touched().after());
        if (MADE_ANEW.contains(difference.kind())) {
            match.other().wires().stream()
                    .filter(wire -> difference
                            .touched()
                            .leadsThere()
                            .contains(wire.lead().id()))
                    .forEach(wires::add);
        }
        return wires;
    }

    private void ring(Wire wire, List<Retest> tests) {
        String from = match.other().name(wire.fromPin());
        String to = match.other().name(wire.toPin());
        tests.add(new Retest(
                Retest.Kind.RING_OUT,
                wire.lead().id() + " " + from + " to " + to,
                List.of(from, to),
                Optional.of(Expected.ohms(whole, wire.fromPin(), wire.toPin()).reading()),
                putBack(wire.fromPin(), wire.toPin())));
    }

    private Optional<Reading> putBack(int pin, int far) {
        int a = match.pinBack(pin);
        int b = match.pinBack(far);
        return a < 0 || b < 0
                ? Optional.empty()
                : Optional.of(Expected.ohms(before, a, b).reading());
    }

    /** What was joined and is no more must not be joined. */
    private void gone(Difference difference, List<Retest> tests) {
        for (Wire wire : difference.touched().before()) {
            int a = match.pin(wire.fromPin());
            int b = match.pin(wire.toPin());
            if (a >= 0 && b >= 0 && !whole.nets().same(a, b)) {
                String from = match.other().name(a);
                String to = match.other().name(b);
                tests.add(new Retest(
                        Retest.Kind.RING_OUT,
                        from + " to " + to + ", no longer by " + wire.lead().id(),
                        List.of(from, to),
                        Optional.of(Expected.ohms(whole, a, b).reading()),
                        putBack(a, b)));
            }
        }
    }

    /** The contacts of the other aircraft that lie on touched buses. */
    private Set<Integer> pins(Difference difference, Set<Wire> wires, boolean ofUnits) {
        Set<Integer> pins = new TreeSet<>();
        wires.forEach(wire -> pins.addAll(List.of(wire.fromPin(), wire.toPin())));
        difference.touched().before().forEach(wire -> {
            pins.add(match.pin(wire.fromPin()));
            pins.add(match.pin(wire.toPin()));
        });
        pins.remove(-1);
        if (ofUnits) {
            for (String unit : difference.touched().unitsThere()) {
                other.wiring().directory().find(unit).ifPresent(number -> {
                    for (int pin = other.wiring().firstPin(number);
                            pin < other.wiring().endPin(number);
                            pin++) {
                        pins.add(pin);
                    }
                });
            }
        }
        return pins;
    }

    private void compass(Difference difference, List<Retest> tests) {
        Set<String> leads = difference.touched().leadsThere();
        Set<String> units = difference.touched().unitsThere();
        boolean moved = difference.kind() == Kind.POSITION
                || difference.kind() == Kind.ORIENTATION
                || difference.kind() == Kind.UNIT_TYPE
                || difference.kind() == Kind.SERIAL;
        List<CurrentLoop> loops = match.other().aircraft().airframe().loops();
        Set<String> swung = new TreeSet<>();
        for (CurrentLoop loop : loops) {
            boolean changed = loop.leads().stream().anyMatch(leads::contains) && difference.kind() != Kind.LABEL;
            boolean compassMoved =
                    moved && loop.compass().known().filter(units::contains).isPresent();
            if (changed || compassMoved) {
                swung.add(loop.compass().or("compass"));
            }
        }
        swung.forEach(compass -> tests.add(Retest.of(
                Retest.Kind.COMPASS, "swing " + compass + ", and compare headings at idle and at hover throttle")));
    }
}
