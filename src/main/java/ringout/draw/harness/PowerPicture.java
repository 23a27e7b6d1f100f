package ringout.draw.harness;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import ringout.check.form.Figures;
import ringout.draw.harness.PowerBoards.Board;
import ringout.draw.tree.Girth;
import ringout.draw.tree.TreeLink;
import ringout.draw.tree.TreeNode;
import ringout.draw.tree.TreeScene;
import ringout.finding.Headline;
import ringout.graph.Circuit;
import ringout.graph.EdgeKind;
import ringout.graph.Part;
import ringout.graph.Wire;
import ringout.graph.Wiring;
import ringout.graph.power.PlacedLoad;
import ringout.graph.power.PowerGraph;
import ringout.graph.power.PowerSource;
import ringout.graph.power.SupplyTree;
import ringout.sheet.LoadSheet;
import ringout.sheet.LoadSheets;
import ringout.sheet.Output;
import ringout.solve.power.LoadCase;
import ringout.solve.power.LoadFigure;
import ringout.solve.power.OperatingPoint;
import ringout.solve.power.PowerFlow;
import ringout.solve.power.RegulatorFigure;

/** The power tree of one state as a scene: packs, boards, regulators and loads, with what flows at average and at peak. */
final class PowerPicture {
    private final Circuit circuit;
    private final Wiring wiring;
    private final PowerGraph power;
    private final SupplyTree tree;
    private final PowerFlow average;
    private final Optional<PowerFlow> peak;
    private final LoadSheet sheet;
    private final TreeParts parts;
    private final PowerBoards inside;
    private final Map<Integer, PowerSource> byPart = new HashMap<>();
    private final Map<Integer, PowerSource> byPlus = new HashMap<>();
    private final Map<String, Output> outputs = new HashMap<>();
    private final Map<String, Board> boards = new LinkedHashMap<>();
    private final PowerSums sums = new PowerSums();
    private final Map<String, Set<String>> inputs = new HashMap<>();
    private final Map<String, Set<String>> briefs = new HashMap<>();
    private final PassedUnits passed;
    private final List<String> notes = new ArrayList<>();

    private PowerPicture(Circuit circuit, PowerFlow average) {
        this.circuit = circuit;
        this.average = average;
        wiring = circuit.wiring();
        power = PowerGraph.of(circuit);
        tree = power.tree();
        passed = new PassedUnits(wiring, edge -> source(edge).isPresent());
        sheet = LoadSheets.of(circuit);
        parts = new TreeParts(circuit);
        peak = OperatingPoint.of(circuit, LoadCase.PEAK) instanceof PowerFlow flow
                ? Optional.of(flow)
                : Optional.empty();
        for (PowerSource source : power.sources()) {
            if (power.works(source)) {
                byPart.put(source.part(), source);
                byPlus.putIfAbsent(source.plus(), source);
            }
        }
        byPart.remove(-1);
        inside = new PowerBoards(circuit);
        sheet.rails().forEach(rail -> rail.outputs().forEach(output -> outputs.put(output.name(), output)));
    }

    /** The scene with its title block; nothing when there is no operating point. */
    static Optional<TreeScene> of(Circuit circuit, List<Headline> headlines, SheetTitle title) {
        return OperatingPoint.of(circuit, LoadCase.AVERAGE) instanceof PowerFlow flow
                ? Optional.of(new PowerPicture(circuit, flow).scene(headlines, title))
                : Optional.empty();
    }

    private TreeScene scene(List<Headline> headlines, SheetTitle title) {
        for (LoadFigure load : average.loads()) {
            follow(load.load().plus());
        }
        average.regulators().forEach(regulator -> follow(regulator.source().plus()));
        average.regulators().forEach(this::takes);
        average.regulators().forEach(regulator -> walk(regulator.source().plus(), Optional.empty()));
        average.loads().forEach(figure -> walk(figure.load().plus(), Optional.of(figure)));
        joinOthers();
        finishBoards();
        sheet.unfed().forEach(name -> notes.add("no power reaches " + name));
        TreeMarks marks = new TreeMarks(circuit, headlines, parts.ofLead(), parts.ofUnit());
        return new TreeScene(
                title.info("power tree", "power tree", marks.lines().size()),
                parts.nodes(),
                parts.links(),
                List.of("V", "drop V", "A avg / peak"),
                marks.marks(),
                marks.lines(),
                notes);
    }

