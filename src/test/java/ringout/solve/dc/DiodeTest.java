package ringout.solve.dc;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import ringout.solve.dc.DcElement.Diode;
import ringout.solve.dc.DcElement.Load;
import ringout.solve.dc.DcElement.Source;
import ringout.solve.dc.Draw.ConstantCurrent;
import ringout.solve.dc.Draw.ConstantPower;
import ringout.solve.dc.Draw.Resistive;
import ringout.solve.network.NodeVoltage;

/** Diodes by hand. */
class DiodeTest {

    private static final double OHMS = 1e-3;

    /** The higher of two supplies carries all, the lower none: each with its own diode. */
    @Test
    void combinerTakesTheHigher() {
        DcCircuit.Builder b = DcCircuit.builder(4).reference(0);
        b.add(new Source(0, 1, 5.2, 0.01));
        b.add(new Source(0, 2, 5.0, 0.01));
        int high = b.add(new Diode(1, 3, 0, OHMS));
        int low = b.add(new Diode(2, 3, 0, OHMS));
        b.add(new Load(3, 0, new ConstantCurrent(2)));
        SolvedPoint point = Points.solved(b);
        assertEquals(2, point.amps(high), 1e-12);
        assertEquals(0, point.amps(low));
        assertEquals(ElementState.BLOCKING, point.state(low));
        assertEquals(5.2 - 2 * 0.011, Points.volts(point.voltage(3)), 1e-12);
    }

    /** The lower one comes in when the higher sags below it: 10 A through 0.1 ohm take 5.2 V below 5.0 V. */
    @Test
    void theSecondComesInWhenTheFirstSags() {
        DcCircuit.Builder b = DcCircuit.builder(4).reference(0);
        b.add(new Source(0, 1, 5.2, 0.099));
        b.add(new Source(0, 2, 5.0, 0.099));
        int high = b.add(new Diode(1, 3, 0, OHMS));
        int low = b.add(new Diode(2, 3, 0, OHMS));
        b.add(new Load(3, 0, new ConstantCurrent(10)));
        SolvedPoint point = Points.solved(b);
        assertEquals(6, point.amps(high), 1e-12);
        assertEquals(4, point.amps(low), 1e-12);
    }

    /** A load that only both supplies together can carry. */
    @Test
    void theSecondSavesTheFirstFromCollapse() {
        DcCircuit.Builder b = DcCircuit.builder(4).reference(0);
        b.add(new Source(0, 1, 24, 1));
        b.add(new Source(0, 2, 20, 1));
        b.add(new Diode(1, 3, 0, OHMS));
        int low = b.add(new Diode(2, 3, 0, OHMS));
        b.add(new Load(3, 0, new ConstantPower(180)));
        SolvedPoint point = Points.solved(b);
        assertTrue(point.amps(low) > 0);
        assertEquals(180, point.watts(4), 1e-9);
    }

    @Test
    void bridgeRectifierTurnsEitherPolarity() {
        for (double volts : new double[] {24, -24}) {
            DcCircuit.Builder b = DcCircuit.builder(4).reference(3);
            b.add(new Source(0, 1, volts, 0.01));
            b.add(new Diode(1, 2, 0.7, OHMS));
            b.add(new Diode(0, 2, 0.7, OHMS));
            b.add(new Diode(3, 1, 0.7, OHMS));
            b.add(new Diode(3, 0, 0.7, OHMS));
            int load = b.add(new Load(2, 3, new Resistive(10)));
            SolvedPoint point = Points.solved(b);
            assertEquals((24 - 1.4) / 10.012, point.amps(load), 1e-12);
            assertEquals(22.6 / 10.012 * 10, Points.volts(point.voltage(2)), 1e-12);
        }
    }

    @Test
    void aReversedDiodeLeavesItsSideFloating() {
        DcCircuit.Builder b = DcCircuit.builder(3).reference(0);
        b.add(new Source(0, 1, 24, 0.01));
        int diode = b.add(new Diode(2, 1, 0.4, OHMS));
        int load = b.add(new Load(2, 0, new ConstantPower(10)));
        SolvedPoint point = Points.solved(b);
        assertEquals(ElementState.BLOCKING, point.state(diode));
        assertEquals(ElementState.UNFED, point.state(load));
        assertTrue(point.voltage(2) instanceof NodeVoltage.Floating);
    }
}
