package ringout.check.form;

import java.util.List;
import java.util.stream.Stream;

/** All limits with their sources, in one place. A project may set others by name, with a reason. */
public final class Thresholds {
    private static final String DRONECAN_8 = "DroneCAN specification, section 8";

    /** Longest stub or overhang of a terminated bus. */
    public static final Threshold BUS_STUB = new Threshold("bus.stub", 300, "mm", DRONECAN_8);

    /** Longest sum of all stubs of a bus at 1 Mbit/s. */
    public static final Threshold BUS_STUB_SUM = new Threshold("bus.stub-sum", 1000, "mm", "judgement");

    /** What a T-adapter adds to a stub. */
    public static final Threshold BUS_TEE = new Threshold("bus.tee", 20, "mm", "judgement");

    /** Longest trunk at 1 Mbit/s. */
    public static final Threshold BUS_TRUNK_1000 = new Threshold("bus.trunk-1000", 40_000, "mm", DRONECAN_8);

    /** Longest trunk at 500 kbit/s. */
    public static final Threshold BUS_TRUNK_500 = new Threshold("bus.trunk-500", 100_000, "mm", DRONECAN_8);

    /** Longest trunk at 250 kbit/s. */
    public static final Threshold BUS_TRUNK_250 = new Threshold("bus.trunk-250", 250_000, "mm", DRONECAN_8);

    /** Longest trunk at 125 kbit/s and below. */
    public static final Threshold BUS_TRUNK_125 = new Threshold("bus.trunk-125", 500_000, "mm", DRONECAN_8);

    /** Longest trunk at the rate of a faster data phase; no value but a project's own. */
    public static final Threshold BUS_TRUNK_DATA = new Threshold("bus.trunk-data", 0, "mm", "no general value");

    /** Most nodes on one bus. */
    public static final Threshold BUS_NODES = new Threshold("bus.nodes", 32, "nodes", "common practice, no source");

    /** Most capacitance of all nodes of a bus together: 32 nodes of 100 pF. */
    public static final Threshold BUS_CAPACITANCE =
            new Threshold("bus.capacitance", 3200, "pF", "common practice, no source");

    /** Longest differential lead that need not be twisted. */
    public static final Threshold PAIR_UNTWISTED =
            new Threshold("pair.untwisted", 300, "mm", "common practice, no source");

    /** Longest run of a pair beside a power pair. */
    public static final Threshold PAIR_BESIDE = new Threshold("pair.beside", 100, "mm", "common practice, no source");

    /** Current from which a power pair disturbs an untwisted pair beside it. */
    public static final Threshold PAIR_BESIDE_CURRENT =
            new Threshold("pair.beside-current", 20, "A", "common practice, no source");

    /** Load of a bus worth a look. */
    public static final Threshold BUS_LOAD_WARN = new Threshold("bus.load-warn", 50, "%", "common practice, no source");

    /** Highest load of a bus. */
    public static final Threshold BUS_LOAD = new Threshold("bus.load", 70, "%", "common practice, no source");

    /** How far a configured voltage scale may be off. */
    public static final Threshold SCALE_VOLTAGE = new Threshold("scale.voltage", 2, "%", "judgement");

    /** How far a configured current scale may be off. */
    public static final Threshold SCALE_CURRENT = new Threshold("scale.current", 5, "%", "judgement");

    /** Longest signal lead that may run without its return. */
    public static final Threshold SIGNAL_RETURN =
            new Threshold("signal.return", 300, "mm", "common practice, no source");

    /** Longest analog signal lead without a shield. */
    public static final Threshold ANALOG_RUN = new Threshold("analog.run", 300, "mm", "common practice, no source");

    /** Longest untwisted piece of a high-speed pair at a plug. */
    public static final Threshold PAIR_OPEN_AT_PLUG =
            new Threshold("pair.open-at-plug", 13, "mm", "common practice, no source");

