package ringout.draw.harness;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Predicate;
import ringout.draw.scene.BadgeKind;
import ringout.draw.scene.FindingLine;
import ringout.finding.Finding;
import ringout.finding.Headline;
import ringout.finding.Place;
import ringout.finding.Severity;
import ringout.graph.Circuit;

/** Which findings have a badge on the drawing of a lead or plug; numbered as on every sheet of the set. */
final class CardMarks {
    private final TreeMap<Integer, Finding> findings = new TreeMap<>();
    private final Set<String> leads = new HashSet<>();

    CardMarks(Circuit circuit, List<Headline> headlines) {
        circuit.wiring().aircraft().leads().forEach(lead -> leads.add(lead.id()));
        for (int i = 0; i < headlines.size(); i++) {
            Finding finding = headlines.get(i).finding();
            if (finding.severity().atLeast(Severity.S4)) {
                findings.put(i + 1, finding);
            }
        }
    }

    /** The findings whose cause is a lead; of one whose cause is no lead, those that point to its row. */
    List<FindingLine> ofLead(String lead) {
        return lines(finding -> {
            List<String> rows = finding.at().stream()
                    .map(Place::row)
                    .filter(leads::contains)
                    .toList();
            List<String> causes =
                    rows.stream().filter(finding.causes()::contains).toList();
            return (causes.isEmpty() ? rows : causes).contains(lead);
        });
    }

    /** The findings about a plug or one of its pins. */
    List<FindingLine> ofPlug(String plug, Set<String> pins) {
        return lines(
                finding -> finding.objects().stream().anyMatch(object -> object.equals(plug) || pins.contains(object)));
    }

    /** The line of a finding, by its number. */
    static FindingLine line(int number, Finding finding) {
        BadgeKind kind = BadgeKind.valueOf(finding.severity().name());
        return new FindingLine(number, kind, false, finding.code(), finding.title());
    }

    private List<FindingLine> lines(Predicate<Finding> shows) {
        List<FindingLine> lines = new ArrayList<>();
        findings.forEach((number, finding) -> {
            if (shows.test(finding)) {
                lines.add(line(number, finding));
            }
        });
        return lines;
    }
}
