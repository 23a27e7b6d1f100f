package ringout.check.installation;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import ringout.check.form.Figures;
import ringout.check.form.Gaps;
import ringout.check.form.Situation;
import ringout.graph.Wiring;
import ringout.model.Band;
import ringout.model.PinRole;
import ringout.model.Unit;
import ringout.model.UnitKind;
import ringout.model.UnitType;

/**
 * A unit that transmits or receives, or holds a compass.
 *
 * @param unit the unit
 * @param type its type
 * @param place unit whose position is that of the antenna: the one a coaxial lead leads to, or the unit itself
 */
record Aerial(Unit unit, UnitType type, Unit place) {
    static final String EMITS = "transmitter bands";
    static final String EDGES = "edges of the bands";
    private static final int[] NO_WIRES = {};

    /** All units aboard with something to say; what is missing of their bands is noted. */
    static List<Aerial> all(Situation at, Gaps gaps) {
        List<Aerial> found = new ArrayList<>();
        for (int number = 0; number < at.directory().count(); number++) {
            if (at.directory().isJoint(number)
                    || !at.circuit().aboard(number)
                    || !at.directory().typeKnown(number)) {
                continue;
            }
            UnitType type = at.directory().type(number);
            Unit unit = at.directory().unit(number);
            boolean radio = type.kind().is(UnitKind.RADIO) && type.receives().isEmpty();
            if (type.emits().isEmpty() && (radio || type.antenna().is(true))) {
                gaps.add(EMITS, unit.ref());
            }
            Aerial aerial = new Aerial(unit, type, antenna(at, number));
            if (aerial.transmits()
                    || !type.receives().isEmpty()
                    || aerial.satellite()
                    || type.compass().is(true)) {
                found.add(aerial);
                if (!known(type.emits()) || !known(type.receives())) {
                    gaps.add(EDGES, unit.ref());
                }
            }
        }
        return found;
    }

    private static Unit antenna(Situation at, int unit) {
        Wiring wiring = at.wiring();
        for (int pin = wiring.firstPin(unit); pin < wiring.endPin(unit); pin++) {
            for (int wire : wiring.is(pin, PinRole.RF) ? wiring.wiresAt(pin) : NO_WIRES) {
                int far = wiring.unitOf(wiring.wires().get(wire).otherPin(pin));
                if (far != unit && !at.directory().isJoint(far)) {
                    return at.directory().unit(far);
                }
            }
        }
        return at.directory().unit(unit);
    }

    private static boolean known(List<Band> bands) {
        return bands.stream()
                .allMatch(band -> band.lowMhz().isKnown() && band.highMhz().isKnown());
    }

    String ref() {
        return unit.ref();
    }

    boolean transmits() {
        return !type.emits().isEmpty();
    }

    /** Whether it listens to satellites. */
    boolean satellite() {
        return type.kind().is(UnitKind.SATELLITE_RECEIVER)
                || SatelliteBand.ALL.stream().anyMatch(this::listens);
    }

    /** Whether it listens in a band, as far as its bands are given. */
    boolean listens(SatelliteBand band) {
        return edges(type.receives()).stream()
                .anyMatch(
                        one -> band.overlaps(one.lowMhz().or(0.0), one.highMhz().or(0.0)));
    }

    /** Transmitter bands whose edges are known. */
    List<Band> emits() {
        return edges(type.emits());
    }

    private static List<Band> edges(List<Band> bands) {
        return bands.stream()
                .filter(band -> band.lowMhz().isKnown() && band.highMhz().isKnown())
                .toList();
    }

    /** Whether it transmits where another transmits or receives. */
    boolean sharesBand(Aerial other) {
        return emits().stream()
                .anyMatch(mine -> overlap(mine, edges(other.type.receives())) || overlap(mine, other.emits()));
    }

    private static boolean overlap(Band one, List<Band> others) {
        return others.stream()
                .anyMatch(other -> one.lowMhz().or(0.0) <= other.highMhz().or(0.0)
                        && one.highMhz().or(0.0) >= other.lowMhz().or(0.0));
    }

    /** Its transmitter bands in words. */
    String bands() {
        return emits().stream()
                .map(band -> Figures.of(band.lowMhz().or(0.0)) + "-"
                        + Figures.of(band.highMhz().or(0.0)) + " MHz")
                .collect(Collectors.joining(", "));
    }
}
