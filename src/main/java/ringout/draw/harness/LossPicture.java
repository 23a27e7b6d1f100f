package ringout.draw.harness;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import ringout.check.form.Figures;
import ringout.draw.letter.Lettering;
import ringout.draw.matrix.Block;
import ringout.draw.matrix.Glyph;
import ringout.draw.matrix.MatrixScene;
import ringout.graph.Circuit;
import ringout.graph.Directory;
import ringout.graph.loss.LossTable;
import ringout.graph.loss.LossTable.Line;
import ringout.graph.loss.RotorLoss;
import ringout.model.Airframe;
import ringout.model.Rotor;
import ringout.solve.rotor.Hover;

/** What is lost with each plug, lead, fuse and part, as a matrix: things that take the same stand in one row, the worst first. */
final class LossPicture {
    private final Circuit circuit;
    private final Hover hover;
    private final boolean rotors;
    private final Map<Integer, BitSet> stopped = new LinkedHashMap<>();
    private final List<Rotor> table;

    /** What lets go with the same result. */
    private record Group(List<Line> lines, BitSet rotors) {
        Line first() {
            return lines.get(0);
        }
    }

    private LossPicture(Circuit circuit) {
        this.circuit = circuit;
        Airframe airframe = circuit.wiring().aircraft().airframe();
        table = airframe.rotors();
        rotors = !table.isEmpty();
        hover = new Hover(airframe, airframe.yawMustHold().or(false));
        RotorLoss losses = RotorLoss.of(circuit);
        losses.byItem().forEach((item, places) -> {
            BitSet set = new BitSet();
            for (int place : places) {
                losses.driven().get(place).drive().rotor().map(table::indexOf).ifPresent(set::set);
            }
            stopped.put(item, set);
        });
    }

    /** The scene with its title block; nothing when nothing takes more than one unit that flight does not depend on. */
    static Optional<MatrixScene> of(Circuit circuit, SheetTitle title) {
        return new LossPicture(circuit).scene(title);
    }

    private Optional<MatrixScene> scene(SheetTitle title) {
        List<Group> groups = groups();
        List<Group> shown = groups.stream().filter(LossPicture::matters).toList();
        if (shown.isEmpty()) {
            return Optional.empty();
        }
        Directory directory = circuit.wiring().directory();
        Set<Integer> dead = new TreeSet<>();
        shown.forEach(group ->
                group.first().units().forEach(unit -> directory.find(unit).ifPresent(dead::add)));
        List<String> columns = dead.stream().map(directory::name).toList();
        List<Block.Row> rows = shown.stream().map(group -> row(group, columns)).toList();
        List<String> heads = new ArrayList<>();
        heads.add("flight");
        if (rotors) {
            heads.add("rotor margin");
        }
        heads.add("functions lost, flight's first");
        Block block = new Block("without one of these", "lets go alone", columns, heads, rows, List.of());
        return Optional.of(new MatrixScene(
                title.info("what is lost with each plug, lead and part", "loss overlay", 0),
                List.of(block),
                List.of(),
                notes(groups.size() - shown.size(), lines(groups) - lines(shown))));
    }

    private static int lines(List<Group> groups) {
        return groups.stream().mapToInt(group -> group.lines().size()).sum();
    }

    private List<String> notes(int rows, int things) {
        List<String> notes = new ArrayList<>();
        notes.add("flight: number of lost functions that flight depends on"
                + (rotors
                        ? "; rotor margin: thrust left to steer with at the worst weight, all rotors left at full"
                        : ""));
        if (rotors && !hover.missing().isEmpty()) {
            notes.add("rotor margin cannot be told without: "
                    + hover.missing().stream()
                            .map(gap -> gap.datum() + " of " + gap.of())
                            .distinct()
                            .collect(Collectors.joining(", ")));
        }
        if (things > 0) {
            notes.add(
                    things + " more plugs, leads and parts take one unit or nothing but functions that flight does not"
                            + " depend on: not listed, in " + rows + " rows");
        }
        return notes;
    }

    /** Whether it takes something that flight depends on, or more than one unit. */
    private static boolean matters(Group group) {
        return group.first().flightCritical() > 0
                || group.first().units().size() > 1
                || !group.rotors().isEmpty();
    }

    private List<Group> groups() {
        Map<List<Object>, Group> groups = new LinkedHashMap<>();
        for (Line line : LossTable.of(circuit).lines()) {
            BitSet set = stopped.getOrDefault(line.item().index(), new BitSet());
            List<Object> key = List.of(line.units(), line.functionNames(), set);
            groups.computeIfAbsent(key, k -> new Group(new ArrayList<>(), set))
                    .lines()
                    .add(line);
        }
        return List.copyOf(groups.values());
    }

    private Block.Row row(Group group, List<String> columns) {
        Line first = group.first();
        String name = group.lines().stream()
                .map(line -> line.item().name())
                .map(Lettering::printable)
                .collect(Collectors.joining(", "));
        List<Glyph> glyphs = new ArrayList<>();
        columns.forEach(unit -> glyphs.add(first.units().contains(unit) ? new Glyph.Dead() : new Glyph.None()));
        List<String> tails = new ArrayList<>();
        tails.add(Integer.toString(first.flightCritical()));
        if (rotors) {
            tails.add(margin(group.rotors()));
        }
        List<String> functions = new ArrayList<>();
        first.functions().stream()
                .filter(function -> function.flightCritical().is(true))
                .forEach(function -> functions.add(function.name()));
        first.functions().stream()
                .filter(function -> !function.flightCritical().is(true))
                .forEach(function -> functions.add(function.name()));
        tails.add(functions.isEmpty() ? "-" : Lettering.printable(String.join(", ", functions)));
        return new Block.Row(name, glyphs, tails);
    }

    private String margin(BitSet lost) {
        if (lost.isEmpty()) {
            return "-";
        }
        String names = lost.stream()
                .mapToObj(
                        row -> table.get(row).number().known().map(n -> "M" + n).orElse(Hover.name(table.get(row))))
                .collect(Collectors.joining(" "));
        if (!hover.missing().isEmpty()) {
            return "? without " + names;
        }
        OptionalDouble margin = hover.without(lost);
        boolean none = margin.isEmpty() || margin.getAsDouble() <= 0;
        if (lost.cardinality() == table.size()) {
            return "no hover, all stop";
        }
        return (none ? "no hover" : Figures.of(margin.getAsDouble()) + " kgf") + " without " + names;
    }
}
