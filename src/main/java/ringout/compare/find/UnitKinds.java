package ringout.compare.find;

import java.util.Map;
import java.util.Set;
import ringout.compare.difference.Kind;

/** What kind of difference a field of a unit, a type or the aircraft is. */
final class UnitKinds {
    private static final Map<String, Kind> UNIT = Map.ofEntries(
            Map.entry("serial", Kind.SERIAL),
            Map.entry("firmware", Kind.FIRMWARE),
            Map.entry("address", Kind.ADDRESS),
            Map.entry("i2cAddress", Kind.ADDRESS),
            Map.entry("terminator", Kind.TERMINATOR),
            Map.entry("rateKbit", Kind.RATE),
            Map.entry("baud", Kind.RATE),
            Map.entry("protocol", Kind.RATE),
            Map.entry("inverted", Kind.RATE),
            Map.entry("zone", Kind.POSITION),
            Map.entry("xMm", Kind.POSITION),
            Map.entry("yMm", Kind.POSITION),
            Map.entry("zMm", Kind.POSITION),
            Map.entry("headingDeg", Kind.ORIENTATION),
            Map.entry("rollDeg", Kind.ORIENTATION),
            Map.entry("orientationSetting", Kind.ORIENTATION),
            Map.entry("restV", Kind.READ_OF_UNIT),
            Map.entry("cycles", Kind.READ_OF_UNIT),
            Map.entry("healthPercent", Kind.READ_OF_UNIT),
            Map.entry("photo", Kind.RECORD),
            Map.entry("what", Kind.LABEL));
    private static final Set<String> RATINGS = Set.of(
            "rails",
            "parts",
            "loads",
            "maxRateHz",
            "inputMicrofarad",
            "inputPrecharge",
            "maxSupplyLeadMm",
            "heatRatedW",
            "ports");

    private UnitKinds() {}

    static Kind ofUnit(FieldChange change) {
        if (change.group().equals("asRead")) {
            return Kind.READ_OF_UNIT;
        }
        return UNIT.getOrDefault(change.field(), Kind.SETTING);
    }

    static Kind ofType(FieldChange change) {
        String field = outer(change);
        if (field.equals("plugs")) {
            return Kind.PINOUT;
        }
        return RATINGS.contains(field) ? Kind.RATING : Kind.TYPE;
    }

    static Kind ofAircraft(String list) {
        return switch (list) {
            case "joints" -> Kind.JOINT;
            case "buses", "messages" -> Kind.BUS;
            case "airframe" -> Kind.AIRFRAME;
            case "states", "events" -> Kind.STATE;
            case "functions" -> Kind.FUNCTION;
            case "project" -> Kind.RULES;
            case "waivers" -> Kind.WAIVER;
            default -> Kind.RECORD;
        };
    }

    /** The field of the outermost record a change is in. */
    static String outer(FieldChange change) {
        int bracket = change.group().indexOf('[');
        return bracket < 0 ? change.group() : change.group().substring(0, bracket);
    }
}
