package ringout.trace.predict;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import ringout.graph.Circuit;
import ringout.graph.Wire;
import ringout.graph.Wiring;
import ringout.trace.candidate.Opening;
import ringout.trace.candidate.Places;

/** Writes the cards of tests: titles, minutes, traps and safety lines. Minutes and traps are common practice, no source. */
final class CardMaker {
    private static final String PROPELLERS = "propellers off before any pack is plugged";
    private static final String POWER_OFF = "ohms only with packs unplugged and capacitors down: wait 10 s";
    private static final String METER = "check meter jacks and range before every measurement on a supply; fused leads";
    private static final String PACKS = "no rings; one pack plug at a time, cover the other; packs arc: eye protection";
    private static final String NEEDLE = "never back-probe a main power plug with a bare needle";

    private final Circuit circuit;
    private final Wiring wiring;

    CardMaker(Circuit circuit) {
        this.circuit = circuit;
        this.wiring = circuit.wiring();
    }

    private String unit(int unit) {
        return wiring.directory().name(unit);
    }

    private String plug(int unit, int plug) {
        return wiring.plugName(unit, plug);
    }

    private String plug(int pin) {
        return plug(wiring.unitOf(pin), wiring.plugIndex(pin));
    }

    private Opening at(int unit, int plug) {
        return Places.atPlug(circuit, unit, plug);
    }

    /** What hangs on a plug and must be proved again when it was pulled. */
    private List<String> leadsAt(int unit, int plug) {
        Set<String> ids = new LinkedHashSet<>();
        for (int pin = wiring.firstPin(unit, plug); pin < wiring.endPin(unit, plug); pin++) {
            for (int w : wiring.wiresAt(pin)) {
                ids.add(wiring.wires().get(w).lead().id());
            }
        }
        List<String> disturbed = new ArrayList<>(List.of(plug(unit, plug)));
        disturbed.addAll(ids);
        return disturbed;
    }

    TestCard answers(int unit) {
        return new TestCard(
                "answers " + unit(unit),
                new FieldTest.Answers(unit),
                "does " + unit(unit) + " answer",
                0.5,
                Opening.NONE,
                List.of(),
                List.of(PROPELLERS),
                "a list of units may be old: refresh it",
                Classes.ANSWERS);
    }

    TestCard light(int unit) {
        return new TestCard(
                "light " + unit(unit),
                new FieldTest.Light(unit),
                "is any light of " + unit(unit) + " on",
                0.5,
                Opening.NONE,
                List.of(),
                List.of(PROPELLERS),
                "lit by a signal wire: dim, and it will not reset",
                Classes.LIGHT);
    }

    TestCard supplyCurrent() {
        return new TestCard(
                "supply current",
                new FieldTest.SupplyCurrent(),
                "current of the supply against the sheet",
                1,
                Opening.NONE,
                List.of(),
                List.of(PROPELLERS, PACKS),
                "needs the sheet of this state; a small unit may hide in what the others vary",
                Classes.CURRENT);
    }

    TestCard busOhms(int unit, int plug, FieldTest.BusOhms.Side side) {
        boolean mated = side == FieldTest.BusOhms.Side.MATED;
        String name = plug(unit, plug);
        String how =
                switch (side) {
                    case MATED -> "at " + name + ", everything mated, from behind";
                    case INTO_LEAD -> "into the lead pulled from " + name;
                    case INTO_UNIT -> "into " + name + ", lead pulled";
                };
        return new TestCard(
                "ohms H-L " + name + " " + side.name().toLowerCase(Locale.ROOT).replace('_', ' '),
                new FieldTest.BusOhms(unit, plug, side),
                "power off: ohms between H and L " + how,
                mated ? 3 : 6,
                at(unit, plug),
                mated ? List.of() : leadsAt(unit, plug),
                List.of(PROPELLERS, POWER_OFF),
                mated
                        ? "a live bus gives nonsense; meter leads add 0.2 ohm; 60 does not prove that the terminators are at the ends"
                        : "pulling a plug in the chain changes the network: hold the reading against this state",
                Classes.ohms());
    }

    TestCard legToZero(int pin, int zero) {
        return new TestCard(
                "ohms to 0V " + wiring.name(pin),
                new FieldTest.LegToZero(pin, zero),
                "power off: ohms from " + wiring.name(pin) + " to 0V at " + wiring.name(zero),
                4,
                TestDeck.at(circuit, pin),
                List.of(),
                List.of(PROPELLERS, POWER_OFF),
                "front ends without power read kilohm to megohm",
                Classes.TO_ZERO);
    }

    TestCard volts(int pin, int zero, double expected) {
        return new TestCard(
                "volts " + wiring.name(pin),
                new FieldTest.Volts(pin, zero),
                String.format(
                        Locale.ROOT,
                        "power on, mated: volts at %s against %s, should be %.1f",
                        wiring.name(pin),
                        wiring.name(zero),
                        expected),
                3,
                TestDeck.at(circuit, pin),
                List.of(),
                List.of(PROPELLERS, PACKS, METER, NEEDLE),
                "an open plug shows the full voltage through one strand: measure it mated",
                Classes.VOLTS);
    }

    TestCard loaded(int pin, int zero) {
        return new TestCard(
                "volts with load " + wiring.name(pin),
                new FieldTest.LoadedVolts(pin, zero),
                "power on, " + plug(pin) + " pulled: volts in the lead at contact "
                        + wiring.pin(pin).number() + " with 10 ohm across, 5 s at most",
                4,
                TestDeck.at(circuit, pin),
                leadsAt(wiring.unitOf(pin), wiring.plugIndex(pin)),
                List.of(PROPELLERS, PACKS, METER, "the 10 ohm load gets hot; on rails up to 6 V only"),
                "the load must be for more than 3 W",
                Classes.VOLTS);
    }

