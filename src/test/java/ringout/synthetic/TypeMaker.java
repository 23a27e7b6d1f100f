package ringout.synthetic;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Makes one unit type; contacts come in an order of the maker's own. */
final class TypeMaker {
    private final Style style;
    private final Row row;
    private final String name;
    private final Map<String, UnitType.Plug> plugs = new LinkedHashMap<>();
    private final Map<String, List<Object>> lists = new LinkedHashMap<>();

    TypeMaker(Style style, String name, String kind) {
        this.style = style;
        this.name = name;
        this.row = Row.of("name", name, "kind", kind, "title", kind + ", synthetic", "pinoutSource", "maker")
                .with("pinoutDate", "2025-11-03");
    }

    /** Adds a plug; extra fields in turn. */
    TypeMaker plug(String use, Fit fit, List<Pins.Pin> pins, Object... fields) {
        String plugName = style.plug(plugs.size() + 1);
        List<UnitType.Contact> contacts = new ArrayList<>();
        List<Object> rows = new ArrayList<>();
        for (Pins.Pin pin : style.dice().shuffled(pins)) {
            String number = Integer.toString(contacts.size() + 1);
            Row contact = Row.of("number", number).with(pin.row());
            contacts.add(new UnitType.Contact(pin.function(), number, contact.text("role")));
            rows.add(contact);
        }
        plugs.put(use, new UnitType.Plug(plugName, fit, List.copyOf(contacts)));
        add("plugs", fit.plug(plugName, pins.size()).with(fields).with("pins", rows));
        return this;
    }

    /** A rail the unit takes its supply from. */
    TypeMaker input(String rail, double nominalV, double minV, double maxV) {
        return add("rails", Row.of("name", rail, "nominalV", nominalV, "minV", minV, "maxV", maxV, "zero", "0V"));
    }

    /** A rail the unit gives. */
    TypeMaker output(String rail, double volts, double tolerance, double continuousA) {
        return output(rail, volts, tolerance, continuousA, "0V");
    }

    /** A rail the unit gives against a 0V of its own. */
    TypeMaker output(String rail, double volts, double tolerance, double continuousA, String zero) {
        Row made = Row.of("name", rail, "nominalV", volts)
                .with("minV", Numbers.round(volts * (1 - tolerance)), "maxV", Numbers.round(volts * (1 + tolerance)))
                .with("continuousA", continuousA, "peakA", continuousA * 1.25, "zero", zero)
                .with("ored", false, "parallelRated", false, "reverseBlocking", false);
        return add("rails", made);
    }

    TypeMaker part(String label, String kind, String from, String to, Object... rating) {
        return add(
                "parts",
                Row.of("name", label, "kind", kind, "from", from, "to", to).with("rating", Row.of(rating)));
    }

    /** A regulator between two rails, both against one 0V unless another is named. */
    TypeMaker regulator(String kind, String from, String to, String zero, double volts, double continuousA) {
        Row rating = Row.of("outputV", volts, "tolerancePercent", 2.5, "efficiency", 0.9)
                .with("dropoutV", kind.equals("regulator") ? 1.5 : "n/a", "quiescentA", 0.01, "ratingA", continuousA);
        return add(
                "parts",
                Row.of("name", "conversion", "kind", kind, "from", from, "to", to, "zero", zero, "rating", rating));
    }

    /** A CAN port. */
    TypeMaker can(String port, String terminator, String passThrough) {
        boolean none = terminator.equals("none");
        return add(
                "ports",
                Row.of("name", port, "kind", "can", "terminator", terminator)
                        .with("terminatorOhm", none ? "" : 120, "terminatorAt", none ? "" : "beside the socket")
                        .with("nodeOhm", 30000, "nodePicofarad", 80, "stubMm", 0, "passThrough", passThrough)
                        .with("ratesKbit", List.of(125, 250, 500, 1000), "autoRate", false, "frame", "classic")
                        .with("setOnLink", true, "allocator", false));
    }

    /** An I2C port. */
    TypeMaker i2c(String port, Object pullUpOhm) {
        return add(
                "ports",
                Row.of("name", port, "kind", "i2c", "pullUpOhm", pullUpOhm, "pullUpV", 3.3)
                        .with("nodePicofarad", 10, "ratesKbit", List.of(100, 400)));
    }

    /** A point-to-point port on a plug already made. */
    TypeMaker serial(String use, String protocol, boolean inverted, Object needs) {
        UnitType.Plug plug = plugs.get(use);
        return add(
                "serials",
                Row.of("name", plug.name(), "protocols", List.of(protocol), "inverted", inverted)
                        .with("canInvert", false, "needs", needs));
    }

    /** A load of constant current. */
    TypeMaker load(String rail, double averageA, double peakA) {
        return add(
                "loads",
                Row.of("rail", rail, "idleA", averageA, "averageA", averageA, "peakA", peakA, "peakS", 1)
                        .with("law", "constant current"));
    }

    /** A record in one of the lists of the type. */
    TypeMaker add(String list, Row record) {
        lists.computeIfAbsent(list, key -> new ArrayList<>()).add(record);
        return this;
    }

    TypeMaker set(Object... fields) {
        row.with(fields);
        return this;
    }

    UnitType make() {
        lists.forEach((list, records) -> row.with(list, List.copyOf(records)));
        return new UnitType(name, plugs, row);
    }
}
