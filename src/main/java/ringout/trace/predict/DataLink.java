package ringout.trace.predict;

import java.util.List;

/**
 * A way by which one unit hears another, as the healthy circuit has it.
 *
 * @param from number of the unit that speaks; of both where both do
 * @param to number of the unit that hears
 * @param form what it is
 * @param lines what has to be one point for it to work
 */
record DataLink(int from, int to, Form form, List<Line> lines) {
    /** What a link is. */
    enum Form {
        /** Both legs of a two-wire bus. */
        BUS(true),
        /** Clock and data. */
        I2C(true),
        /** Phases of a motor. */
        PHASES(true),
        /** A pair of a point-to-point port, or an antenna lead. */
        PAIR(true),
        /** A driven wire: serial, pulse, sense, logic, video. */
        WIRE(false);

        private final boolean bothWays;

        Form(boolean bothWays) {
            this.bothWays = bothWays;
        }

        boolean bothWays() {
            return bothWays;
        }
    }

    /**
     * Two points.
     *
     * @param a vertex at the speaker
     * @param b vertex at the hearer
     */
    record Line(int a, int b) {}
}
