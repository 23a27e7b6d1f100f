package ringout.solve.dc;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import ringout.solve.dc.DcElement.Diode;
import ringout.solve.dc.DcElement.Load;
import ringout.solve.dc.DcElement.Regulator;
import ringout.solve.dc.DcElement.Resistor;
import ringout.solve.dc.DcElement.Source;
import ringout.solve.dc.Draw.ConstantCurrent;
import ringout.solve.dc.Draw.ConstantPower;
import ringout.solve.dc.Draw.Resistive;

/** Regulators by hand arithmetic. */
class RegulatorTest {

    /** 24 V to 12 V to 5 V with a common return: each input power is the output power over the efficiency. */
    @Test
    void cascadeFromTheLastRailToThePack() {
        DcCircuit.Builder b = DcCircuit.builder(5).reference(0);
        b.add(new Source(0, 1, 24, 0.1));
        b.add(new Resistor(1, 2, 0.1));
        int first = b.add(new Regulator(2, 0, 3, 0, RegulatorRating.switching(12, 0.01, 0.9, 0.02)));
        int second = b.add(new Regulator(3, 0, 4, 0, RegulatorRating.switching(5, 0.01, 0.8, 0.01)));
        b.add(new Load(4, 0, new ConstantCurrent(2)));
        b.add(new Load(3, 0, new ConstantCurrent(1)));
        SolvedPoint point = Points.solved(b);

        double secondOut = 2 * (5 - 0.02);
        assertEquals(4.98, Points.volts(point.voltage(4)), 1e-12);
        // Second input: i = 0.01 + (9.96 / 0.8) / v, v = 12 - 0.01 (i + 1).
        double v = 11.98;
        for (int k = 0; k < 50; k++) {
            v = 12 - 0.01 * (1 + 0.01 + secondOut / 0.8 / v);
        }
        assertEquals(v, Points.volts(point.voltage(3)), 1e-10);
        double firstOut = (12 - v) / 0.01;
        assertEquals(firstOut, point.amps(first), 1e-8);
        double watts = v * firstOut / 0.9;
        double u = 24;
        for (int k = 0; k < 200; k++) {
            u = 24 - 0.2 * (0.02 + watts / u);
        }
        assertEquals(u, Points.volts(point.voltage(2)), 1e-9);
        assertEquals(0.02 + watts / u, point.inputAmps(first), 1e-9);
        assertEquals(point.inputAmps(second) * v - secondOut, point.watts(second), 1e-9);
        assertTrue(point.linearSolutions() < 30, "solutions " + point.linearSolutions());
    }

    @Test
    void linearRegulatorPassesItsCurrent() {
        DcCircuit.Builder b = DcCircuit.builder(3).reference(0);
        b.add(new Source(0, 1, 12, 0.1));
        int r = b.add(new Regulator(1, 0, 2, 0, RegulatorRating.linear(5, 0.001, 0.005, 1)));
        b.add(new Load(2, 0, new ConstantCurrent(1)));
        SolvedPoint point = Points.solved(b);
        assertEquals(1.005, point.inputAmps(r), 1e-9);
        assertEquals(1.005 * (12 - 0.1005) - 4.999, point.watts(r), 1e-9);
        assertEquals(ElementState.WORKING, point.state(r));
    }

    @Test
    void belowDropoutTheOutputFollowsTheInput() {
        DcCircuit.Builder b = DcCircuit.builder(3).reference(0);
        b.add(new Source(0, 1, 5.5, 0.1));
        int r = b.add(new Regulator(1, 0, 2, 0, RegulatorRating.linear(5, 0.001, 0, 1)));
        b.add(new Load(2, 0, new ConstantCurrent(1)));
        SolvedPoint point = Points.solved(b);
        assertEquals(5.4 - 1 - 0.001, Points.volts(point.voltage(2)), 1e-10);
        assertEquals(ElementState.DROPPED_OUT, point.state(r));
    }

    /** 1.2 V into a regulator that needs 2 V more than it gives: no output, loads without voltage, no collapse. */
    @Test
    void belowItsDropoutARegulatorGivesNothing() {
        DcCircuit.Builder b = DcCircuit.builder(4).reference(0);
        b.add(new Source(0, 1, 1.2, 0.01));
        RegulatorRating rating = RegulatorRating.switching(12, 0.001, 0.9, 0).droppingOutAt(2);
        b.add(new Regulator(1, 0, 2, 0, rating));
        b.add(new Regulator(
                2, 0, 3, 0, RegulatorRating.switching(5, 0.001, 0.9, 0).droppingOutAt(1)));
        int first = b.add(new Load(2, 0, new ConstantCurrent(1)));
        int second = b.add(new Load(3, 0, new ConstantPower(1)));
        SolvedPoint point = Points.solved(b);
        assertEquals(ElementState.UNFED, point.state(first));
        assertEquals(ElementState.UNFED, point.state(second));
        assertEquals(0, point.amps(0), 1e-9);
    }