    /** Part of a supply limit that must be left, in percent. */
    public static final Threshold SUPPLY_MARGIN = new Threshold("supply.margin", 3, "%", "judgement");

    /** How far two sources on one net may be set apart before the stronger does harm. */
    public static final Threshold SOURCES_APART =
            new Threshold("supply.sources-apart", 0.3, "V", "common practice, no source");

    /** Part of its continuous rating a regulator may give on average. */
    public static final Threshold REGULATOR_SHARE =
            new Threshold("regulator.share", 80, "%", "common practice, no source");

    /** Longest overload a regulator's peak rating is meant for. */
    public static final Threshold REGULATOR_PEAK_TIME =
            new Threshold("regulator.peak-time", 10, "s", "common practice, no source");

    /** Heat a linear regulator sheds without a heat sink. */
    public static final Threshold LINEAR_BARE = new Threshold("linear.bare", 1, "W", "common practice, no source");

    /** Heat a linear regulator sheds with a heat sink. */
    public static final Threshold LINEAR_SINK = new Threshold("linear.sink", 3, "W", "common practice, no source");

    /** Part of its rating a fuse may carry on average. */
    public static final Threshold FUSE_SHARE = new Threshold("fuse.share", 75, "%", "common practice, no source");

    /** Part of its discharge rating a pack may give at peak. */
    public static final Threshold PACK_SHARE = new Threshold("pack.share", 80, "%", "common practice, no source");

    /** Part of the capacity of a pack that may be used. */
    public static final Threshold PACK_USABLE = new Threshold("pack.usable", 80, "%", "common practice, no source");

    /** Part of the endurance that must be left. */
    public static final Threshold RESERVE_SHARE = new Threshold("reserve.share", 20, "%", "common practice, no source");

    /** Least time that must be left. */
    public static final Threshold RESERVE_TIME = new Threshold("reserve.time", 3, "min", "common practice, no source");

    private static final String BUS_POWER = "DroneCAN specification, section 8, 5 V connectors";

    /** Current of one connector of a bus that feeds its members. */
    public static final Threshold BUS_CONNECTOR = new Threshold("bus.connector-current", 1, "A", BUS_POWER);

    /** Current of one device fed by a bus. */
    public static final Threshold BUS_DEVICE = new Threshold("bus.device-current", 0.5, "A", BUS_POWER);

    /** Least voltage at a device fed by a bus. */
    public static final Threshold BUS_VOLTAGE = new Threshold("bus.device-voltage", 4.0, "V", BUS_POWER);

    /** Part of the voltage the leads of a load may lose while it lasts. */
    public static final Threshold DROP_LASTING = new Threshold("drop.lasting", 5, "%", "common practice, no source");

    /** Part of the voltage the leads of a load may lose for some seconds. */
    public static final Threshold DROP_SECONDS = new Threshold("drop.seconds", 8, "%", "common practice, no source");

    /** Least ratio of a fuse to the next one behind it. */
    public static final Threshold FUSE_RATIO = new Threshold("fuse.ratio", 1.6, "", "common practice, no source");

    /** Longest thin branch without a fuse. */
    public static final Threshold UNPROTECTED =
            new Threshold("fuse.unprotected", 180, "mm", "7 in, common practice, no source");

    /** Largest energy of an inrush without pre-charge. */
    public static final Threshold INRUSH = new Threshold("pack.inrush", 1, "J", "common practice, no source");

    /** Largest difference in capacity of packs in series. */
    public static final Threshold PACK_CAPACITY = new Threshold("pack.capacity", 2, "%", "common practice, no source");

    /** Largest difference in cycles of packs in series. */
    public static final Threshold PACK_CYCLES = new Threshold("pack.cycles", 20, "", "common practice, no source");

    /** Largest difference in voltage per cell of packs in series. */
    public static final Threshold CELL_VOLTS = new Threshold("pack.cell", 0.02, "V", "common practice, no source");

