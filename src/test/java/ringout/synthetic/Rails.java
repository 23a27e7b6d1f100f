package ringout.synthetic;

/** Names of the rails inside synthetic units. */
final class Rails {
    /** What the packs give. */
    static final String MAIN = "ub";

    /** Supply of the avionics. */
    static final String LOGIC = "vl";

    /** What the controller gives to its ports. */
    static final String PORTS = "vl ports";

    /** Supply of the payload. */
    static final String TWELVE = "v12";

    /** Supply of the actuators. */
    static final String SIX = "v6";

    /** Volts of the avionics supply. */
    static final double LOGIC_V = 5.3;

    private Rails() {}
}
