package ringout.draw.harness;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import ringout.draw.scene.BadgeKind;
import ringout.draw.scene.FindingLine;
import ringout.draw.scene.Mark;
import ringout.finding.Finding;
import ringout.finding.Headline;
import ringout.finding.Place;
import ringout.finding.Severity;
import ringout.graph.Circuit;

/**
 * Findings on a tree: what is wrong with power or returns on the lines and things it names, and whatever is wrong with a
 * lead of the sheet.
 */
final class TreeMarks {
    private final List<Mark> marks = new ArrayList<>();
    private final List<FindingLine> lines = new ArrayList<>();

    /**
     * Finds them.
     *
     * @param links identifiers of the lines that stand for a lead, by its name
     * @param nodes identifiers of the things that stand for a unit, by its name
     */
    TreeMarks(
            Circuit circuit, List<Headline> headlines, Map<String, Set<String>> links, Map<String, Set<String>> nodes) {
        Set<String> leads = new HashSet<>();
        circuit.wiring().aircraft().leads().forEach(lead -> leads.add(lead.id()));
        for (int i = 0; i < headlines.size(); i++) {
            Finding finding = headlines.get(i).finding();
            Set<String> targets = targets(finding, leads, links, nodes);
            if (!targets.isEmpty() && finding.severity().atLeast(Severity.S4)) {
                BadgeKind kind = BadgeKind.valueOf(finding.severity().name());
                marks.add(new Mark(i + 1, kind, false, List.copyOf(targets)));
                lines.add(new FindingLine(i + 1, kind, false, finding.code(), finding.title()));
            }
        }
    }

    private static Set<String> targets(
            Finding finding, Set<String> leads, Map<String, Set<String>> links, Map<String, Set<String>> nodes) {
        Set<String> rows = new LinkedHashSet<>();
        finding.at().stream().map(Place::row).filter(leads::contains).forEach(rows::add);
        Set<String> targets = new LinkedHashSet<>();
        rows.stream()
                .filter(finding.causes()::contains)
                .forEach(row -> targets.addAll(links.getOrDefault(row, Set.of())));
        boolean power = finding.code().startsWith("P");
        if (targets.isEmpty() && power) {
            finding.objects().forEach(object -> targets.addAll(nodes.getOrDefault(object, Set.of())));
            rows.forEach(row -> targets.addAll(links.getOrDefault(row, Set.of())));
        }
        return targets;
    }

    List<Mark> marks() {
        return marks;
    }

    List<FindingLine> lines() {
        return lines;
    }
}
