package ringout.draw.harness;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import ringout.draw.letter.Lettering;
import ringout.draw.matrix.Block;
import ringout.draw.matrix.Glyph;
import ringout.draw.matrix.MatrixScene;
import ringout.draw.scene.BadgeKind;
import ringout.finding.Finding;
import ringout.finding.Report;
import ringout.finding.Severity;
import ringout.finding.Trial;
import ringout.graph.Circuit;
import ringout.graph.Directory;
import ringout.graph.Site;
import ringout.model.End;

/** What comes of plugs in wrong sockets, as matrices: a matrix for each kind of plug and each part of the aircraft it is mixed up in. */
final class MisplugPicture {
    private static final String LOOK_ALIKE = "M07";
    private static final List<BadgeKind> GRAVITY =
            List.of(BadgeKind.S1, BadgeKind.S2, BadgeKind.S3, BadgeKind.S4, BadgeKind.CANNOT_TELL);

    private final Directory directory;
    private final Report report;

    private MisplugPicture(Circuit circuit, Report report) {
        this.directory = circuit.wiring().directory();
        this.report = report;
    }

    /** The scene with its title block; nothing when no plug can be mixed up, as far as is known. */
    static Optional<MatrixScene> of(Circuit circuit, Report report, SheetTitle title) {
        return new MisplugPicture(circuit, report).scene(title);
    }

    private Optional<MatrixScene> scene(SheetTitle title) {
        Map<String, List<Trial>> byPlugs = new LinkedHashMap<>();
        report.trials().stream()
                .filter(trial -> trial.code().equals(LOOK_ALIKE))
                .forEach(trial -> byPlugs.computeIfAbsent(trial.plugs(), key -> new ArrayList<>())
                        .add(trial));
        List<Block> blocks = new ArrayList<>();
        List<String> harmless = new ArrayList<>();
        byPlugs.forEach((plugs, trials) -> {
            for (List<Trial> together : parts(trials)) {
                if (together.stream()
                        .allMatch(trial -> trial.worst().isEmpty() && trial.told() != Trial.Told.NOT_TRIED)) {
                    harmless.add(plugs + ": " + String.join(" ", sockets(together)));
                } else {
                    blocks.add(block(plugs, together));
                }
            }
        });
        if (byPlugs.isEmpty()) {
            return Optional.empty();
        }
        if (!harmless.isEmpty()) {
            blocks.add(new Block(
                    "alike and exchanged without harm that was found", "", List.of(), List.of(), List.of(), harmless));
        }
        blocks.sort((a, b) -> Integer.compare(gravity(a), gravity(b)));
        return Optional.of(new MatrixScene(
                title.info("plugs that fit the wrong socket", "misplug matrix", 0), blocks, letters(blocks), notes()));
    }

    /** The worst of a matrix first, then the larger. */
    private static int gravity(Block block) {
        int worst = block.rows().stream()
                .flatMap(row -> row.glyphs().stream())
                .filter(Glyph.Result.class::isInstance)
                .mapToInt(glyph -> GRAVITY.indexOf(((Glyph.Result) glyph).kind()))
                .min()
                .orElse(GRAVITY.size());
        return worst * 1000 - block.rows().size();
    }

    private static List<String> letters(List<Block> blocks) {
        Map<String, String> words =
                new TreeMap<>(Map.of("T", "T connection", "A", "A setting", "P", "P power", "S", "S signal"));
        Set<String> used = blocks.stream()
                .flatMap(block -> block.rows().stream())
                .flatMap(row -> row.glyphs().stream())
                .filter(Glyph.Result.class::isInstance)
                .map(glyph -> ((Glyph.Result) glyph).letter())
                .collect(Collectors.toCollection(TreeSet::new));
        return used.stream().map(letter -> words.getOrDefault(letter, letter)).toList();
    }

    private List<String> notes() {
        List<String> notes = new ArrayList<>();
        notes.add(
                "row and column exchanged, or the plug of the one in the free socket of the other; not looked at: more than two"
                        + " mixed up, another state");
        notes.add("one of each kind is tried on a copy of the list, the rest is told by it");
        List<String> open = report.cannotTell().stream()
                .filter(one -> one.code().equals(LOOK_ALIKE))
                .map(one -> one.missing())
                .toList();
        if (!open.isEmpty()) {
            notes.add("cannot tell, and not in the matrix: " + String.join("; ", open));
        }
        return notes;
    }

