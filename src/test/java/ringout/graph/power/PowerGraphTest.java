package ringout.graph.power;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static ringout.graph.SmallAircraft.circuit;
import static ringout.graph.SmallAircraft.pin;
import static ringout.graph.SmallAircraft.point;
import static ringout.graph.SmallAircraft.read;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import ringout.graph.Circuit;
import ringout.graph.Gap;

/** Sources, voltages at rest and currents of small circuits, against arithmetic done by hand. */
class PowerGraphTest {
    private static final double EXACT = 1e-9;

    private static void assertVolts(
            double low, double nominal, double high, Circuit circuit, String plus, String minus) {
        Volts volts = PowerGraph.of(circuit)
                .between(pin(circuit, plus), pin(circuit, minus))
                .orElseThrow();
        assertEquals(low, volts.low(), EXACT, plus + " low");
        assertEquals(nominal, volts.nominal().orElseThrow(), EXACT, plus + " nominal");
        assertEquals(high, volts.high(), EXACT, plus + " high");
    }

    private static List<String> feeding(Circuit circuit, String pin) {
        return PowerGraph.of(circuit).feeding(pin(circuit, pin)).stream()
                .map(PowerSource::name)
                .toList();
    }

    @Test
    void packsInSeriesAdd() {
        Circuit circuit = circuit(read("""
                {"units": [{"ref": "A", "type": "PACK"}, {"ref": "B", "type": "PACK"}, {"ref": "PDB", "type": "BOARD"}],
                 "leads": [{"id": "W1", "from": "A-N", "to": "PDB-BN"}, {"id": "W2", "from": "A-P", "to": "B-N"},
                           {"id": "W3", "from": "B-P", "to": "PDB-BP"}]}
                """));
        assertVolts(39.6, 44.4, 50.4, circuit, "PDB-T1-1", "PDB-T1-2");
        assertVolts(19.8, 22.2, 25.2, circuit, "B-P", "B-N");
        assertVolts(-50.4, -44.4, -39.6, circuit, "PDB-BN", "PDB-BP");
        assertEquals(List.of("B"), feeding(circuit, "PDB-T1-1"));
        PowerGraph power = PowerGraph.of(circuit);
        assertEquals(
                "A", power.bottom(power.feeding(pin(circuit, "PDB-BP")).get(0)).name());
        assertEquals(
                "A-P-1, W2, B-N-1, B cells, B-P-1, W3, PDB-BP-1",
                power.tree().trailTo(pin(circuit, "PDB-BP")).orElseThrow().words());
    }

    @Test
    void aPackOnItsHeadTakesAway() {
        Circuit circuit = circuit(read("""
                {"units": [{"ref": "A", "type": "PACK"}, {"ref": "B", "type": "PACK"}, {"ref": "PDB", "type": "BOARD"}],
                 "leads": [{"id": "W1", "from": "A-N", "to": "PDB-BN"}, {"id": "W2", "from": "A-P", "to": "B-P"},
                           {"id": "W3", "from": "B-N", "to": "PDB-BP"}]}
                """));
        assertVolts(-5.4, 0, 5.4, circuit, "PDB-BP", "PDB-BN");
    }

    @Test
    void equalPacksInParallelDoNotAdd() {
        Circuit circuit = circuit(read("""
                {"units": [{"ref": "A", "type": "PACK"}, {"ref": "B", "type": "PACK"}, {"ref": "PDB", "type": "BOARD"}],
                 "leads": [{"id": "W1", "from": "A-N", "to": "PDB-BN"}, {"id": "W2", "from": "A-P", "to": "PDB-BP"},
                           {"id": "W3", "from": "B-N", "to": "PDB-BN"}, {"id": "W4", "from": "B-P", "to": "PDB-BP"}]}
                """));
        assertVolts(19.8, 22.2, 25.2, circuit, "PDB-T1-1", "PDB-T1-2");
        assertEquals(List.of("A", "B"), feeding(circuit, "PDB-T1-1"));
    }

