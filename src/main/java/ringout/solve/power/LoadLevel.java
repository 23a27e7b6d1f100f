package ringout.solve.power;

/** Which of the figures of a load is drawn. */
public enum LoadLevel {
    /** Switched on and at rest. */
    IDLE,
    /** Average in use. */
    AVERAGE,
    /** Peak, all loads at once. */
    PEAK
}
