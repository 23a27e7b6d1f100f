package ringout.compare.judge;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ringout.finding.Finding;
import ringout.finding.Severity;

/**
 * Differences that are one matter: those that raise the same worst finding, such as a terminator that came on here and went
 * off there; else one difference alone.
 *
 * @param severity of the matter
 * @param head the finding they raise together, if they do
 * @param members the differences, in their order
 */
public record Case(Severity severity, Optional<Finding> head, List<Judged> members) {
    /** Keeps its own copy. */
    public Case {
        members = List.copyOf(members);
    }

    /** The matters of a judgement, the gravest first. */
    public static List<Case> of(Judgement judgement) {
        Map<String, List<Judged>> groups = new LinkedHashMap<>();
        for (int i = 0; i < judgement.all().size(); i++) {
            Judged judged = judgement.all().get(i);
            String key = head(judged).map(Finding::id).orElse("alone " + i);
            groups.computeIfAbsent(key, any -> new ArrayList<>()).add(judged);
        }
        return groups.values().stream()
                .map(group -> new Case(group.get(0).severity(), head(group.get(0)), group))
                .toList();
    }

    private static Optional<Finding> head(Judged judged) {
        return judged.appear().stream()
                .filter(finding -> finding.severity().atLeast(Severity.S3))
                .findFirst();
    }

    /** Whether the aircraft must not be powered or flown so. */
    public boolean dangerous() {
        return severity.atLeast(Severity.S2);
    }
}