    /** 2 ohm behind 5 V at most 2 A: 4 V. A constant current above the limit finds no voltage at all. */
    @Test
    void currentLimit() {
        DcCircuit.Builder b = DcCircuit.builder(3).reference(0);
        b.add(new Source(0, 1, 12, 0.1));
        RegulatorRating rating = RegulatorRating.switching(5, 0.01, 0.9, 0).limitedTo(2);
        int r = b.add(new Regulator(1, 0, 2, 0, rating));
        b.add(new Load(2, 0, new Resistive(2)));
        SolvedPoint point = Points.solved(b);
        assertEquals(4, Points.volts(point.voltage(2)), 1e-8);
        assertEquals(2, point.amps(r), 1e-8);
        assertEquals(ElementState.LIMITED, point.state(r));

        b.add(new Load(2, 0, new ConstantCurrent(3)));
        DcOutcome.Overload overload = assertInstanceOf(DcOutcome.Overload.class, DcSolver.solve(b.build()));
        assertEquals(r, overload.element());
        assertEquals((5 + 3 * 2) / 2.01, overload.amps(), 1e-9);
        assertEquals(2, overload.limitAmps());
        assertTrue(overload.unlimited().isPresent());
    }

    /** Two outputs on one rail: the higher carries, the lower gives nothing and takes nothing. */
    @Test
    void theLowerOfTwoOutputsBlocks() {
        DcCircuit.Builder b = DcCircuit.builder(3).reference(0);
        b.add(new Source(0, 1, 12, 0.1));
        int high = b.add(new Regulator(1, 0, 2, 0, RegulatorRating.switching(5.2, 0.01, 0.9, 0)));
        int low = b.add(new Regulator(1, 0, 2, 0, RegulatorRating.switching(5.0, 0.01, 0.9, 0)));
        b.add(new Load(2, 0, new ConstantCurrent(1)));
        SolvedPoint point = Points.solved(b);
        assertEquals(1, point.amps(high), 1e-9);
        assertEquals(0, point.amps(low));
        assertEquals(ElementState.BLOCKING, point.state(low));
    }

    @Test
    void withoutInputThereIsNoOutput() {
        DcCircuit.Builder b = DcCircuit.builder(5).reference(0);
        b.add(new Source(0, 1, 12, 0.1));
        int dead = b.add(new Regulator(2, 0, 3, 0, RegulatorRating.switching(5, 0.01, 0.9, 0)));
        int behind = b.add(new Regulator(3, 0, 4, 0, RegulatorRating.switching(3.3, 0.01, 0.9, 0)));
        int load = b.add(new Load(4, 0, new ConstantCurrent(1)));
        SolvedPoint point = Points.solved(b);
        assertEquals(ElementState.UNFED, point.state(dead));
        assertEquals(ElementState.UNFED, point.state(behind));
        assertEquals(ElementState.UNFED, point.state(load));
    }

    /** An isolated output has voltages of its own and no connection to the input. */
    @Test
    void isolatedOutput() {
        DcCircuit.Builder b = DcCircuit.builder(4).reference(0).reference(2);
        b.add(new Source(0, 1, 48, 0.1));
        int r = b.add(new Regulator(1, 0, 3, 2, RegulatorRating.switching(12, 0.01, 0.9, 0)));
        b.add(new Load(3, 2, new ConstantPower(24)));
        SolvedPoint point = Points.solved(b);
        assertEquals(12 - 0.01 * point.amps(r), Points.volts(point.voltage(3)), 1e-10);
        assertEquals(24, Points.volts(point.voltage(3)) * point.amps(r), 1e-9);
    }

    /** Each of two regulators feeds the other's input through a diode; a pack starts one of them. */
    @Test
    void aRingOfRegulatorsComesToRest() {
        DcCircuit.Builder b = DcCircuit.builder(5).reference(0);
        b.add(new Source(0, 1, 12, 0.05));
        b.add(new Diode(1, 2, 0.3, 0.01));
        int down = b.add(new Regulator(2, 0, 3, 0, RegulatorRating.switching(5, 0.02, 0.9, 0.01)));
        int up = b.add(new Regulator(3, 0, 4, 0, RegulatorRating.switching(11, 0.02, 0.85, 0.01)));
        int back = b.add(new Diode(4, 2, 0.3, 0.01));
        b.add(new Load(4, 0, new ConstantCurrent(0.5)));
        SolvedPoint point = Points.solved(b);
        assertEquals(ElementState.BLOCKING, point.state(back));
        assertEquals(0.5, point.amps(up), 1e-9);
        assertTrue(point.amps(down) > 1);
    }

    @Test
    void aRegulatorCollapsesItsSource() {
        DcCircuit.Builder b = DcCircuit.builder(3).reference(0);
        b.add(new Source(0, 1, 12, 1));
        b.add(new Regulator(1, 0, 2, 0, RegulatorRating.switching(5, 0.001, 0.9, 0)));
        b.add(new Load(2, 0, new ConstantCurrent(10)));
        DcOutcome.VoltageCollapse collapse =
                assertInstanceOf(DcOutcome.VoltageCollapse.class, DcSolver.solve(b.build()));
        // 36 W at the input at most, 32.4 W at the output: i (5 - 0.001 i) = 32.4.
        double amps = (5 - Math.sqrt(25 - 4 * 0.001 * 32.4)) / 0.002;
        assertEquals(amps / 10, collapse.margin(), 1e-6);
        assertEquals(1, collapse.element());
    }
}