    /** Ways that share a socket, directly or over others, belong into one matrix. */
    private static List<List<Trial>> parts(List<Trial> trials) {
        Map<String, Set<String>> of = new LinkedHashMap<>();
        for (Trial trial : trials) {
            Set<String> all = new LinkedHashSet<>();
            for (String socket : trial.sockets()) {
                all.add(socket);
                all.addAll(of.getOrDefault(socket, Set.of()));
            }
            all.forEach(socket -> of.put(socket, all));
        }
        Map<Set<String>, List<Trial>> parts = new LinkedHashMap<>();
        trials.forEach(trial -> parts.computeIfAbsent(
                        of.getOrDefault(trial.sockets().get(0), Set.of()), key -> new ArrayList<>())
                .add(trial));
        return List.copyOf(parts.values());
    }

    private static Set<String> sockets(List<Trial> trials) {
        Set<String> sockets = new TreeSet<>();
        trials.forEach(trial -> sockets.addAll(trial.sockets()));
        return sockets;
    }

    private Block block(String plugs, List<Trial> trials) {
        List<String> sockets = new ArrayList<>(sockets(trials));
        sockets.sort((a, b) -> {
            int zones = zone(a).compareTo(zone(b));
            return zones != 0 ? zones : a.compareTo(b);
        });
        Glyph[][] cells = new Glyph[sockets.size()][sockets.size()];
        for (int i = 0; i < sockets.size(); i++) {
            for (int j = 0; j < sockets.size(); j++) {
                cells[i][j] = i == j ? new Glyph.Self() : new Glyph.None();
            }
        }
        Map<String, Finding> told = new TreeMap<>();
        for (Trial trial : trials) {
            int i = sockets.indexOf(trial.sockets().get(0));
            int j = sockets.indexOf(trial.sockets().get(trial.sockets().size() - 1));
            Glyph worse = worse(cells[i][j], glyph(trial));
            cells[i][j] = worse;
            cells[j][i] = worse;
            trial.worst().ifPresent(finding -> told.putIfAbsent(finding.severity() + " " + finding.code(), finding));
        }
        List<Block.Row> rows = IntStream.range(0, sockets.size())
                .mapToObj(i -> new Block.Row(sockets.get(i), List.of(cells[i]), List.of()))
                .toList();
        List<String> lines = told.entrySet().stream()
                .map(entry -> entry.getKey() + " such as "
                        + Lettering.printable(entry.getValue().title()))
                .toList();
        return new Block(Lettering.printable(plugs) + zones(sockets), "", sockets, List.of(), rows, lines);
    }

    private String zones(List<String> sockets) {
        List<String> zones = sockets.stream()
                .map(this::zone)
                .filter(zone -> !zone.isEmpty())
                .distinct()
                .toList();
        return zones.isEmpty()
                ? ""
                : zones.size() <= 2 ? ", " + String.join(" and ", zones) : ", " + zones.size() + " zones";
    }

    private String zone(String socket) {
        Site site = directory.resolve(new End(socket));
        int unit = site instanceof Site.OnPlug on ? on.unit() : -1;
        return unit < 0 || directory.isJoint(unit)
                ? ""
                : directory.unit(unit).zone().or("");
    }

    private static Glyph glyph(Trial trial) {
        if (trial.worst().isPresent()) {
            Finding finding = trial.worst().get();
            BadgeKind kind = finding.severity() == Severity.S5
                    ? BadgeKind.S4
                    : BadgeKind.valueOf(finding.severity().name());
            return new Glyph.Result(kind, finding.code().substring(0, 1), finding.severity() + " " + finding.code());
        }
        return switch (trial.told()) {
            case SAME_POINTS -> new Glyph.Same();
            case NOT_TRIED -> new Glyph.Open();
            case TRIED, BY_KIND -> new Glyph.NoHarm();
        };
    }

    /** Two plugs may be mixed up in several ways: the worst counts, and what was not tried before what was and does no harm. */
    private static Glyph worse(Glyph one, Glyph other) {
        return Collections.max(List.of(one, other), (a, b) -> Integer.compare(rank(a), rank(b)));
    }

    private static int rank(Glyph glyph) {
        if (glyph instanceof Glyph.Result result) {
            return 100 - GRAVITY.indexOf(result.kind());
        }
        return glyph instanceof Glyph.Open
                ? 50
                : glyph instanceof Glyph.NoHarm ? 3 : glyph instanceof Glyph.Same ? 2 : 1;
    }
}
