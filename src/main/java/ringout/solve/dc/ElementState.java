package ringout.solve.dc;

/** What an element does at the operating point. */
public enum ElementState {
    /** Carries what its values say: a conductor, a source, a fed load, a conducting diode, a regulator in regulation. */
    WORKING,
    /** A load or a regulator without voltage. */
    UNFED,
    /** A load or a regulator with voltage the wrong way round; taken as drawing nothing. */
    REVERSED,
    /** A diode that blocks, or a regulator whose output is held higher by another source. */
    BLOCKING,
    /** A regulator whose output follows its input, because the input is too low. */
    DROPPED_OUT,
    /** A regulator that holds its current limit instead of its voltage. */
    LIMITED
}
