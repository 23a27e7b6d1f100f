package ringout.compare.judge;

import java.util.List;
import java.util.Optional;
import ringout.solve.meter.Reading;

/**
 * One test that a difference makes necessary again.
 *
 * @param kind what is done
 * @param what at what, in words
 * @param points where the meter is put on; none where nothing is measured
 * @param expected what it must show, by the list of the aircraft as it is now; nothing where no figure is computed
 * @param putBack what it must show when the difference is put back; nothing where the base has no such points
 */
public record Retest(
        Kind kind, String what, List<String> points, Optional<Reading> expected, Optional<Reading> putBack) {
    /** What is done. */
    public enum Kind {
        /** Continuity of a conductor, power off. */
        RING_OUT("ring out"),
        /** Ohms of a bus, power off. */
        BUS("bus ohms"),
        /** Volts at a consumer, propellers off. */
        POWER_UP("power up"),
        /** Number and direction of a motor, propellers off. */
        MOTOR("motor check"),
        /** Compass swing. */
        COMPASS("compass"),
        /** A setting or identity read back from the unit. */
        READ_BACK("read back"),
        /** A step of the procedure done again. */
        STEP("repeat step");

        private final String word;

        Kind(String word) {
            this.word = word;
        }

        /** The test in words. */
        public String word() {
            return word;
        }
    }

    /** Keeps its own copy. */
    public Retest {
        points = List.copyOf(points);
    }

    static Retest of(Kind kind, String what) {
        return new Retest(kind, what, List.of(), Optional.empty(), Optional.empty());
    }
}
