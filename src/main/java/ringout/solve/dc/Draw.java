package ringout.solve.dc;

/** How the current of a load follows its voltage. */
public sealed interface Draw {

    /**
     * The same current at any voltage above zero.
     *
     * @param amps current, 0 or more
     */
    record ConstantCurrent(double amps) implements Draw {}

    /**
     * The same power at any voltage above zero: the lower the voltage, the higher the current.
     *
     * @param watts power, 0 or more
     */
    record ConstantPower(double watts) implements Draw {}

    /**
     * A resistance.
     *
     * @param ohms resistance, above 0
     */
    record Resistive(double ohms) implements Draw {}
}
