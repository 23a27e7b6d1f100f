package ringout.synthetic;

import java.util.ArrayList;
import java.util.List;

/** One zone being built: what its parts share. */
final class Zone {
    private final Style style;
    private final Sink sink;
    private final Loom loom;
    private final TypeBook book;
    private final int number;
    private final List<Integer> outlets = new ArrayList<>();
    private final Box board;
    private final Box controller;
    private final List<Object> settings = new ArrayList<>();
    private final List<Box> nodes = new ArrayList<>();

    Zone(Style style, Sink sink, Loom loom, TypeBook book, int number) {
        this.style = style;
        this.sink = sink;
        this.loom = loom;
        this.book = book;
        this.number = number;
        for (int outlet = 1; outlet <= PowerTypes.OUTLETS; outlet++) {
            outlets.add(outlet);
        }
        this.board = box("board", "board");
        this.controller = box("controller", "controller");
        unit(board);
    }

    /** A unit with a name but without a row. */
    Box box(String kind, String use) {
        return new Box(style.unit(kind), book.type(use));
    }

    /** Writes the row of a unit. */
    Box unit(Box box, Object... fields) {
        Row row = Row.of("ref", box.ref(), "type", box.type().name(), "zone", "zone " + number);
        Dice dice = style.dice();
        row.with("xMm", dice.between(-900, 900), "yMm", dice.between(-900, 900), "zMm", dice.between(-200, 300));
        sink.add("units", row.with(fields));
        return box;
    }

    /** A unit with its row. */
    Box add(String kind, String use, Object... fields) {
        return unit(box(kind, use), fields);
    }

    /** What the controller does when a unit is lost or says so. */
    void failsafe(String name, Box trigger) {
        sink.add(
                "functions",
                Row.of("name", name, "protection", true, "trigger", trigger.ref(), "actor", controller.ref())
                        .with("chain", List.of(trigger.ref(), controller.ref()))
                        .with("indications", List.of("message on the ground station")));
    }

    /** A splice drawn for so many wires. */
    String joint(int wires) {
        String name = style.unit("splice");
        sink.add(
                "joints",
                Row.of("id", name, "kind", "splice", "conductors", wires, "ratingA", 10, "milliohm", 1)
                        .with("zone", "zone " + number));
        return name;
    }

    /** A supply lead from the next free outlet of the board. */
    String feed(Box to, String plug, double averageA, double peakA, double fuseA) {
        if (outlets.isEmpty()) {
            throw new IllegalStateException("no outlet left on " + board.ref());
        }
        String outlet = "t" + outlets.remove(style.dice().below(outlets.size()));
        Cable cable =
                Cable.power(style.dice().between(120, 400), averageA, peakA).fused(fuseA);
        return loom.join("feed", board, outlet, to, plug, cable);
    }

    int freeOutlets() {
        return outlets.size();
    }

    Style style() {
        return style;
    }

    Dice dice() {
        return style.dice();
    }

    Sink sink() {
        return sink;
    }

    Loom loom() {
        return loom;
    }

    TypeBook book() {
        return book;
    }

    int number() {
        return number;
    }

    Box board() {
        return board;
    }

    /** A port setting of the controller. */
    void setting(Row port) {
        settings.add(port);
    }

    List<Object> settings() {
        return List.copyOf(settings);
    }

    /** A node of the controller's chain. */
    void node(Box node) {
        nodes.add(node);
    }

    List<Box> nodes() {
        return nodes;
    }

    /** The flight controller; its row is written when its settings are known. */
    Box controller() {
        return controller;
    }
}
