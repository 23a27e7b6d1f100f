package ringout.draw.scene;

/** What a wire carries, told apart on paper by the line alone. */
public enum WireKind {
    /** A supply: thick solid line. */
    SUPPLY("supply"),
    /** A return, 0V: long dashes. */
    RETURN("0V return"),
    /** One leg of a bus pair: double line. */
    BUS("bus pair"),
    /** Pulses to a motor controller or servo: dash and dot. */
    PULSE("PWM pulse"),
    /** Serial data: dots. */
    SERIAL("serial"),
    /** I2C clock or data: dash and two dots. */
    I2C("I2C"),
    /** Video or another fast signal on coaxial cable: line with rings. */
    VIDEO("video, fast"),
    /** A motor phase: thick line of short dashes. */
    PHASE("motor phase"),
    /** Anything else: thin solid line. */
    OTHER("other signal");

    private final String words;

    WireKind(String words) {
        this.words = words;
    }

    /** {@return the words of the legend} */
    public String words() {
        return words;
    }
}