    private void takes(RegulatorFigure regulator) {
        OptionalDouble most = peak.isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(peak.get().regulators().stream()
                        .filter(r -> r.source().index() == regulator.source().index())
                        .mapToDouble(RegulatorFigure::inAmps)
                        .sum());
        sums.takes(sourceId(regulator.source()), regulator.inAmps(), most);
    }

    private String sourceId(PowerSource source) {
        return parts.id("source " + source.index(), source.name());
    }

    /** The edges from the pack to a point. */
    private List<Integer> way(int vertex) {
        List<Integer> edges = new ArrayList<>();
        for (int v = vertex; tree.edgeTo(v) >= 0; v = tree.pointBefore(v)) {
            edges.add(0, tree.edgeTo(v));
        }
        return edges;
    }

    private void follow(int vertex) {
        if (tree.reaches(vertex)) {
            passed.follow(tree.rootOf(vertex), way(vertex));
        }
    }

    private Optional<PowerSource> source(int edge) {
        return wiring.kind(edge) == EdgeKind.PART
                ? Optional.ofNullable(
                        byPart.get(wiring.parts().get(wiring.ref(edge)).index()))
                : Optional.empty();
    }

    /** Follows power to a point, drawing what is not drawn yet. */
    private void walk(int vertex, Optional<LoadFigure> load) {
        int v = tree.rootOf(vertex);
        if (v < 0 || !byPlus.containsKey(v)) {
            return;
        }
        PowerSource above = byPlus.get(v);
        String at = source(above);
        List<Wire> wires = new ArrayList<>();
        List<Part> through = new ArrayList<>();
        for (int edge : way(vertex)) {
            int next = wiring.graph().from(edge) == v
                    ? wiring.graph().to(edge)
                    : wiring.graph().from(edge);
            Optional<PowerSource> source = source(edge);
            String reached = at;
            if (source.isPresent()) {
                above = source.get();
                reached = source(above);
            } else if (wiring.kind(edge) == EdgeKind.CONDUCTOR) {
                wires.add(wiring.wires().get(wiring.ref(edge)));
            } else if (wiring.kind(edge) == EdgeKind.PART) {
                through.add(wiring.parts().get(wiring.ref(edge)));
            } else if (wiring.isPin(next)
                    && wiring.kind(edge) == EdgeKind.CONTACT
                    && passed.contains(wiring.unitOf(next))) {
                reached = board(next);
            }
            if (!reached.equals(at)) {
                link(at, reached, wires, through, false);
                wires.clear();
                through.clear();
                at = reached;
            }
            v = next;
        }
        if (load.isPresent()) {
            String leaf = leaf(load.get(), above);
            link(at, leaf, wires, through, true);
        }
    }

    private String source(PowerSource source) {
        String id = sourceId(source);
        if (!parts.has(id)) {
            Optional<RegulatorFigure> regulator = average.regulators().stream()
                    .filter(r -> r.source().index() == source.index())
                    .findFirst();
            Optional<Output> output = Optional.ofNullable(outputs.get(source.name()));
            String state = regulator.map(r -> SourceBox.words(r.state())).orElse("");
            parts.node(SourceBox.of(id, source, output, state), source.unit());
        }
        return id;
    }

    /** The board of a unit that a pin belongs to: what is joined inside, through diodes as well. */
    private String board(int pin) {
        Board board = inside.of(pin);
        String name = wiring.directory().name(board.unit());
        String id = parts.id("board " + board.unit() + " " + board.at(), name);
        if (!parts.has(id)) {
            boards.put(id, board);
            String title = inside.title(name, board);
            parts.node(new TreeNode(id, "board", title, List.of(), List.of(), false, Optional.empty()), board.unit());
        }
        return id;
    }

    private String leaf(LoadFigure figure, PowerSource above) {
        PlacedLoad load = figure.load();
        String name = wiring.directory().name(load.unit());
        boolean several = power.loads().stream()
                .anyMatch(other -> other.unit() == load.unit() && !other.rail().equals(load.rail()));
        String title = several ? name + " " + load.rail() : name;
        OptionalDouble poles = average.volts(above.plus(), power.bottom(above).minus());
        String drop = poles.isPresent() ? TreeFigures.volts(poles.getAsDouble() - figure.volts()) : "?";
        OptionalDouble most = peakAmps(load);
        String id = parts.id("load " + load.index(), title);
        List<String> cells = List.of(TreeFigures.volts(figure.volts()), drop, TreeFigures.both(figure.amps(), most));
        parts.node(new TreeNode(id, "load", title, cells, cells, true, Optional.empty()), load.unit());
        sums.takes(id, figure.amps(), most);
        return id;
    }