    /** Largest current between packs at connection, in multiples of their capacity. */
    public static final Threshold PACK_RATE = new Threshold("pack.rate", 1, "C", "common practice, no source");

    /** Largest area a 0V loop may enclose. */
    public static final Threshold LOOP_AREA = new Threshold("loop.area", 50, "cm2", "common practice, no source");

    /** Longest stretch of a 0V loop along a power lead. */
    public static final Threshold LOOP_BESIDE = new Threshold("loop.beside", 100, "mm", "common practice, no source");

    /** How near a power lead a 0V loop must run to take up its field. */
    public static final Threshold LOOP_NEAR = new Threshold("loop.near", 20, "mm", "common practice, no source");

    /** Longest I2C wire. */
    public static final Threshold I2C_LENGTH = new Threshold("i2c.length", 500, "mm", "common practice, no source");

    /** Capacitance to add for each 100 mm of battery lead beyond the maker's limit. */
    public static final Threshold LEAD_CAPACITANCE =
            new Threshold("lead.capacitance", 220, "uF", "common practice, no source");

    /** Part of its ampacity a conductor may carry all day. */
    public static final Threshold AMPACITY_SHARE =
            new Threshold("ampacity.share", 80, "%", "common practice, no source");

    /** Highest rise of the copper by a peak of seconds, no heat given off. */
    public static final Threshold PEAK_RISE = new Threshold("peak.rise", 60, "K", "common practice, no source");

    /** Up to here a peak is a matter of seconds. */
    public static final Threshold PEAK_BRIEF = new Threshold("peak.brief", 10, "s", "common practice, no source");

    /** Part of the sum of their ratings that contacts side by side carry, since they do not share evenly. */
    public static final Threshold CONTACT_SHARE = new Threshold("contact.share", 80, "%", "common practice, no source");

    /** Part of its ampacity a thin return beside a thick one may take. */
    public static final Threshold RETURN_SHARE = new Threshold("return.share", 50, "%", "common practice, no source");

    /** What a tired contact adds to the main return. */
    public static final Threshold RETURN_WORN = new Threshold("return.worn", 10, "mohm", "common practice, no source");

    /** Shift of 0V between the ends of a single-ended signal worth a look. */
    public static final Threshold ZERO_SHIFT_WARN =
            new Threshold("zero.shift-warn", 0.2, "V", "common practice, no source");

    /** Highest shift of 0V between the ends of a single-ended signal: 0.8 V low in less 0.4 V low out. */
    public static final Threshold ZERO_SHIFT =
            new Threshold("zero.shift", 0.4, "V", "0.8 V highest low in less 0.4 V highest low out, 3.3 V logic");

    /** Highest shift of 0V between members of a CAN bus: -2 to 7 V at each, with bus levels of 0 to 5 V. */
    public static final Threshold ZERO_SHIFT_CAN =
            new Threshold("zero.shift-can", 2, "V", "ISO 11898-2, -2 to 7 V at each member, levels of 0 to 5 V");

    /** Change of the level field at a compass worth a note. */
    public static final Threshold COMPASS_NOTE = new Threshold("compass.note", 1, "uT", "judgement");

    /** Change of the level field at a compass that costs margin: 9 degrees at 20 uT. */
    public static final Threshold COMPASS_WARN = new Threshold("compass.warn", 3, "uT", "judgement");

    /** Change of the level field at a compass not to fly with: 20 degrees at 20 uT. */
    public static final Threshold COMPASS_FIELD = new Threshold("compass.field", 7, "uT", "judgement");

    /** Least distance of magnets from a compass. */
    public static final Threshold COMPASS_MAGNET =
            new Threshold("compass.magnet", 100, "mm", "common practice, no source");

    /** Least distance of a transmitter from a satellite receiver. */
    public static final Threshold ANTENNA_SATELLITE =
            new Threshold("antenna.satellite", 300, "mm", "common practice, no source");

    /** Least distance of two antennas in one band. */
    public static final Threshold ANTENNA_SAME_BAND =
            new Threshold("antenna.same-band", 500, "mm", "common practice, no source");