    @Test
    void aRegulatorGivesItsOwnVoltageAndTakesPowerNotCurrent() {
        Circuit circuit = circuit(read("""
                {"units": [{"ref": "A", "type": "PACK"}, {"ref": "REG", "type": "REG5"}, {"ref": "FC", "type": "BOX"}, {"ref": "GN", "type": "BOX"}],
                 "leads": [{"id": "W1", "from": "A-N", "to": "REG-IN-2"}, {"id": "W2", "from": "A-P", "to": "REG-IN-1"},
                           {"id": "W3", "from": "REG-OUT", "to": "FC-S"}, {"id": "W4", "from": "FC-X", "to": "GN-S"}]}
                """));
        assertVolts(4.9, 5, 5.1, circuit, "GN-S-1", "GN-S-2");
        assertVolts(19.8, 22.2, 25.2, circuit, "REG-IN-1", "REG-IN-2");
        Demand demand = PowerGraph.of(circuit).demand();
        assertEquals(4, demand.averageA(pin(circuit, "FC-S-1")), EXACT, "2 A of FC and 2 A of GN");
        assertEquals(2, demand.averageA(pin(circuit, "FC-X-1")), EXACT);
        // 4 A at 5 V is 20 W out, 40 W in at an efficiency of 0.5, 40 W / 22.2 V
        assertEquals(40 / 22.2, demand.averageA(pin(circuit, "REG-IN-1")), EXACT);
        assertEquals(6 * 5 / 22.2 / 0.5, demand.peakA(pin(circuit, "REG-IN-1")), EXACT);
        assertTrue(demand.averageKnown(pin(circuit, "A-P")));
        assertEquals(List.of("REG 5"), feeding(circuit, "GN-S-1"));
        assertEquals(List.of("A"), feeding(circuit, "REG-IN-1"));
    }

    @Test
    void aRegulatorWithoutInputGivesNothing() {
        Circuit circuit = circuit(read("""
                {"units": [{"ref": "REG", "type": "REG5"}, {"ref": "FC", "type": "BOX"}],
                 "leads": [{"id": "W3", "from": "REG-OUT", "to": "FC-S"}]}
                """));
        assertFalse(PowerGraph.of(circuit).fed(pin(circuit, "FC-S-1")));
        assertEquals(List.of(), feeding(circuit, "FC-S-1"));
    }

    @Test
    void behindACombinerLiesTheHigherInputAndNeitherFeedsTheOther() {
        Circuit circuit = circuit(read("""
                {"types": [
                  {"name": "TWO", "plugs": [
                    {"name": "A", "pins": [{"number": "1", "role": "supply in", "inside": "a"}, {"number": "2", "role": "0V"}]},
                    {"name": "B", "pins": [{"number": "1", "role": "supply in", "inside": "b"}, {"number": "2", "role": "0V"}]}],
                   "parts": [{"name": "da", "kind": "diode", "from": "a", "to": "in", "rating": {"forwardV": 0.5}},
                             {"name": "db", "kind": "diode", "from": "b", "to": "in", "rating": {"forwardV": 0.5}}],
                   "loads": [{"rail": "in", "averageA": 1}]}],
                 "units": [{"ref": "A", "type": "PACK"}, {"ref": "REG", "type": "REG5"}, {"ref": "FC", "type": "TWO"}],
                 "leads": [{"id": "W1", "from": "A-N", "to": "REG-IN-2"}, {"id": "W2", "from": "A-P", "to": "REG-IN-1"},
                           {"id": "W3", "from": "REG-OUT", "to": "FC-A"},
                           {"id": "W4", "from": "A-P", "to": "FC-B-1"}, {"id": "W5", "from": "A-N", "to": "FC-B-2"}]}
                """));
        PowerGraph power = PowerGraph.of(circuit);
        int in = point(circuit, "FC", "in");
        Volts volts = power.between(in, pin(circuit, "FC-A-2")).orElseThrow();
        assertEquals(19.3, volts.low(), EXACT);
        assertEquals(24.7, volts.high(), EXACT);
        assertVolts(4.9, 5, 5.1, circuit, "FC-A-1", "FC-A-2");
        assertEquals(
                List.of("REG 5", "A"),
                power.feeding(in).stream().map(PowerSource::name).toList());
        assertEquals(List.of(), power.lifting(power.ties().of(in)));
        assertEquals(List.of("REG 5"), feeding(circuit, "FC-A-1"));
    }

