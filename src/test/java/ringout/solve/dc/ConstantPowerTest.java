package ringout.solve.dc;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import ringout.solve.dc.DcElement.Load;
import ringout.solve.dc.DcElement.Resistor;
import ringout.solve.dc.DcElement.Source;
import ringout.solve.dc.DcOutcome.VoltageCollapse;
import ringout.solve.dc.Draw.ConstantCurrent;
import ringout.solve.dc.Draw.ConstantPower;

/** Loads of constant power against closed forms. */
class ConstantPowerTest {

    /**
     * Four arms of 150 W on one pack. Exact: with R = 4 (Ri + Rmain) + Rarm seen by each arm, I = (E - sqrt(E^2 - 4 R P)) / 2R
     * and no solution above E^2 / 4R = 1836.4 W. Wire resistances from ASTM B258 sizes: main 2 x 0.30 m AWG 12, arms
     * 2 x 0.25 m AWG 16.
     */
    @Test
    void fourArmsOnOnePack() {
        DcCircuit circuit = arms(150);
        SolvedPoint point = Points.solved(circuit);
        for (int arm = 0; arm < 4; arm++) {
            assertEquals(6.900672, point.amps(2 + 2 * arm + 1), 5e-7);
            assertEquals(21.737012, Points.volts(point.voltage(3 + arm)), 5e-7);
            assertEquals(150, point.watts(2 + 2 * arm + 1), 1e-9);
        }
        assertEquals(27.602690, point.amps(0), 5e-6);
        assertEquals(21.782468, Points.volts(point.voltage(2)), 5e-7);
        assertEquals(1836.4, 150 * DcSolver.loadMargin(circuit), 0.05);
        // For equal loads on one stem the certificate is the fold itself.
        assertEquals(1836.4, 150 * point.certifiedGrowth(), 0.05);
    }

    @Test
    void nothingCarriesMoreThanTheFold() {
        assertInstanceOf(SolvedPoint.class, DcSolver.solve(arms(1836.3)));
        VoltageCollapse collapse = assertInstanceOf(VoltageCollapse.class, DcSolver.solve(arms(2000)));
        assertEquals(1836.4 / 2000, collapse.margin(), 5e-5);
        assertEquals(3, collapse.element());
        assertTrue(collapse.last().isPresent());
    }

    /** One loop, E = 28 V, R = 1 ohm: the fold is at 196 W and 14 V; V = (E + sqrt(E^2 - 4 R P)) / 2 before it. */
    @Test
    void upToTheFoldAndNotBeyond() {
        for (double part : new double[] {0, 0.1, 0.5, 0.9, 0.99, 0.999, 0.999999}) {
            double watts = 196 * part;
            SolvedPoint point = Points.solved(loop(watts));
            double exact = (28 + Math.sqrt(28 * 28 - 4 * watts)) / 2;
            assertEquals(exact, Points.volts(point.voltage(2)), 1e-7);
        }
        for (double part : new double[] {1.000001, 1.01, 2, 1000}) {
            VoltageCollapse collapse = assertInstanceOf(VoltageCollapse.class, DcSolver.solve(loop(196 * part)));
            assertEquals(1 / part, collapse.margin(), 1e-6 / part);
            assertEquals(2, collapse.element());
        }
    }

    @Test
    void aConstantCurrentCannotPullBelowZero() {
        DcCircuit.Builder b = DcCircuit.builder(3).reference(0);
        b.add(new Source(0, 1, 12, 0.1));
        b.add(new Resistor(1, 2, 0.9));
        int load = b.add(new Load(2, 0, new ConstantCurrent(15)));
        VoltageCollapse collapse = assertInstanceOf(VoltageCollapse.class, DcSolver.solve(b.build()));
        assertEquals(12.0 / 15, collapse.margin(), 1e-6);
        assertEquals(load, collapse.element());
    }

    /** The weak branch gives way first and is named, not the larger load on the strong one. */
    @Test
    void theLoadThatGivesWayIsNamed() {
        DcCircuit.Builder b = DcCircuit.builder(4).reference(0);
        b.add(new Source(0, 1, 24, 0.01));
        b.add(new Resistor(1, 2, 0.01));
        b.add(new Resistor(1, 3, 5));
        b.add(new Load(2, 0, new ConstantPower(500)));
        int weak = b.add(new Load(3, 0, new ConstantPower(40)));
        VoltageCollapse collapse = assertInstanceOf(VoltageCollapse.class, DcSolver.solve(b.build()));
        assertEquals(weak, collapse.element());
        assertTrue(collapse.margin() > 0.6 && collapse.margin() < 0.75, "margin " + collapse.margin());
    }

    @Test
    void loadsWithoutVoltageDrawNothing() {
        DcCircuit.Builder b = DcCircuit.builder(6).reference(0);
        b.add(new Source(0, 1, 24, 0.01));
        int open = b.add(new Resistor(1, 2, Double.POSITIVE_INFINITY));
        int cut = b.add(new Load(2, 0, new ConstantPower(100)));
        int crossed = b.add(new Load(0, 1, new ConstantCurrent(3)));
        int noReturn = b.add(new Load(1, 3, new ConstantCurrent(3)));
        int apart = b.add(new Load(4, 5, new ConstantPower(3)));
        SolvedPoint point = Points.solved(b);
        assertEquals(0, point.amps(open));
        assertEquals(0, point.amps(0), 1e-12);
        assertEquals(ElementState.UNFED, point.state(cut));
        assertEquals(ElementState.REVERSED, point.state(crossed));
        assertEquals(ElementState.UNFED, point.state(noReturn));
        assertEquals(ElementState.UNFED, point.state(apart));
        assertEquals(24, Points.volts(point.voltage(1)), 1e-12);
    }

    /** 58.8 V and 57.4 V packs connected: 1.4 V over 36.1 milliohm is 38.8 A from one into the other. */
    @Test
    void unequalPacksInParallel() {
        DcCircuit.Builder b = DcCircuit.builder(3).reference(0);
        int full = b.add(new Source(0, 1, 58.8, 0.0172));
        int low = b.add(new Source(0, 2, 57.4, 0.0189));
        int joint = b.add(new Resistor(1, 2, 0));
        SolvedPoint point = Points.solved(b);
        assertEquals(38.78, point.amps(full), 0.005);
        assertEquals(-38.78, point.amps(low), 0.005);
        assertEquals(38.78, point.amps(joint), 0.005);
    }

    static DcCircuit arms(double watts) {
        DcCircuit.Builder b = DcCircuit.builder(7).reference(0);
        b.add(new Source(0, 1, 22.2, 0.012));
        b.add(new Resistor(1, 2, 0.00312648));
        for (int arm = 0; arm < 4; arm++) {
            b.add(new Resistor(2, 3 + arm, 0.00658725));
            b.add(new Load(3 + arm, 0, new ConstantPower(watts)));
        }
        return b.build();
    }

    private static DcCircuit loop(double watts) {
        DcCircuit.Builder b = DcCircuit.builder(3).reference(0);
        b.add(new Source(0, 1, 28, 0.4));
        b.add(new Resistor(1, 2, 0.6));
        b.add(new Load(2, 0, new ConstantPower(watts)));
        return b.build();
    }
}
