package ringout.solve.dc;

/** One element of a direct-current circuit, between numbered nodes. */
public sealed interface DcElement {

    /**
     * A conductor, contact, fuse, closed switch, sense resistor.
     *
     * @param a first node
     * @param b second node; current is positive from the first to the second
     * @param ohms resistance, 0 (one point) to infinity (open)
     */
    record Resistor(int a, int b, double ohms) implements DcElement {}

    /**
     * A pack or a bench supply.
     *
     * @param minus node of the minus pole
     * @param plus node of the plus pole; current is positive when it leaves this pole
     * @param volts open-circuit voltage
     * @param ohms internal resistance, above 0
     */
    record Source(int minus, int plus, double volts, double ohms) implements DcElement {}

    /**
     * A consumer.
     *
     * @param plus node of its plus terminal, where positive current enters
     * @param minus node of its minus terminal
     * @param draw how its current follows its voltage
     */
    record Load(int plus, int minus, Draw draw) implements DcElement {}

    /**
     * A diode, real or ideal (a controller that imitates one).
     *
     * @param anode node of the anode
     * @param cathode node of the cathode; current flows from anode to cathode only
     * @param dropVolts forward voltage at the first milliamperes, 0 for an ideal diode
     * @param ohms resistance added when it conducts, above 0
     */
    record Diode(int anode, int cathode, double dropVolts, double ohms) implements DcElement {}

    /**
     * A regulator or converter. Its output gives current and never takes any.
     *
     * @param inPlus node of the input
     * @param inMinus node of the input's return
     * @param outPlus node of the output; its current is positive when it leaves here
     * @param outMinus node of the output's return, the input's unless it is isolated
     * @param rating what it makes of its input
     */
    record Regulator(int inPlus, int inMinus, int outPlus, int outMinus, RegulatorRating rating) implements DcElement {}
}
