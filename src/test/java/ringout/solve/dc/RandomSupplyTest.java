package ringout.solve.dc;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import ringout.solve.dc.DcElement.Diode;
import ringout.solve.dc.DcElement.Load;
import ringout.solve.dc.DcElement.Regulator;
import ringout.solve.dc.DcElement.Resistor;
import ringout.solve.dc.DcElement.Source;
import ringout.solve.dc.DcOutcome.VoltageCollapse;
import ringout.solve.dc.Draw.ConstantCurrent;
import ringout.solve.dc.Draw.ConstantPower;
import ringout.solve.dc.Draw.Resistive;

/** Random supplies: one return, packs, wires, loads of all kinds; held against {@link DenseFlow} and against the laws. */
class RandomSupplyTest {

    private static final int RETURN = 0;

    /** How near to the fold the reference gets before its matrix is too nearly singular for it. */
    private static final double NEAR_FOLD = 1e-3;

    /** Voltages as the dense reference finds them; a collapse where it finds none, at the same margin, never below 0 V. */
    @Property(tries = 400)
    void likeTheDenseReference(@ForAll long seed) {
        DcCircuit circuit = supply(new Random(seed));
        int n = circuit.nodes();
        DenseFlow reference = DenseFlow.of(circuit);
        DcOutcome outcome = DcSolver.solve(circuit);
        if (outcome instanceof SolvedPoint point) {
            assertTrue(reference.carried() > 1 - NEAR_FOLD, "solved, but the reference carries " + reference.carried());
            for (int v = 0; v < n && reference.carried() == 1; v++) {
                double expected = reference.volts(v);
                assertEquals(expected, Points.volts(point.voltage(v)), 1e-9 * reference.slack());
            }
            assertEquals(0, point.kirchhoffResidual(), 1e-11);
            assertEquals(0, point.powerImbalance(), 1e-9);
        } else {
            VoltageCollapse collapse = (VoltageCollapse) outcome;
            assertEquals(reference.carried(), collapse.margin(), NEAR_FOLD);
            assertTrue(circuit.elements().get(collapse.element()) instanceof Load, "names no load");
            collapse.last().ifPresent(last -> assertLawful(circuit, last, collapse.margin()));
        }
    }

    /** Packs behind diodes, combiners of regulators, loads behind them: always a verdict, and always lawful. */
    @Property(tries = 1500)
    void diodesAndRegulators(@ForAll long seed) {
        DcCircuit circuit = combined(new Random(seed));
        DcOutcome outcome = DcSolver.solve(circuit);
        assertTrue(!(outcome instanceof DcOutcome.Unsettled), "unsettled");
        if (outcome instanceof SolvedPoint point) {
            assertLawful(circuit, point, 1);
        }
    }

    private static DcCircuit supply(Random random) {
        int n = 3 + random.nextInt(20);
        DcCircuit.Builder b = wires(random, n);
        int sources = 1 + random.nextInt(2);
        for (int s = 0; s < sources; s++) {
            b.add(new Source(RETURN, 1 + random.nextInt(n - 1), 20 + 2 * random.nextDouble(), ohm(random)));
        }
        loads(random, b, n, Math.exp(2.5 * random.nextGaussian()));
        return b.build();
    }

    static DcCircuit combined(Random random) {
        int n = 4 + random.nextInt(12);
        DcCircuit.Builder b = wires(random, n);
        int packs = 1 + random.nextInt(3);
        for (int s = 0; s < packs; s++) {
            int plus = 1 + random.nextInt(n - 1);
            b.add(new Source(RETURN, plus, 15 + 10 * random.nextDouble(), ohm(random)));
        }
        for (int d = random.nextInt(6); d > 0; d--) {
            double drop = random.nextBoolean() ? 0 : 0.5;
            b.add(new Diode(
                    1 + random.nextInt(n - 1), 1 + random.nextInt(n - 1), drop, 0.001 + 0.01 * random.nextDouble()));
        }
        for (int r = random.nextInt(4); r > 0; r--) {
            RegulatorRating rating = RegulatorRating.switching(4 + 8 * random.nextDouble(), 0.001, 0.9, 0.01);
            b.add(new Regulator(
                    1 + random.nextInt(n - 1),
                    RETURN,
                    1 + random.nextInt(n - 1),
                    RETURN,
                    random.nextBoolean() ? rating : rating.droppingOutAt(1)));
        }
        loads(random, b, n, 0.3 * Math.exp(random.nextGaussian()));
        return b.build();
    }

    private static double ohm(Random random) {
        return 0.001 * Math.exp(2 * random.nextDouble());
    }

    /** A tree over the nodes above the return, and some more wires, some of them a thousand times better than others. */
    private static DcCircuit.Builder wires(Random random, int n) {
        DcCircuit.Builder b = DcCircuit.builder(n).reference(RETURN);
        for (int v = 2; v < n; v++) {
            boolean zero = random.nextInt(8) == 0;
            b.add(new Resistor(1 + random.nextInt(v - 1), v, zero ? 0 : ohm(random) * Math.pow(10, random.nextInt(4))));
        }
        for (int extra = random.nextInt(n); extra > 0 && n > 3; extra--) {
            b.add(new Resistor(1 + random.nextInt(n - 1), 1 + random.nextInt(n - 1), ohm(random)));
        }
        return b;
    }

    private static void loads(Random random, DcCircuit.Builder b, int n, double scale) {
        int loads = 1 + random.nextInt(n);
        for (int l = 0; l < loads; l++) {
            int at = 1 + random.nextInt(n - 1);
            Draw draw =
                    switch (random.nextInt(3)) {
                        case 0 -> new ConstantCurrent(scale * random.nextDouble());
                        case 1 -> new ConstantPower(20 * scale * random.nextDouble());
                        default -> new Resistive(5 + 100 * random.nextDouble());
                    };
            b.add(new Load(at, RETURN, draw));
        }
    }

    private static void assertLawful(DcCircuit circuit, SolvedPoint point, double scale) {
        for (int e = 0; e < circuit.elements().size(); e++) {
            DcElement element = circuit.elements().get(e);
            if (element instanceof Diode d) {
                assertTrue(point.amps(e) >= -1e-6, "backwards " + point.amps(e));
                double across = Points.volts(point.between(d.anode(), d.cathode()));
                assertTrue(
                        point.state(e) != ElementState.BLOCKING || across <= d.dropVolts() + 1e-6, "blocks " + across);
            } else if (element instanceof Load l && point.state(e) == ElementState.WORKING) {
                double volts = Points.volts(point.between(l.plus(), l.minus()));
                assertTrue(volts >= 0, "a load with " + volts + " V");
                if (l.draw() instanceof ConstantPower p) {
                    assertEquals(scale * p.watts(), volts * point.amps(e), 1e-6 * (1 + p.watts()));
                }
            } else if (element instanceof Regulator r) {
                assertTrue(point.amps(e) >= -1e-6, "a regulator takes " + point.amps(e) + " A back");
                double volts = Points.volts(point.between(r.outPlus(), r.outMinus()));
                assertTrue(
                        point.state(e) != ElementState.WORKING
                                || volts <= r.rating().volts() + 1e-6,
                        "lifts " + volts);
            }
        }
    }
}
