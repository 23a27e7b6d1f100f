package ringout.model;

import java.util.List;

/** What a contact carries. */
public enum PinRole implements Word {
    /** supply in. */
    SUPPLY_IN("supply in", "in", "vin", "power in"),
    /** supply out. */
    SUPPLY_OUT("supply out", "out", "vout", "power out"),
    /** supply through. */
    SUPPLY_THROUGH("supply through", "through", "rail", "b+", "vbat"),
    /** 0V. */
    ZERO_V("0V", "gnd", "g", "-", "blk", "ground", "0 v"),
    /** pack plus. */
    PACK_PLUS("pack plus", "+", "pack +", "bat+"),
    /** pack minus. */
    PACK_MINUS("pack minus", "pack -", "bat-"),
    /** can H. */
    CAN_H("can H", "canh", "h", "can high", "can_h"),
    /** can L. */
    CAN_L("can L", "canl", "l", "can low", "can_l"),
    /** serial out. */
    SERIAL_OUT("serial out", "tx", "txd", "t"),
    /** serial in. */
    SERIAL_IN("serial in", "rx", "rxd", "r"),
    /** pulse out. */
    PULSE_OUT("pulse out", "servo out", "motor out", "pwm out"),
    /** pulse in. */
    PULSE_IN("pulse in", "servo in", "motor in", "pwm in", "sig", "s"),
    /** sense out. */
    SENSE_OUT("sense out"),
    /** sense in. */
    SENSE_IN("sense in"),
    /** logic out. */
    LOGIC_OUT("logic out"),
    /** logic in. */
    LOGIC_IN("logic in"),
    /** video out. */
    VIDEO_OUT("video out"),
    /** video in. */
    VIDEO_IN("video in"),
    /** scl. */
    SCL("scl", "clock"),
    /** sda. */
    SDA("sda", "data"),
    /** phase. */
    PHASE("phase"),
    /** coil. */
    COIL("coil"),
    /** pair plus. */
    PAIR_P("pair plus", "d+"),
    /** pair minus. */
    PAIR_N("pair minus", "d-"),
    /** rf. */
    RF("rf", "antenna"),
    /** shield. */
    SHIELD("shield", "screen"),
    /** passive. */
    PASSIVE("passive", "joint"),
    /** none. */
    NONE("none", "nc", "not connected");

    @SuppressWarnings("ImmutableEnumChecker") // List.of is immutable
    private final List<String> words;

    PinRole(String... words) {
        this.words = List.of(words);
    }

    @Override
    public List<String> words() {
        return words;
    }
}