    private OptionalDouble peakAmps(PlacedLoad load) {
        return peak.isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(peak.get().loads().stream()
                        .filter(figure -> figure.load().index() == load.index())
                        .mapToDouble(LoadFigure::amps)
                        .sum());
    }

    /** A line; what it passes is told on it before a leaf, and in the box of what it comes to elsewhere. */
    private void link(String from, String to, List<Wire> wires, List<Part> through, boolean leaf) {
        List<String> words =
                through.stream().filter(PowerParts::isTold).map(this::words).toList();
        boolean fused = through.stream().anyMatch(PowerParts::isFuse);
        if (leaf) {
            String extra = words.isEmpty() ? "" : (wires.isEmpty() ? "" : ", ") + String.join(", ", words);
            String label = TreeParts.words(wires, true) + extra;
            parts.link(from, to, wires, label, TreeParts.words(wires, false) + extra, fused, Girth.SUPPLY);
            return;
        }
        List<String> told = new ArrayList<>();
        wires.forEach(wire -> told.add(TreeParts.words(List.of(wire), true)));
        told.addAll(words);
        inputs.computeIfAbsent(to, key -> new LinkedHashSet<>()).addAll(told);
        Set<String> less = briefs.computeIfAbsent(to, key -> new LinkedHashSet<>());
        wires.forEach(wire -> less.add(TreeParts.words(List.of(wire), false)));
        less.addAll(words);
        parts.link(from, to, wires, TreeParts.names(wires), TreeParts.names(wires), fused, Girth.SUPPLY);
    }

    /** A fuse with its rating and what is left of it at peak: {@code F8 5 A, 96 % left}; any other part by its name. */
    private String words(Part part) {
        OptionalDouble rating = PowerParts.rating(part);
        String name = PowerParts.name(part);
        if (rating.isEmpty()) {
            return name;
        }
        String left = peak.isEmpty()
                ? "?"
                : TreeFigures.percent(
                        OptionalDouble.of(100 * (1 - Math.abs(peak.get().amps(part)) / rating.getAsDouble())));
        return name + " " + Figures.of(rating) + " A, " + left + " % left";
    }

    /** Sources that the tree leaves bare since another is nearer to what they feed: drawn beside that one, or told. */
    private void joinOthers() {
        for (PowerSource source : power.sources()) {
            String id = sourceId(source);
            boolean used = parts.links().stream().anyMatch(link -> link.from().equals(id));
            if (!power.works(source) || used) {
                continue;
            }
            if (!parts.has(id)) {
                source(source);
            }
            Optional<PowerParts.Next> next = PowerParts.next(circuit, source, passed::contains);
            Optional<TreeLink> beside = next.flatMap(n -> parts.links().stream()
                    .filter(link -> link.to().equals(board(n.pin())))
                    .findFirst());
            if (next.isPresent() && beside.isPresent() && alike(beside.get().from(), id)) {
                link(id, beside.get().to(), next.get().wires(), next.get().through(), false);
            } else {
                next.ifPresent(n -> notes.add(
                        source.name() + " feeds " + wiring.directory().name(wiring.unitOf(n.pin())) + " as well"));
            }
        }
    }

    /** Whether two things stand side by side: fed by the same thing, and one has only the line in question. */
    private boolean alike(String one, String other) {
        return above(one).equals(above(other))
                && parts.links().stream()
                                .filter(link -> link.from().equals(one))
                                .count()
                        == 1;
    }

    private Optional<String> above(String id) {
        return parts.links().stream()
                .filter(link -> link.to().equals(id))
                .map(TreeLink::from)
                .findFirst();
    }

    /** Boards say what passes them, and every box how its input is protected. */
    private void finishBoards() {
        for (TreeNode node : parts.nodes()) {
            List<String> lines = new ArrayList<>(node.lines());
            Board board = boards.get(node.id());
            if (board != null) {
                inside.volts(average, board).ifPresent(v -> lines.add(TreeFigures.volts(v) + " V"));
                lines.add(sums.words(node.id(), parts.links()) + " A");
                if (inside.hasDiodes(board)) {
                    lines.add("joined by diodes");
                }
            }
            List<String> brief = new ArrayList<>(lines);
            lines.addAll(inputs.getOrDefault(node.id(), Set.of()));
            brief.addAll(briefs.getOrDefault(node.id(), Set.of()));
            parts.replace(new TreeNode(node.id(), node.kind(), node.title(), lines, brief, node.leaf(), node.share()));
        }
    }
}
