package ringout.solve.dc;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import ringout.solve.network.NodeVoltage;

/** Reads numbers out of operating points, and verifies the point on the way. */
final class Points {

    private Points() {}

    static SolvedPoint solved(DcCircuit circuit) {
        SolvedPoint point = assertInstanceOf(SolvedPoint.class, DcSolver.solve(circuit));
        assertEquals(0, point.kirchhoffResidual(), 1e-12);
        assertEquals(0, point.powerImbalance(), 1e-9);
        return point;
    }

    static SolvedPoint solved(DcCircuit.Builder circuit) {
        return solved(circuit.build());
    }

    static double volts(NodeVoltage voltage) {
        return assertInstanceOf(NodeVoltage.Volts.class, voltage).value();
    }
}
