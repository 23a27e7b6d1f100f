package ringout.check.misplug;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.finding.Draft;
import ringout.finding.Finding;
import ringout.finding.Severity;

/**
 * Tells what comes of wrong ways to plug: what burns, each kind of plug for itself; what crashes and what does no harm, in one
 * line each.
 *
 * @param title what all of it is called, to start a title: {@code look-alike plugs}
 * @param cure what keeps it from happening
 */
public record MisplugTale(String title, String cure) {
    private static final int SHOWN = 12;

    /** Says all of it, the worst first. */
    public void tell(Situation at, Outcomes out, List<Tried> tried) {
        Map<String, List<Tried>> groups = new LinkedHashMap<>();
        for (Tried one : tried) {
            String group = one.severity() == Severity.S5 ? "" : one.way().plugs();
            groups.computeIfAbsent(one.severity() + group, key -> new ArrayList<>())
                    .add(one);
        }
        groups.values().stream()
                .map(group -> draft(
                        at,
                        group.stream()
                                .sorted(Comparator.comparing(MisplugTale::gravity))
                                .toList()))
                .forEach(out::finding);
    }

    private static Severity gravity(Tried one) {
        return one.worst().map(Finding::severity).orElse(Severity.S5);
    }

    private Draft draft(Situation at, List<Tried> group) {
        Tried first = group.get(0);
        int ways = group.stream().mapToInt(one -> one.alike().size()).sum();
        Severity severity = first.severity();
        String plugs = group.stream().map(one -> one.way().plugs()).distinct().collect(Collectors.joining(", "));
        String more = ways > 1 ? ", " + (ways - 1) + " more of such" : "";
        String then = first.worst()
                .map(finding -> ", then " + finding.code() + " " + finding.title())
                .orElse(" without harm");
        Draft draft = Draft.of(severity, title + ": " + first.way().words() + then + more)
                .about(objects(severity, group))
                .cause("plugs " + title + " " + severity + (severity == Severity.S3 ? plugs : ""))
                .sum(plugs + ", " + ways + (ways == 1 ? " way: " : " ways: ") + list(group))
                .source("tried on a copy of the list, one of each kind")
                .why(first.worst().map(Finding::why).orElse("it can be plugged wrongly, and nothing shows it"))
                .meter(first.worst().map(Finding::meter).orElse(""))
                .fix(severity == Severity.S3 ? String.join(" and ", first.way().sockets()) + ": " + cure : cure);
        rows(group).forEach(row -> draft.seen(at.aircraft().leads().get(row)));
        return draft;
    }

    /** What burns is told of its sockets; the rest of its kinds of plug, so that it stays the same finding as plugs come and go. */
    private List<String> objects(Severity severity, List<Tried> group) {
        return switch (severity) {
            case S3 -> sockets(group);
            case S4 -> List.of(title, group.get(0).way().plugs());
            default -> List.of(title);
        };
    }

    private static List<String> sockets(List<Tried> group) {
        return ways(group)
                .flatMap(way -> way.sockets().stream())
                .distinct()
                .sorted()
                .toList();
    }

    private static List<Integer> rows(List<Tried> group) {
        return ways(group)
                .flatMap(way -> way.rows().stream())
                .distinct()
                .sorted()
                .toList();
    }

    private static Stream<Misplug> ways(List<Tried> group) {
        return group.stream().flatMap(one -> one.alike().stream());
    }

    private static String list(List<Tried> group) {
        String shown = group.stream().limit(SHOWN).map(Tried::words).collect(Collectors.joining("; "));
        return group.size() > SHOWN ? shown + "; and " + (group.size() - SHOWN) + " more kinds" : shown;
    }
}
