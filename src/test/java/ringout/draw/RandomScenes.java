package ringout.draw;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import ringout.draw.scene.BadgeKind;
import ringout.draw.scene.Box;
import ringout.draw.scene.FindingLine;
import ringout.draw.scene.Fitting;
import ringout.draw.scene.Mark;
import ringout.draw.scene.Move;
import ringout.draw.scene.Pin;
import ringout.draw.scene.Plug;
import ringout.draw.scene.Presence;
import ringout.draw.scene.Reference;
import ringout.draw.scene.Row;
import ringout.draw.scene.SheetInfo;
import ringout.draw.scene.Splice;
import ringout.draw.scene.Wire;
import ringout.draw.scene.WireKind;
import ringout.draw.scene.WiringScene;
import ringout.draw.scene.WiringSceneBuilder;

/** Scenes without sense but with everything that may occur: any pin to any pin, shared pins, hostile names. */
public final class RandomScenes {
    private static final String[] ODD = {
        "<script>alert(1)</script>",
        "\u202Eright to left\u202C",
        "quote\"s & 'more'",
        "x".repeat(10_000),
        "\u00C5ngstr\u00F6m \u03A9 \u96FB\u6E90",
        "",
        "tab\tand\nline",
        "gjpqy()"
    };
    private static final String[] COLOURS = {"RD", "BK", "WH", "GNYE", "BUWH", "", "PK", "??", "RDBUYE"};

    private final Random random;
    private final boolean odd;
    private final WiringSceneBuilder scene;
    private final List<String> ends = new ArrayList<>();
    private final List<String> rows = new ArrayList<>();
    private final List<String> targets = new ArrayList<>();

    private RandomScenes(Random random, boolean odd) {
        this.random = random;
        this.odd = odd;
        this.scene = WiringScene.builder(SheetInfo.of(name("sheet"), "wiring diagram", name("type"), name("state"))
                .ofTail(name("tail"), "A", "0123456789ab")
                .signed(name("drawn"), "", Optional.empty()));
    }

    /** {@return a scene; an odd one has hostile names} */
    public static WiringScene of(Random random, boolean odd) {
        RandomScenes scenes = new RandomScenes(random, odd);
        scenes.addBoxes(1 + random.nextInt(10));
        scenes.addSplices(random.nextInt(3));
        scenes.addWires(random.nextInt(40));
        scenes.addMarks(random.nextInt(12));
        return scenes.scene.build();
    }

    private String name(String plain) {
        return odd && random.nextInt(4) == 0 ? ODD[random.nextInt(ODD.length)] : plain;
    }

    private void addBoxes(int count) {
        for (int b = 0; b < count; b++) {
            String box = "U" + b;
            List<Plug> plugs = new ArrayList<>();
            for (int p = 0; p < random.nextInt(5); p++) {
                plugs.add(plug(box + "-C" + p));
            }
            scene.box(new Box(box, name(box), name("what it is, unit " + b), name("zone"), plugs, presence()));
            targets.add(box);
        }
    }

    /** Each splice with two to five wires to pins. */
    private void addSplices(int count) {
        for (int s = 0; s < count && !ends.isEmpty(); s++) {
            String splice = "SPL" + s;
            scene.splice(new Splice(splice, name(splice)));
            targets.add(splice);
            for (int w = 0; w < 2 + random.nextInt(4); w++) {
                addWire("WS" + s + w, splice, pick(ends));
            }
        }
    }

    private Plug plug(String id) {
        List<Row> all = new ArrayList<>();
        int pins = 1 + random.nextInt(random.nextInt(3) == 0 ? 8 : 3);
        for (int i = 1; i <= pins; i++) {
            String pin = id + "-" + i;
            all.add(new Pin(pin, odd ? name(Integer.toString(i)) : Integer.toString(i), name("sig " + i), presence()));
            ends.add(pin);
            rows.add(pin);
            targets.add(pin);
        }
        if (random.nextInt(4) == 0) {
            Fitting.Symbol symbol = pick(List.of(Fitting.Symbol.values()));
            all.add(new Fitting(id + "-R", symbol, name("120 ohm"), presence()));
            rows.add(id + "-R");
            targets.add(id + "-R");
        }
        targets.add(id);
        return new Plug(id, name(id.substring(id.indexOf('-') + 1)), all);
    }

    private Presence presence() {
        return switch (random.nextInt(10)) {
            case 0 -> Presence.MISSING;
            case 1 -> Presence.EXTRA;
            default -> Presence.FITTED;
        };
    }

    private void addWires(int count) {
        for (int w = 0; w < count && ends.size() > 1; w++) {
            String from = pick(ends);
            String to = pick(ends);
            if (from.equals(to)) {
                continue;
            }
            if (random.nextInt(8) == 0) {
                to = "ref" + w;
                scene.reference(new Reference(to, name("U9-C1-" + w + " sheet 3 B4")));
            }
            addWire("W" + w, from, to);
        }
        if (rows.size() > 3 && random.nextInt(3) == 0) {
            scene.move(new Move("move", rows.get(0), rows.get(rows.size() - 1)));
            targets.add("move");
        }
    }

    private void addWire(String lead, String from, String to) {
        WireKind kind = pick(List.of(WireKind.values()));
        String colour = COLOURS[random.nextInt(COLOURS.length)];
        String size = random.nextInt(3) == 0 ? "" : "26";
        scene.wire(new Wire(lead + ".1", name(lead), size, colour, kind, "net " + lead, from, to, presence()));
        targets.add(lead + ".1");
    }

    private <T> T pick(List<T> from) {
        return from.get(random.nextInt(from.size()));
    }

    private void addMarks(int count) {
        for (int n = 1; n <= count; n++) {
            BadgeKind kind = pick(List.of(BadgeKind.values()));
            boolean waived = random.nextInt(4) == 0;
            int number = random.nextInt(5) == 0 ? n + 90 : n;
            scene.mark(new Mark(number, kind, waived, List.of(pick(targets), pick(targets))));
            scene.finding(new FindingLine(number, kind, waived, "T07", name("what is wrong with number " + n)));
        }
    }
}
