package ringout.read.draft;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import ringout.model.LeadKind;
import ringout.model.PinRole;
import ringout.model.UnitKind;

/**
 * What names of the trade usually mean (common practice, no source). Only names that mean one thing: SIG or 5V can go either
 * way, and are asked about.
 */
final class TradeNames {
    private static final List<Map.Entry<Pattern, UnitKind>> UNITS = List.of(
            unit("esc|regler|var", UnitKind.SPEED_CONTROLLER),
            unit("fc|fcu|flc|autopilot", UnitKind.CONTROLLER),
            unit("bat|batt|akku|accu|pack", UnitKind.PACK),
            unit("gps|gnss|gn", UnitKind.SATELLITE_RECEIVER),
            unit("rx|rc|empf|empfaenger|empf\u00e4nger|recepteur|r\u00e9cepteur", UnitKind.COMMAND_RECEIVER),
            unit("mot|motor|moteur", UnitKind.MOTOR),
            unit("pdb|board|verteiler", UnitKind.BOARD),
            unit("bec|reg|ubec", UnitKind.REGULATOR),
            unit("imu|ins", UnitKind.INERTIAL),
            unit("log|logger|rec", UnitKind.LOGGER),
            unit("led|light|licht|feu", UnitKind.LIGHT),
            unit("srv|servo|actu", UnitKind.ACTUATOR),
            unit("pmu|pmon|pm", UnitKind.MONITOR),
            unit("tlm|tele|telem|radio|vtx", UnitKind.RADIO),
            unit("cam|gimbal|gim|payload", UnitKind.PAYLOAD),
            unit("pump|pumpe|pompe", UnitKind.PUMP),
            unit("lidar|lid|sonar|baro|pitot|sensor", UnitKind.SENSOR));

    private static final Map<String, LeadKind> PLUGS = Map.ofEntries(
            Map.entry("can", LeadKind.CAN),
            Map.entry("uart", LeadKind.SERIAL),
            Map.entry("ser", LeadKind.SERIAL),
            Map.entry("serial", LeadKind.SERIAL),
            Map.entry("telem", LeadKind.SERIAL),
            Map.entry("i2c", LeadKind.I2C),
            Map.entry("pwm", LeadKind.PULSE),
            Map.entry("servo", LeadKind.PULSE),
            Map.entry("ph", LeadKind.PHASE),
            Map.entry("phase", LeadKind.PHASE),
            Map.entry("pwr", LeadKind.POWER),
            Map.entry("power", LeadKind.POWER),
            Map.entry("ant", LeadKind.COAX));

    private static final Map<String, PinRole> PINS = Map.ofEntries(
            Map.entry("gnd", PinRole.ZERO_V),
            Map.entry("g", PinRole.ZERO_V),
            Map.entry("0v", PinRole.ZERO_V),
            Map.entry("masse", PinRole.ZERO_V),
            Map.entry("ground", PinRole.ZERO_V),
            Map.entry("h", PinRole.CAN_H),
            Map.entry("canh", PinRole.CAN_H),
            Map.entry("canhi", PinRole.CAN_H),
            Map.entry("l", PinRole.CAN_L),
            Map.entry("canl", PinRole.CAN_L),
            Map.entry("canlo", PinRole.CAN_L),
            Map.entry("scl", PinRole.SCL),
            Map.entry("sda", PinRole.SDA),
            Map.entry("tx", PinRole.SERIAL_OUT),
            Map.entry("txd", PinRole.SERIAL_OUT),
            Map.entry("rx", PinRole.SERIAL_IN),
            Map.entry("rxd", PinRole.SERIAL_IN));

    private TradeNames() {}

    private static Map.Entry<Pattern, UnitKind> unit(String words, UnitKind kind) {
        return Map.entry(Pattern.compile("(" + words + ")[\\d_a-d]*"), kind);
    }

    /** What a unit of this reference usually is. */
    static Optional<UnitKind> unit(String ref) {
        String name = ref.toLowerCase(Locale.ROOT);
        return UNITS.stream()
                .filter(entry -> entry.getKey().matcher(name).matches())
                .map(Map.Entry::getValue)
                .findFirst();
    }

    /** What a lead at a plug of this name usually carries. */
    static Optional<LeadKind> lead(String plug) {
        String name = plug.toLowerCase(Locale.ROOT);
        String bare = name.equals("i2c") ? name : name.replaceFirst("[\\d_]+$", "");
        return Optional.ofNullable(PLUGS.get(bare));
    }

    /** What a contact of this name usually carries; a serial name is the unit's own, and its lead is a serial one. */
    static Optional<PinRole> pin(String name) {
        return Optional.ofNullable(PINS.get(name.toLowerCase(Locale.ROOT).replaceAll("[\\s_-]", "")));
    }
}
