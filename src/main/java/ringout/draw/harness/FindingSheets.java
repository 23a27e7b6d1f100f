package ringout.draw.harness;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import ringout.draw.paper.SheetSize;
import ringout.draw.scene.Remark;
import ringout.draw.scene.SheetInfo;
import ringout.draw.scene.WiringScene;
import ringout.draw.wiring.WiringDrawing;
import ringout.finding.Evidence;
import ringout.finding.Finding;
import ringout.finding.Headline;
import ringout.finding.Place;
import ringout.finding.Report;
import ringout.finding.Severity;
import ringout.graph.Circuit;
import ringout.graph.Trail;
import ringout.model.Origin;

/**
 * A sheet for each finding of weight: what lies within two plugs of the fault with the path numbered at its pins, the path in
 * words, the arithmetic, what to do, and the measurement that proves it.
 */
public final class FindingSheets {
    private static final String CAUTION =
            "propellers off; packs out and capacitors down before a plug is pulled or ohms are"
                    + " measured; with power on fused meter leads, eye protection, one hand; a reading that does not fit is no pass";

    /** Most conductors on a sheet, tried in turn until they fit on A4. */
    private static final List<Integer> MOST = List.of(18, 12, 8, 4, 1);

    private static final int EXPLAINED = 3;

    /**
     * The sheet of one finding.
     *
     * @param number of the finding, as in its badges
     * @param drawing the sheet
     */
    public record Numbered(int number, WiringDrawing.Fits drawing) {}

    private final Circuit circuit;
    private final Report report;
    private final SheetTitle title;
    private final Neighbourhood neighbourhood;

    private FindingSheets(Circuit circuit, Report report, String hash) {
        this.circuit = circuit;
        this.report = report;
        this.title = new SheetTitle(circuit, report, hash);
        this.neighbourhood = new Neighbourhood(circuit);
    }

    /**
     * The sheets of the findings of severity 1 to 3 that are about something with a wire, not yet numbered.
     *
     * @param report findings
     * @param hash of the data, printed on every sheet
     */
    public static List<Numbered> of(Circuit circuit, Report report, String hash) {
        return new FindingSheets(circuit, report, hash).all();
    }

    /** How many findings there ought to be a sheet of. */
    static long wanted(Report report) {
        return report.headlines().stream()
                .filter(headline -> headline.finding().severity().atLeast(Severity.S3))
                .count();
    }

    private List<Numbered> all() {
        Map<Integer, List<WiringScene>> scenes = new LinkedHashMap<>();
        for (int i = 0; i < report.headlines().size(); i++) {
            Headline headline = report.headlines().get(i);
            if (headline.finding().severity().atLeast(Severity.S3)) {
                scenes.put(i + 1, scenes(i + 1, headline));
            }
        }
        return scenes.entrySet().parallelStream()
                .map(entry -> drawn(entry.getKey(), entry.getValue()))
                .flatMap(Optional::stream)
                .toList();
    }

    /** The neighbourhood, and smaller ones should it be too large for the smallest sheet; none without a wire. */
    private List<WiringScene> scenes(int number, Headline headline) {
        List<WiringScene> scenes = new ArrayList<>();
        List<Integer> last = List.of();
        for (int most : MOST) {
            List<Integer> rows = neighbourhood.of(headline.finding(), most);
            if (!rows.equals(last)) {
                scenes.add(scene(number, headline, rows));
            }
            last = rows;
        }
        return scenes;
    }

    private static Optional<Numbered> drawn(int number, List<WiringScene> scenes) {
        for (WiringScene scene : scenes) {
            if (WiringDrawing.of(scene, List.of(SheetSize.A4)) instanceof WiringDrawing.Fits fits) {
                return Optional.of(new Numbered(number, fits));
            }
        }
        for (WiringScene scene : scenes.isEmpty() ? scenes : scenes.subList(scenes.size() - 1, scenes.size())) {
            if (WiringDrawing.of(scene, SheetSize.all()) instanceof WiringDrawing.Fits fits) {
                return Optional.of(new Numbered(number, fits));
            }
        }
        return Optional.empty();
    }

    private WiringScene scene(int number, Headline headline, List<Integer> rows) {
        Finding finding = headline.finding();
        Map<String, String> steps = steps(finding.evidence().path());
        Focus focus = new Focus(number, steps, remarks(headline, steps, rows.size()));
        Portion portion = new Portion("finding " + number, rows);
        SheetInfo info =
                title.info("finding " + number + ": " + finding.code() + " " + finding.name(), "finding sheet", 1);
        return new SheetScene(circuit, portion, report.headlines(), focus).scene(info);
    }

    /** The pins of a path, numbered from 1 in the order a meter's lead follows them. */
    private static Map<String, String> steps(Trail path) {
        Map<String, String> steps = new LinkedHashMap<>();
        for (Trail.Step step : path.steps()) {
            if (step.kind() == Trail.Kind.PIN) {
                steps.putIfAbsent(step.name(), Integer.toString(steps.size() + 1));
            }
        }
        return steps;
    }

    private List<Remark> remarks(Headline headline, Map<String, String> steps, int drawn) {
        Finding finding = headline.finding();
        List<Remark> remarks = new ArrayList<>();
        add(remarks, "at", finding.at().stream().map(Place::words).collect(Collectors.joining("; ")));
        add(remarks, "path", path(finding.evidence().path(), steps));
        add(remarks, "sum", sum(finding.evidence()));
        add(remarks, "why", finding.why());
        add(remarks, "measure", finding.meter());
        add(remarks, "fix", finding.fix());
        add(remarks, "explains", explained(headline.alsoExplains()));
        add(remarks, "holds in", String.join(", ", finding.states()));
        add(
                remarks,
                "drawn",
                drawn(drawn, neighbourhood.of(finding, Integer.MAX_VALUE).size()));
        add(remarks, "caution", CAUTION);
        return remarks;
    }

    private static String drawn(int rows, int all) {
        return rows == all
                ? ""
                : rows + " of " + all + " leads within two plugs of it; the others are on the wiring sheets";
    }

    private static String explained(List<Finding> also) {
        String first = also.stream()
                .limit(EXPLAINED)
                .map(finding -> finding.code() + " " + finding.title())
                .collect(Collectors.joining("; "));
        return also.size() > EXPLAINED ? first + "; and " + (also.size() - EXPLAINED) + " more" : first;
    }

    private static void add(List<Remark> remarks, String head, String text) {
        if (!text.isEmpty()) {
            remarks.add(new Remark(head, text));
        }
    }

    /** The path with the numbers that stand at the pins of the drawing. */
    private static String path(Trail path, Map<String, String> steps) {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < path.steps().size(); i++) {
            Trail.Step step = path.steps().get(i);
            boolean inside = i > 0
                    && step.kind() == Trail.Kind.PIN
                    && path.steps().get(i - 1).kind() == Trail.Kind.PIN;
            text.append(i == 0 ? "" : inside ? " = " : ", ");
            String number = step.kind() == Trail.Kind.PIN ? steps.get(step.name()) : null;
            text.append(number == null ? "" : "(" + number + ") ").append(step.name());
        }
        return text.toString();
    }

    private static String sum(Evidence evidence) {
        if (evidence.sum().isEmpty()) {
            return "";
        }
        String source = evidence.source().isEmpty() ? "" : " (" + evidence.source() + ")";
        String origin = evidence.origin() == Origin.LIST
                ? ""
                : "; weakest input: " + evidence.origin().word();
        String turns = evidence.onAssumption() ? "; the verdict depends on an assumption" : "";
        return evidence.sum() + source + origin + turns;
    }
}
