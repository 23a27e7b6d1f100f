package ringout.draw.harness;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import ringout.draw.block.BlockScene;
import ringout.draw.block.BlockScene.BlockLead;
import ringout.draw.block.BlockScene.BlockUnit;
import ringout.draw.block.BlockScene.BlockZone;
import ringout.draw.letter.Lettering;
import ringout.draw.scene.WireKind;
import ringout.finding.Headline;
import ringout.graph.Circuit;
import ringout.graph.Directory;
import ringout.graph.Wire;
import ringout.graph.Wiring;
import ringout.model.UnitKind;

/** An aircraft as blocks: units by zone, leads as lines. A joint stands for itself. */
final class BlockPicture {
    /** What a lead is drawn as when its conductors differ: the first of these that one of them carries. */
    private static final List<WireKind> GRAVEST = List.of(
            WireKind.BUS,
            WireKind.PULSE,
            WireKind.SERIAL,
            WireKind.I2C,
            WireKind.VIDEO,
            WireKind.PHASE,
            WireKind.SUPPLY,
            WireKind.OTHER,
            WireKind.RETURN);

    private final Circuit circuit;
    private final Wiring wiring;
    private final Directory directory;
    private final Ids ids = new Ids();
    private final Map<Integer, Map<Integer, List<WireKind>>> between = new LinkedHashMap<>();
    private final List<String> notes = new ArrayList<>();
    private final List<BlockLead> leads = new ArrayList<>();
    private final List<int[]> ends = new ArrayList<>();

    private BlockPicture(Circuit circuit) {
        this.circuit = circuit;
        this.wiring = circuit.wiring();
        this.directory = wiring.directory();
    }

    /** The scene with its title block. */
    static BlockScene of(Circuit circuit, List<Headline> headlines, SheetTitle title) {
        return new BlockPicture(circuit).scene(headlines, title);
    }

    private BlockScene scene(List<Headline> headlines, SheetTitle title) {
        leads();
        Map<Integer, Integer> depth = depths();
        Map<String, List<BlockUnit>> zones = new LinkedHashMap<>();
        Map<String, Set<String>> ofUnit = new LinkedHashMap<>();
        int loose = depth.values().stream().mapToInt(d -> d).max().orElse(0) + 1;
        for (int unit = 0; unit < directory.count(); unit++) {
            if (!circuit.aboard(unit)) {
                continue;
            }
            String zone =
                    directory.isJoint(unit) ? "" : directory.unit(unit).zone().or("");
            BlockUnit block = new BlockUnit(id(unit), name(unit), depth.getOrDefault(unit, loose));
            zones.computeIfAbsent(zone, key -> new ArrayList<>()).add(block);
            ofUnit.computeIfAbsent(directory.name(unit), key -> new LinkedHashSet<>())
                    .add(block.id());
        }
        List<BlockZone> told = new ArrayList<>();
        zones.forEach((name, units) -> {
            if (name.isEmpty()) {
                units.forEach(unit -> told.add(new BlockZone("", List.of(unit))));
            } else {
                told.add(new BlockZone(Lettering.printable(name), units));
            }
        });
        UnitMarks marks = new UnitMarks(circuit, headlines, ofUnit);
        return new BlockScene(
                title.info(
                        "units and leads by zone",
                        "block diagram",
                        marks.lines().size()),
                told,
                leads,
                marks.marks(),
                marks.lines(),
                notes);
    }

    private String id(int unit) {
        return ids.of("unit " + unit, name(unit));
    }

    private String name(int unit) {
        return Lettering.printable(directory.name(unit));
    }

    /** One line for each lead; a lead that joins more than two units has a line for each pair. */
    private void leads() {
        WireLook look = new WireLook(circuit);
        Map<String, List<WireKind>> kinds = new LinkedHashMap<>();
        Map<String, int[]> units = new HashMap<>();
        Map<String, String> labels = new HashMap<>();
        for (Wire wire : wiring.wires()) {
            int from = wiring.unitOf(wire.fromPin());
            int to = wiring.unitOf(wire.toPin());
            if (from != to && circuit.aboard(from) && circuit.aboard(to)) {
                String key = wire.leadIndex() + " " + Math.min(from, to) + " " + Math.max(from, to);
                kinds.computeIfAbsent(key, k -> new ArrayList<>()).add(look.kind(wire));
                units.putIfAbsent(key, new int[] {from, to});
                labels.put(key, Lettering.printable(wire.lead().id()));
            }
        }
        kinds.forEach((key, carried) -> {
            WireKind kind = carried.stream()
                    .min(Comparator.comparingInt(GRAVEST::indexOf))
                    .orElse(WireKind.OTHER);
            int[] pair = units.getOrDefault(key, new int[2]);
            String label = labels.getOrDefault(key, "");
            leads.add(new BlockLead(ids.of("lead " + key, label), label, id(pair[0]), id(pair[1]), kind));
            ends.add(pair);
        });
    }

    /** How many leads away from a pack a unit is fed; what is not fed lies one above what it is joined to. */
    private Map<Integer, Integer> depths() {
        Map<Integer, Integer> depth = new LinkedHashMap<>();
        for (int unit = 0; unit < directory.count(); unit++) {
            if (circuit.aboard(unit)
                    && !directory.isJoint(unit)
                    && directory.type(unit).kind().is(UnitKind.PACK)) {
                depth.put(unit, 0);
            }
        }
        spread(depth, true);
        spread(depth, false);
        return depth;
    }

    private void spread(Map<Integer, Integer> depth, boolean supplies) {
        Deque<Integer> open = new ArrayDeque<>(depth.keySet());
        while (!open.isEmpty()) {
            int unit = open.removeFirst();
            for (int lead = 0; lead < leads.size(); lead++) {
                int[] pair = ends.get(lead);
                boolean wanted = !supplies || feeds(pair);
                int other = pair[0] == unit ? pair[1] : pair[1] == unit ? pair[0] : -1;
                if (wanted && other >= 0 && !depth.containsKey(other)) {
                    depth.put(other, depth.getOrDefault(unit, 0) + 1);
                    open.addLast(other);
                }
            }
        }
    }

    private boolean feeds(int[] pair) {
        return between(pair).contains(WireKind.SUPPLY);
    }

    private List<WireKind> between(int[] pair) {
        if (between.isEmpty()) {
            WireLook look = new WireLook(circuit);
            for (Wire wire : wiring.wires()) {
                int a = wiring.unitOf(wire.fromPin());
                int b = wiring.unitOf(wire.toPin());
                between.computeIfAbsent(Math.min(a, b), key -> new HashMap<>())
                        .computeIfAbsent(Math.max(a, b), key -> new ArrayList<>())
                        .add(look.kind(wire));
            }
        }
        return between.getOrDefault(Math.min(pair[0], pair[1]), Map.of())
                .getOrDefault(Math.max(pair[0], pair[1]), List.of());
    }
}