    @Test
    void aFloatingSecondaryHasItsOwnReference() {
        Circuit circuit = circuit(read("""
                {"types": [
                  {"name": "ISO", "plugs": [
                    {"name": "IN", "pins": [{"number": "1", "role": "supply in", "inside": "bat"}, {"number": "2", "role": "0V"}]},
                    {"name": "OUT", "pins": [{"number": "1", "role": "supply out", "inside": "12"}, {"number": "2", "role": "0V", "inside": "0V iso"}]}],
                   "rails": [{"name": "12", "minV": 11.5, "maxV": 12.5, "zero": "0V iso"}],
                   "parts": [{"name": "iso", "kind": "isolated converter", "from": "bat", "to": "12", "zero": "0V iso", "rating": {"outputV": 12}}]}],
                 "units": [{"ref": "A", "type": "PACK"}, {"ref": "ISO", "type": "ISO"}, {"ref": "PDB", "type": "BOARD"}],
                 "leads": [{"id": "W1", "from": "A-N", "to": "ISO-IN-2"}, {"id": "W2", "from": "A-P", "to": "ISO-IN-1"},
                           {"id": "W3", "from": "ISO-OUT", "to": "PDB-T1"}]}
                """));
        assertVolts(11.5, 12, 12.5, circuit, "PDB-BP", "PDB-BN");
        PowerGraph power = PowerGraph.of(circuit);
        assertTrue(power.between(pin(circuit, "PDB-BP"), pin(circuit, "A-N")).isEmpty());
        assertFalse(power.ties().same(pin(circuit, "ISO-IN-2"), pin(circuit, "ISO-OUT-2")));
    }

    @Test
    void aSenseResistorInTheReturnJoinsTwoNetsOfOneReference() {
        Circuit circuit = circuit(read("""
                {"types": [
                  {"name": "SHUNT", "plugs": [
                    {"name": "B", "pins": [{"number": "1", "role": "0V", "inside": "0V battery"}]},
                    {"name": "L", "pins": [{"number": "1", "role": "0V", "inside": "0V load"}]}],
                   "parts": [{"name": "R", "kind": "sense resistor", "from": "0V battery", "to": "0V load", "rating": {"milliohm": 0.5}}]}],
                 "units": [{"ref": "A", "type": "PACK"}, {"ref": "S", "type": "SHUNT"}, {"ref": "PDB", "type": "BOARD"}],
                 "leads": [{"id": "W1", "from": "A-N", "to": "S-B"}, {"id": "W2", "from": "S-L", "to": "PDB-BN"},
                           {"id": "W3", "from": "A-P", "to": "PDB-BP"}]}
                """));
        assertVolts(19.8, 22.2, 25.2, circuit, "PDB-BP", "PDB-BN");
        assertFalse(circuit.nets().same(pin(circuit, "S-B"), pin(circuit, "S-L")));
        assertTrue(Ties.of(circuit).same(pin(circuit, "S-B"), pin(circuit, "S-L")));
    }

    @Test
    void aDiodeInTheReturnOfAPackKeepsItsLoadsInOneIsland() {
        Circuit circuit = circuit(read("""
                {"types": [
                  {"name": "GUARD", "plugs": [
                    {"name": "B", "pins": [{"number": "1", "role": "0V", "inside": "0V battery"}]},
                    {"name": "L", "pins": [{"number": "1", "role": "0V", "inside": "0V load"}]}],
                   "parts": [{"name": "Q", "kind": "ideal diode", "from": "0V load", "to": "0V battery"}]}],
                 "units": [{"ref": "A", "type": "PACK"}, {"ref": "S", "type": "GUARD"}, {"ref": "PDB", "type": "BOARD"}],
                 "leads": [{"id": "W1", "from": "A-N", "to": "S-B"}, {"id": "W2", "from": "S-L", "to": "PDB-BN"},
                           {"id": "W3", "from": "A-P", "to": "PDB-BP"}]}
                """));
        assertVolts(19.8, 22.2, 25.2, circuit, "PDB-BP", "PDB-BN");
    }

