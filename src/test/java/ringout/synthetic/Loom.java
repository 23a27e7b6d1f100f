package ringout.synthetic;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/** Makes the leads: joins contacts of equal function, or as told, and writes the rows as different people would. */
final class Loom {
    private static final Map<String, String> COLOURS = Map.of("V", "RD", "0", "BK", "H", "YE", "L", "GN");

    private final Style style;
    private final Sink sink;
    private int conductors;

    Loom(Style style, Sink sink) {
        this.style = style;
        this.sink = sink;
    }

    /** Number of conductors so far. */
    int conductors() {
        return conductors;
    }

    /** Joins every function that both plugs have. */
    String join(String tag, Box a, String plugA, Box b, String plugB, Cable cable) {
        Map<String, String> same = new TreeMap<>();
        for (UnitType.Contact contact : a.type().plug(plugA).contacts()) {
            if (!contact.unused() && b.type().plug(plugB).has(contact.function())) {
                same.put(contact.function(), contact.function());
            }
        }
        return join(tag, a, plugA, b, plugB, cable, same);
    }

    /** Joins the functions told: of the first plug to of the second. */
    String join(String tag, Box a, String plugA, Box b, String plugB, Cable cable, Map<String, String> functions) {
        boolean turned = style.dice().chance(0.3);
        List<Made.Wired> wires = new ArrayList<>();
        functions.forEach((one, other) -> {
            String first = a.type().plug(plugA).contact(one).number();
            String second = b.type().plug(plugB).contact(other).number();
            wires.add(turned ? new Made.Wired(other, second, first) : new Made.Wired(one, first, second));
        });
        wires.sort((x, y) -> Integer.compare(Integer.parseInt(x.fromPin()), Integer.parseInt(y.fromPin())));
        String id = style.lead();
        Made made = turned
                ? new Made(id, tag, b, plugB, a, plugA, List.copyOf(wires))
                : new Made(id, tag, a, plugA, b, plugB, List.copyOf(wires));
        conductors += wires.size();
        sink.add("leads", row(made, cable, turned));
        sink.made(made);
        return id;
    }

    /** Joins two points told by name, each a pin or a joint, by one conductor. */
    String single(String from, String to, Cable cable, Fit fit) {
        String id = style.lead();
        conductors++;
        sink.add(
                "leads",
                Row.of("id", id, "from", from, "to", to, "kind", cable.kind(), "awg", cable.awg(fit))
                        .with("lengthMm", cable.lengthMm(), "routeMm", cable.lengthMm() * 92 / 100)
                        .with("averageA", cable.averageA(), "peakA", cable.peakA(), "peakS", 5, "unfused", true)
                        .with("insulationC", 200, "movingAir", true, "ambientC", 40, "loadedInBundle", 2)
                        .with("shield", "none", "bundle", cable.bundle()));
        return id;
    }

    private Row row(Made made, Cable cable, boolean turned) {
        UnitType.Plug from = made.from().type().plug(made.fromPlug());
        UnitType.Plug to = made.to().type().plug(made.toPlug());
        boolean power = cable.averageA() > 0;
        Fit finer = from.fit().thinnest() >= to.fit().thinnest() ? to.fit() : from.fit();
        return Row.of("id", made.id(), "from", made.from().ref() + "-" + from.name())
                .with("to", made.to().ref() + "-" + to.name(), "kind", cable.kind(), "awg", cable.awg(finer))
                .with("lengthMm", cable.lengthMm(), "routeMm", cable.lengthMm() * 92 / 100)
                .with("pins", isStraight(made, from, to) && style.dice().chance(0.5) ? "" : made.pins())
                .with("averageA", power ? cable.averageA() : "", "peakA", power ? cable.peakA() : "")
                .with("peakS", power ? 5 : "", "fuseA", cable.fuseA() > 0 ? cable.fuseA() : "")
                .with("fuseAt", cable.fuseA() > 0 ? (turned ? "to" : "from") : "")
                .with("unfused", power && cable.fuseA() <= 0 ? true : "")
                .with("twisted", cable.kind().equals("can") ? true : "", "colours", colours(made))
                .with("insulationC", power ? 200 : 105, "movingAir", power, "ambientC", 40)
                .with("loadedInBundle", 2, "shield", "none", "bundle", cable.bundle())
                .with("fromFamily", from.family(), "toFamily", to.family());
    }

    private static String colours(Made made) {
        return String.join(
                " ",
                made.wires().stream()
                        .map(wire -> wire.fromPin() + "=" + colour(wire.function()))
                        .toList());
    }

    private static String colour(String function) {
        return COLOURS.getOrDefault(function.replaceAll("(?<=.)\\d+$", ""), "WH");
    }

    /** Whether a lead without a pin map would have the same conductors. */
    private static boolean isStraight(Made made, UnitType.Plug from, UnitType.Plug to) {
        Set<String> used = new java.util.TreeSet<>();
        for (UnitType.Contact contact : from.contacts()) {
            boolean both = to.contacts().stream()
                    .anyMatch(other -> other.number().equals(contact.number()) && !other.unused());
            if (both && !contact.unused()) {
                used.add(contact.number() + ">" + contact.number());
            }
        }
        return used.equals(Set.copyOf(List.of(made.pins().split(" "))));
    }
}
