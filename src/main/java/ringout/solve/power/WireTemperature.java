package ringout.solve.power;

import ringout.graph.Wire;
import ringout.solve.Resistivity;

/** The temperature conductors have. */
public enum WireTemperature {
    /** 20 degC, which tables and meters mean. */
    REFERENCE,
    /** The temperature around each lead, where it is given; 20 degC elsewhere. */
    AMBIENT;

    /** {@return the temperature of a conductor in degC} */
    public double of(Wire wire) {
        return this == REFERENCE
                ? Resistivity.REFERENCE_C
                : wire.lead().ambientC().or(Resistivity.REFERENCE_C);
    }
}
