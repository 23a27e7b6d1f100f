package ringout.trace.predict;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import ringout.graph.Circuit;
import ringout.graph.Wire;
import ringout.graph.Wiring;
import ringout.graph.power.PowerGraph;
import ringout.model.PinRole;
import ringout.model.UnitKind;
import ringout.trace.candidate.Candidate;
import ringout.trace.candidate.Opening;
import ringout.trace.candidate.Places;

/**
 * The tests that can be made on a circuit, each with its cost and its trap. For every plug what can be measured there, for
 * every unit what can be seen of it and tried with it.
 */
public final class TestDeck {
    /** Rails up to this much are loaded with 10 ohm; above, the load would burn the hand. Common practice, no source. */
    private static final double MOST_LOADED_V = 6;

    private final Circuit circuit;
    private final Wiring wiring;
    private final CardMaker make;
    private final List<TestCard> cards = new ArrayList<>();

    private TestDeck(Circuit circuit) {
        this.circuit = circuit;
        this.wiring = circuit.wiring();
        this.make = new CardMaker(circuit);
        Set<String> modules = Behaviour.of(circuit).modules();
        Set<String> lit = Behaviour.of(circuit).lit();
        cards.add(make.supplyCurrent());
        for (int unit = 0; unit < wiring.aircraft().units().size(); unit++) {
            if (circuit.aboard(unit)) {
                unit(unit, modules, lit);
            }
        }
        Set<String> leads = new LinkedHashSet<>();
        wiring.wires().forEach(wire -> leads.add(wire.lead().id()));
        leads.forEach(lead -> cards.add(make.ringLead(lead)));
        leads.forEach(lead -> cards.add(make.swapLead(lead)));
    }

    /** All tests of a circuit, found once. */
    public static List<TestCard> of(Circuit circuit) {
        return List.copyOf(circuit.know(TestDeck.class, TestDeck::new).cards);
    }

    /**
     * The tests that can tell some candidates apart: those with which not all of them show the same.
     *
     * @param candidates candidates still in question
     */
    public static List<TestCard> telling(Circuit circuit, Collection<Candidate> candidates) {
        Predictions predictions = Predictions.of(circuit);
        List<TestCard> found = new ArrayList<>();
        for (TestCard card : of(circuit)) {
            Set<String> seen = new TreeSet<>();
            for (Candidate candidate : candidates) {
                seen.add(predictions.of(candidate, card.test()).likeliest());
                if (seen.size() > 1) {
                    found.add(card);
                    break;
                }
            }
        }
        return List.copyOf(found);
    }

    private void unit(int unit, Set<String> modules, Set<String> lit) {
        String name = wiring.directory().name(unit);
        if (modules.contains(name)) {
            cards.add(make.answers(unit));
            cards.add(make.readSettings(unit));
        }
        if (lit.contains(name)) {
            cards.add(make.light(unit));
        }
        boolean pack = wiring.directory().type(unit).kind().is(UnitKind.PACK);
        if (!pack && (modules.contains(name) || lit.contains(name))) {
            cards.add(make.swapUnit(unit));
            cards.add(make.benchUnit(unit));
        }
        int plugs = wiring.directory().type(unit).plugs().size();
        for (int plug = 0; plug < plugs; plug++) {
            plug(unit, plug);
        }
    }

    private void plug(int unit, int plug) {
        List<Integer> pins = new ArrayList<>();
        for (int pin = wiring.firstPin(unit, plug); pin < wiring.endPin(unit, plug); pin++) {
            if (wiring.wiresAt(pin).length > 0 && circuit.mated(pin)) {
                pins.add(pin);
            }
        }
        if (pins.isEmpty()) {
            return;
        }
        cards.add(make.look(unit, plug));
        BusMeter meter = BusMeter.of(circuit);
        int high = meter.leg(unit, plug, PinRole.CAN_H).orElse(-1);
        int low = meter.leg(unit, plug, PinRole.CAN_L).orElse(-1);
        int zero = zero(unit, pins);
        if (high >= 0 && low >= 0) {
            bus(unit, plug, high, low, zero);
        }
        if (pins.stream().anyMatch(this::signal)) {
            cards.add(make.wireVolts(unit, plug));
            cards.add(make.unplug(unit, plug));
        }
        for (int pin : pins) {
            if (supply(pin) && zero >= 0) {
                supplyAt(pin, zero);
            }
        }
    }

    private void bus(int unit, int plug, int high, int low, int zero) {
        for (FieldTest.BusOhms.Side side : FieldTest.BusOhms.Side.values()) {
            cards.add(make.busOhms(unit, plug, side));
        }
        cards.add(make.legSign(high, low));
        for (int pin : new int[] {high, low}) {
            cards.add(make.legVolts(pin, pin == high));
            if (zero >= 0) {
                cards.add(make.legToZero(pin, zero));
            }
        }
    }

    private void supplyAt(int pin, int zero) {
        double volts = SupplyVolts.atRest(circuit).healthy(pin, zero).orElse(0);
        if (volts <= 0) {
            return;
        }
        cards.add(make.volts(pin, zero, volts));
        boolean same = wiring.unitOf(pin) == wiring.unitOf(zero) && wiring.plugIndex(pin) == wiring.plugIndex(zero);
        if (volts <= MOST_LOADED_V && same) {
            cards.add(make.loaded(pin, zero));
        }
        for (int w : wiring.wiresAt(pin)) {
            Wire wire = wiring.wires().get(w);
            cards.add(make.drop(wire, pin));
        }
    }

    /** A 0V contact of the plug, else of the unit; -1 when there is none. */
    private int zero(int unit, List<Integer> pins) {
        for (int pin : pins) {
            if (isZero(pin)) {
                return pin;
            }
        }
        for (int pin = wiring.firstPin(unit); pin < wiring.endPin(unit); pin++) {
            if (isZero(pin) && wiring.wiresAt(pin).length > 0) {
                return pin;
            }
        }
        return -1;
    }

    private boolean isZero(int pin) {
        return wiring.is(pin, PinRole.ZERO_V) || wiring.is(pin, PinRole.PACK_MINUS);
    }

    private boolean supply(int pin) {
        return wiring.role(pin).map(PowerGraph::isSupply).orElse(false);
    }

    private boolean signal(int pin) {
        return !supply(pin) && !isZero(pin);
    }

    /** What has to come off to get at the plug of a contact. */
    static Opening at(Circuit circuit, int pin) {
        return Places.atPlug(
                circuit, circuit.wiring().unitOf(pin), circuit.wiring().plugIndex(pin));
    }
}