    TestCard legVolts(int pin, boolean high) {
        return new TestCard(
                "bus volts " + wiring.name(pin),
                new FieldTest.LegVolts(pin, high),
                "power on, bus busy: volts of " + (high ? "H" : "L") + " at " + wiring.name(pin) + " against 0V",
                4,
                TestDeck.at(circuit, pin),
                List.of(),
                List.of(PROPELLERS, METER),
                "front ends for 3.3 V lie 0.2 to 0.5 V lower",
                Classes.LEG);
    }

    TestCard legSign(int high, int low) {
        return new TestCard(
                "sign " + plug(high),
                new FieldTest.LegSign(high, low),
                "power on, bus busy: sign of H against L at " + plug(high),
                4,
                TestDeck.at(circuit, high),
                List.of(),
                List.of(PROPELLERS, METER),
                "needs traffic",
                Classes.SIGN);
    }

    TestCard wireVolts(int unit, int plug) {
        return new TestCard(
                "wire volts " + plug(unit, plug),
                new FieldTest.WireVolts(unit, plug),
                "power on, " + plug(unit, plug) + " pulled: volts at each signal wire of the lead against 0V",
                4,
                at(unit, plug),
                leadsAt(unit, plug),
                List.of(PROPELLERS, METER),
                "pull it with the power off; an open wire picks up volts through the meter",
                Classes.WIRES);
    }

    TestCard drop(Wire wire, int pin) {
        return new TestCard(
                "drop " + wire.lead().id() + " " + wiring.name(pin),
                new FieldTest.Drop(wire.index(), pin),
                "drop across the mated contact " + wiring.name(pin) + " of "
                        + wire.lead().id() + " under load, from the log or with a bench load",
                5,
                TestDeck.at(circuit, pin),
                List.of(),
                List.of(PROPELLERS + "; never by hand with propellers turning", PACKS, METER, NEEDLE),
                "meter in millivolts",
                Classes.DROP);
    }

    TestCard unplug(int unit, int plug) {
        return new TestCard(
                "unplug " + plug(unit, plug),
                new FieldTest.Unplug(unit, plug),
                "power off, pull " + plug(unit, plug) + ", power on: does the rest recover",
                3,
                at(unit, plug),
                leadsAt(unit, plug),
                List.of(PROPELLERS, PACKS),
                "also takes away a terminator behind it; what is cured by pulling and plugging again is not cured",
                Classes.RECOVER);
    }

    TestCard readSettings(int unit) {
        return new TestCard(
                "settings " + unit(unit),
                new FieldTest.ReadSettings(unit),
                "read address, rate and functions of " + unit(unit) + " over its service port",
                4,
                Opening.NONE,
                List.of(),
                List.of(PROPELLERS),
                "as it reads, not as one remembers",
                Classes.RECORD);
    }

    TestCard look(int unit, int plug) {
        return new TestCard(
                "look " + plug(unit, plug),
                new FieldTest.Look(unit, plug),
                "look at latch, colour, mark and port of " + plug(unit, plug) + ", tug it",
                0.5,
                at(unit, plug),
                List.of(),
                List.of(PROPELLERS),
                "one sees what one expects: read the label aloud",
                Classes.LOOK);
    }

    private Wire first(String lead) {
        return wiring.wires().stream()
                .filter(wire -> wire.lead().id().equals(lead))
                .findFirst()
                .orElseThrow();
    }

    TestCard ringLead(String lead) {
        Wire one = first(lead);
        return new TestCard(
                "ring out " + lead,
                new FieldTest.RingLead(lead),
                "power off, both plugs of " + lead + " pulled: ring it out pin to pin while moving it",
                6,
                bothEnds(one),
                List.of(lead, plug(one.fromPin()), plug(one.toPin())),
                List.of(PROPELLERS, POWER_OFF, PACKS),
                "with one end mated the rest of the aircraft is rung as well; a bad mated contact does not show",
                Classes.RING);
    }

    TestCard swapLead(String lead) {
        Wire one = first(lead);
        return new TestCard(
                "swap lead " + lead,
                new FieldTest.SwapLead(lead),
                "lay a lead known to be good outside in the stead of " + lead,
                8,
                bothEnds(one),
                List.of(lead, plug(one.fromPin()), plug(one.toPin())),
                List.of(PROPELLERS, PACKS),
                "the other lead has a pin-out of its own",
                Classes.SWAP);
    }

    private Opening bothEnds(Wire wire) {
        Opening from = TestDeck.at(circuit, wire.fromPin());
        Opening to = TestDeck.at(circuit, wire.toPin());
        return from.covers().size() >= to.covers().size() ? from : to;
    }

    TestCard swapUnit(int unit) {
        return new TestCard(
                "swap unit " + unit(unit),
                new FieldTest.SwapUnit(unit),
                "put a unit known to be good, set alike, in the stead of " + unit(unit),
                25,
                Places.atUnit(circuit, unit),
                List.of(unit(unit)),
                List.of(PROPELLERS, PACKS),
                "address and settings: a spare as shipped makes a new fault; never with the only spare",
                Classes.SWAP);
    }

    TestCard benchUnit(int unit) {
        return new TestCard(
                "bench " + unit(unit),
                new FieldTest.BenchUnit(unit),
                "try " + unit(unit) + " on the bench",
                20,
                Places.atUnit(circuit, unit),
                List.of(unit(unit)),
                List.of(PROPELLERS),
                "the aircraft's side is then not tested",
                Classes.SWAP);
    }
}
