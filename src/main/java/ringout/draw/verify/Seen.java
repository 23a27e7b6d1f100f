package ringout.draw.verify;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ringout.draw.paper.Area;
import ringout.draw.paper.Point;

/** What is to be seen on a sheet, in the order in which it is drawn. */
final class Seen {
    /** An element with a class; its number tells it from others of the same class and data. */
    record Group(int number, String classes, Map<String, String> data, Optional<Group> parent) {
        boolean is(String name) {
            return (" " + classes + " ").contains(" " + name + " ");
        }

        /** This group or the nearest one around it with a class. */
        Optional<Group> within(String name) {
            return is(name) ? Optional.of(this) : parent.flatMap(p -> p.within(name));
        }

        String datum(String name) {
            return data.getOrDefault(name, "");
        }
    }

    /** A line of text. */
    record Text(int order, Group group, String words, Area area, double cap, String fill, double squeeze) {}

    /** A filled or stroked outline; its area is that around it, without the stroke. */
    record Patch(int order, Group group, Area area, boolean upright, String fill, String stroke, double width) {}

    /** An open line. */
    record Line(int order, Group group, List<Point> points, String stroke, double width) {}

    /** The line of a wire or move. */
    record Way(int order, String id, Group group, List<Point> points, double width) {
        /** Whether both are one line on the sheet; two lines of one name are two. */
        boolean same(Way other) {
            return order == other.order;
        }
    }

    Area sheet = new Area(0, 0, 0, 0);
    final List<Text> texts = new ArrayList<>();
    final List<Patch> patches = new ArrayList<>();
    final List<Line> lines = new ArrayList<>();
    final List<Flaw> unreadable = new ArrayList<>();

    /** {@return the wires, then the moves} */
    List<Way> ways() {
        List<Way> ways = new ArrayList<>(waysOf("wire"));
        ways.addAll(waysOf("move"));
        return ways;
    }

    /** {@return the wires} */
    List<Way> wires() {
        return waysOf("wire");
    }

    private List<Way> waysOf(String name) {
        List<Way> ways = new ArrayList<>();
        for (Line line : lines) {
            if (line.group().is("line")) {
                line.group()
                        .parent()
                        .filter(g -> g.is(name))
                        .ifPresent(g -> ways.add(new Way(line.order(), g.datum(name), g, line.points(), line.width())));
            }
        }
        return ways;
    }

    /** {@return the outlines of a class that belong to groups of another class, by the datum of that name} */
    Map<String, Patch> outlines(String part, String owner) {
        Map<String, Patch> found = new LinkedHashMap<>();
        for (Patch patch : patches) {
            if (patch.group().is(part)) {
                patch.group().parent().filter(g -> g.is(owner)).ifPresent(g -> found.put(g.datum(owner), patch));
            }
        }
        return found;
    }
}
