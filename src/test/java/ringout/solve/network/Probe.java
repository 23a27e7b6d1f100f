package ringout.solve.network;

import static org.junit.jupiter.api.Assertions.assertInstanceOf;

/** Reads numbers out of answers that may also say that there is none. */
final class Probe {

    private Probe() {}

    static double ohms(Resistance resistance) {
        return assertInstanceOf(Resistance.Ohms.class, resistance).value();
    }

    static double volts(NodeVoltage voltage) {
        return assertInstanceOf(NodeVoltage.Volts.class, voltage).value();
    }

    static void assertFloating(NodeVoltage voltage) {
        assertInstanceOf(NodeVoltage.Floating.class, voltage);
    }
}
