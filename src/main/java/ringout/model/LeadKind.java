package ringout.model;

import java.util.List;

/** What a lead carries. */
public enum LeadKind implements Word {
    /** power. */
    POWER("power", "pwr"),
    /** power 5 V. */
    POWER_5V("power 5 V", "pwr5"),
    /** return. */
    RETURN("return", "ret"),
    /** can. */
    CAN("can"),
    /** pulse. */
    PULSE("pulse", "pwm", "servo"),
    /** phase. */
    PHASE("phase", "ph"),
    /** sense. */
    SENSE("sense"),
    /** light. */
    LIGHT("light", "led"),
    /** data. */
    DATA("data"),
    /** serial. */
    SERIAL("serial", "uart"),
    /** i2c. */
    I2C("i2c"),
    /** video. */
    VIDEO("video"),
    /** trigger. */
    TRIGGER("trigger", "trig"),
    /** coax. */
    COAX("coax", "rf"),
    /** other. */
    OTHER("other");

    @SuppressWarnings("ImmutableEnumChecker") // List.of is immutable
    private final List<String> words;

    LeadKind(String... words) {
        this.words = List.of(words);
    }

    @Override
    public List<String> words() {
        return words;
    }
}
