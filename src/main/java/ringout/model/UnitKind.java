package ringout.model;

import java.util.List;

/** What a unit is for. */
public enum UnitKind implements Word {
    /** unit. */
    UNIT("unit"),
    /** pack. */
    PACK("pack", "battery"),
    /** board. */
    BOARD("board", "power board"),
    /** splice. */
    SPLICE("splice"),
    /** terminator. */
    TERMINATOR("terminator"),
    /** regulator. */
    REGULATOR("regulator", "bec"),
    /** monitor. */
    MONITOR("monitor", "power monitor"),
    /** flight controller. */
    CONTROLLER("flight controller", "controller"),
    /** speed controller. */
    SPEED_CONTROLLER("speed controller", "esc"),
    /** motor. */
    MOTOR("motor"),
    /** actuator. */
    ACTUATOR("actuator", "servo"),
    /** command receiver. */
    COMMAND_RECEIVER("command receiver"),
    /** satellite receiver. */
    SATELLITE_RECEIVER("satellite receiver", "gnss", "gps"),
    /** inertial unit. */
    INERTIAL("inertial unit", "imu"),
    /** radio. */
    RADIO("radio", "telemetry"),
    /** payload. */
    PAYLOAD("payload"),
    /** light. */
    LIGHT("light"),
    /** sensor. */
    SENSOR("sensor"),
    /** logger. */
    LOGGER("logger", "recorder"),
    /** gear controller. */
    GEAR("gear controller"),
    /** pump. */
    PUMP("pump"),
    /** ejector. */
    EJECTOR("ejector");

    @SuppressWarnings("ImmutableEnumChecker") // List.of is immutable
    private final List<String> words;

    UnitKind(String... words) {
        this.words = List.of(words);
    }

    @Override
    public List<String> words() {
        return words;
    }
}
