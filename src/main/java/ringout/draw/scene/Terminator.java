package ringout.draw.scene;

/** The terminating resistor of a bus member. */
public enum Terminator {
    /** It has none and needs none. */
    NONE,
    /** There and on: solid resistor. */
    ON,
    /** There and off: hollow resistor. */
    OFF,
    /** It ought to be on here and is not: ghost. */
    MISSING,
    /** It is on and ought not to be: solid resistor, crossed out. */
    EXTRA
}
