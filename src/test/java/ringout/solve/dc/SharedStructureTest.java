package ringout.solve.dc;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import ringout.solve.dc.DcElement.Load;
import ringout.solve.dc.DcElement.Resistor;
import ringout.solve.dc.DcElement.Source;

/** Cases of one circuit stand on one structure, and give what each gives alone. */
class SharedStructureTest {

    private static DcCircuit loop(double volts, double ohms, Draw draw) {
        DcCircuit.Builder b = DcCircuit.builder(3).reference(0);
        b.add(new Source(0, 1, volts, 0.1));
        b.add(new Resistor(1, 2, ohms));
        b.add(new Load(2, 0, draw));
        return b.build();
    }

    private static double volts(DcSolver solver) {
        return Points.volts(((SolvedPoint) solver.solve()).voltage(2));
    }

    @Test
    void otherValuesShare() {
        DcSolver first = DcSolver.of(loop(12, 0.9, new Draw.ConstantCurrent(1)));
        DcSolver second = first.like(loop(24, 0.4, new Draw.ConstantCurrent(2)));
        assertTrue(first.sharesWith(second));
        assertEquals(11, volts(first), 1e-12);
        assertEquals(23, volts(second), 1e-12);
        DcSolver power = second.like(loop(24, 0.9, new Draw.ConstantPower(23)));
        assertTrue(first.sharesWith(power));
        assertEquals(23, volts(power), 1e-12);
        assertEquals(144 / 23.0, power.margin(), 1e-5);
    }

    @Test
    void otherConnectionsDoNot() {
        DcSolver first = DcSolver.of(loop(12, 0.9, new Draw.ConstantCurrent(1)));
        DcSolver contracted = first.like(loop(12, 0, new Draw.ConstantCurrent(1)));
        DcSolver resistive = first.like(loop(12, 0.9, new Draw.Resistive(11)));
        assertFalse(first.sharesWith(contracted));
        assertFalse(first.sharesWith(resistive));
        assertEquals(11.9, volts(contracted), 1e-12);
        assertEquals(11, volts(resistive), 1e-12);
    }
}
