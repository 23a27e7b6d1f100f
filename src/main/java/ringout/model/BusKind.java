package ringout.model;

import java.util.List;

/** Kind of a bus. */
public enum BusKind implements Word {
    /** can. */
    CAN("can"),
    /** i2c. */
    I2C("i2c"),
    /** rs485. */
    RS485("rs485", "rs-485"),
    /** other. */
    OTHER("other");

    @SuppressWarnings("ImmutableEnumChecker") // List.of is immutable
    private final List<String> words;

    BusKind(String... words) {
        this.words = List.of(words);
    }

    @Override
    public List<String> words() {
        return words;
    }
}