    @Test
    void twoRegulatorsOnOneNetWidenTheRange() {
        Circuit circuit = circuit(read("""
                {"types": [
                  {"name": "REG6", "plugs": [
                    {"name": "IN", "pins": [{"number": "1", "role": "supply in", "inside": "bat"}, {"number": "2", "role": "0V"}]},
                    {"name": "OUT", "pins": [{"number": "1", "role": "supply out", "inside": "6"}, {"number": "2", "role": "0V"}]}],
                   "parts": [{"name": "buck", "kind": "regulator", "from": "bat", "to": "6", "rating": {"outputV": 6, "tolerancePercent": 5}}]}],
                 "units": [{"ref": "A", "type": "PACK"}, {"ref": "R5", "type": "REG5"}, {"ref": "R6", "type": "REG6"}, {"ref": "FC", "type": "BOX"}],
                 "leads": [{"id": "W1", "from": "A-N", "to": "R5-IN-2"}, {"id": "W2", "from": "A-P", "to": "R5-IN-1"},
                           {"id": "W3", "from": "A-N", "to": "R6-IN-2"}, {"id": "W4", "from": "A-P", "to": "R6-IN-1"},
                           {"id": "W5", "from": "R5-OUT", "to": "FC-S"}, {"id": "W6", "from": "R6-OUT", "to": "FC-X"}]}
                """));
        assertVolts(4.9, 6, 6.3, circuit, "FC-S-1", "FC-S-2");
        assertEquals(List.of("R5 5", "R6 6"), feeding(circuit, "FC-S-1"));
    }

    @Test
    void whatIsNotKnownStaysOpenAndIsNamed() {
        Circuit circuit = circuit(read("""
                {"types": [
                  {"name": "BARE", "plugs": [{"name": "N", "pins": [{"number": "1", "role": "pack minus"}]},
                                             {"name": "P", "pins": [{"number": "1", "role": "pack plus"}]}],
                   "parts": [{"name": "cells", "kind": "source", "from": "-", "to": "+", "rating": {"cells": 6, "nominalV": 3.7}}]},
                  {"name": "BLACK", "plugs": [{"name": "N", "pins": [{"number": "1", "role": "pack minus"}]},
                                              {"name": "P", "pins": [{"number": "1", "role": "pack plus"}]}]}],
                 "units": [{"ref": "A", "type": "BARE"}, {"ref": "B", "type": "BLACK"}, {"ref": "PDB", "type": "BOARD"}],
                 "leads": [{"id": "W1", "from": "A-N", "to": "PDB-BN"}, {"id": "W2", "from": "A-P", "to": "B-N"},
                           {"id": "W3", "from": "B-P", "to": "PDB-BP"}]}
                """));
        PowerGraph power = PowerGraph.of(circuit);
        Volts volts =
                power.between(pin(circuit, "PDB-BP"), pin(circuit, "PDB-BN")).orElseThrow();
        assertEquals(0, volts.low());
        assertEquals(OptionalDouble.empty(), volts.nominal());
        assertEquals(Double.POSITIVE_INFINITY, volts.high());
        assertEquals(Volts.Sign.ABOVE, volts.sign());
        assertEquals(
                List.of(
                        new Gap("voltage of output +", "B"),
                        new Gap("voltage of an empty cell", "A"),
                        new Gap("voltage of a full cell", "A")),
                power.missing(pin(circuit, "PDB-BP")));
    }

    @Test
    void inAStateOnlyWhatIsMadeWorks() {
        var aircraft = read("""
                {"units": [{"ref": "A", "type": "PACK"}, {"ref": "REG", "type": "REG5"}, {"ref": "FC", "type": "BOX"}],
                 "leads": [{"id": "W1", "from": "A-N", "to": "REG-IN-2"}, {"id": "W2", "from": "A-P", "to": "REG-IN-1"},
                           {"id": "W3", "from": "REG-OUT", "to": "FC-S"}],
                 "states": [{"name": "as flown"}, {"name": "pack out", "absent": ["A"]}, {"name": "plug out", "pulled": ["REG-IN"]},
                            {"name": "regulator off", "off": ["REG:buck"]}]}
                """);
        List<Boolean> fed = Circuit.all(ringout.graph.Wiring.of(aircraft)).stream()
                .map(circuit -> PowerGraph.of(circuit).fed(pin(circuit, "FC-S-1")))
                .toList();
        assertEquals(List.of(true, false, false, false), fed);
    }
}
