package ringout.finding;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import ringout.graph.index.UnionFind;

/**
 * Folds findings into one headline a mistake. Findings belong together when they share a cause, or when one check says
 * the same remedy of several objects. In a group the finding that declares it explains another comes first, then severity,
 * then the order of the catalogue.
 */
public final class Headlines {
    private Headlines() {}

    /** The headlines of findings, most severe first. */
    public static List<Headline> of(List<Finding> findings) {
        UnionFind groups = new UnionFind(findings.size());
        Map<String, Integer> byToken = new HashMap<>();
        for (int i = 0; i < findings.size(); i++) {
            for (String token : tokens(findings.get(i))) {
                Integer first = byToken.putIfAbsent(token, i);
                if (first != null) {
                    groups.union(first, i);
                }
            }
        }
        Map<Integer, List<Finding>> members = new TreeMap<>();
        for (int i = 0; i < findings.size(); i++) {
            members.computeIfAbsent(groups.find(i), key -> new ArrayList<>()).add(findings.get(i));
        }
        return members.values().stream()
                .map(Headlines::headline)
                .sorted(Comparator.comparing(Headline::finding, order()))
                .toList();
    }

    private static List<String> tokens(Finding finding) {
        List<String> tokens = new ArrayList<>(finding.causes());
        if (!finding.fix().isEmpty()) {
            tokens.add(finding.code() + " fix " + finding.fix());
        }
        return tokens;
    }

    private static Headline headline(List<Finding> group) {
        Finding head = group.stream().min(within(group)).orElseThrow();
        List<Finding> rest = group.stream()
                .filter(finding -> !finding.id().equals(head.id()))
                .sorted(order())
                .toList();
        return new Headline(head, rest, "");
    }

    private static Comparator<Finding> within(List<Finding> group) {
        Comparator<Finding> explained = Comparator.comparingInt(finding -> explainers(finding, group));
        return explained.thenComparing(order());
    }

    /** How many of the group explain a finding without being explained by it in turn. */
    private static int explainers(Finding finding, List<Finding> group) {
        int count = 0;
        for (Finding other : group) {
            boolean explains = other.explains().contains(finding.code()) && shares(other.causes(), finding.causes());
            if (explains && !finding.explains().contains(other.code())) {
                count++;
            }
        }
        return count;
    }

    private static boolean shares(Set<String> a, Set<String> b) {
        return a.stream().anyMatch(b::contains);
    }

    private static Comparator<Finding> order() {
        return Comparator.comparing(Finding::severity)
                .thenComparing(Finding::code)
                .thenComparing(Finding::id);
    }
}