    /** Least distance of a transmitter from a compass. */
    public static final Threshold ANTENNA_COMPASS =
            new Threshold("antenna.compass", 100, "mm", "common practice, no source");

    /** Hover margin that must be left when rotors stop together, of the largest thrust of one rotor. */
    public static final Threshold ROTOR_MARGIN = new Threshold("rotor.margin", 10, "% of thrust", "judgement");

    /** How close the leads of a redundant pair may run. */
    public static final Threshold REDUNDANT_GAP = new Threshold("redundant.gap", 20, "mm", "judgement");

    /** How far the leads of a redundant pair may run close together. */
    public static final Threshold REDUNDANT_RUN = new Threshold("redundant.run", 200, "mm", "judgement");

    /** What of a run lies at the units themselves and does not count. */
    public static final Threshold REDUNDANT_NEAR = new Threshold("redundant.near", 100, "mm", "judgement");

    /** How far apart sockets in different zones are still mistaken for each other: what one hand reaches. */
    public static final Threshold PLUG_NEIGHBOUR = new Threshold("plug.neighbour", 500, "mm", "judgement");

    private Thresholds() {}

    /** All of them. */
    public static List<Threshold> all() {
        return Stream.of(
                        List.of(
                                BUS_STUB,
                                BUS_STUB_SUM,
                                BUS_TEE,
                                BUS_TRUNK_1000,
                                BUS_TRUNK_500,
                                BUS_TRUNK_250,
                                BUS_TRUNK_125,
                                BUS_TRUNK_DATA,
                                BUS_NODES,
                                BUS_CAPACITANCE,
                                PAIR_UNTWISTED,
                                PAIR_BESIDE,
                                PAIR_BESIDE_CURRENT,
                                BUS_LOAD_WARN,
                                BUS_LOAD,
                                SCALE_VOLTAGE,
                                SCALE_CURRENT,
                                SIGNAL_RETURN,
                                ANALOG_RUN,
                                PAIR_OPEN_AT_PLUG,
                                SUPPLY_MARGIN,
                                SOURCES_APART,
                                REGULATOR_SHARE,
                                REGULATOR_PEAK_TIME,
                                LINEAR_BARE,
                                LINEAR_SINK,
                                FUSE_SHARE,
                                ROTOR_MARGIN,
                                REDUNDANT_GAP,
                                REDUNDANT_RUN,
                                REDUNDANT_NEAR,
                                PACK_SHARE,
                                PACK_USABLE,
                                RESERVE_SHARE,
                                RESERVE_TIME,
                                BUS_CONNECTOR,
                                BUS_DEVICE,
                                BUS_VOLTAGE,
                                DROP_LASTING,
                                DROP_SECONDS,
                                FUSE_RATIO,
                                UNPROTECTED,
                                I2C_LENGTH,
                                LEAD_CAPACITANCE,
                                INRUSH,
                                PACK_CAPACITY,
                                PACK_CYCLES,
                                CELL_VOLTS,
                                PACK_RATE,
                                LOOP_AREA,
                                LOOP_BESIDE,
                                LOOP_NEAR,
                                AMPACITY_SHARE,
                                PEAK_RISE,
                                PEAK_BRIEF,
                                CONTACT_SHARE,
                                RETURN_SHARE,
                                RETURN_WORN,
                                ZERO_SHIFT_WARN,
                                ZERO_SHIFT,
                                ZERO_SHIFT_CAN,
                                COMPASS_NOTE,
                                COMPASS_WARN,
                                COMPASS_FIELD,
                                COMPASS_MAGNET,
                                ANTENNA_SATELLITE,
                                ANTENNA_SAME_BAND,
                                ANTENNA_COMPASS,
                                PLUG_NEIGHBOUR),
                        InstallationThresholds.all(),
                        RecordThresholds.all())
                .flatMap(List::stream)
                .toList();
    }
}
