package ringout.check;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import ringout.check.form.Check;
import ringout.check.form.CheckInfo;
import ringout.finding.Finding;

/**
 * Holds findings against what the same checks find under suppositions about missing data. What is found under all of them
 * stands whatever the datum is; the rest is in doubt.
 */
final class Doubts {
    private final Map<String, Finding> found;
    private final Set<String> codes;
    private final Map<String, Finding> withdrawn = new LinkedHashMap<>();
    private final Map<String, Finding> mildest = new LinkedHashMap<>();
    private boolean supposed;

    Doubts(Map<String, Finding> findings) {
        this.found = new LinkedHashMap<>(findings);
        this.codes = found.values().stream().map(Finding::code).collect(Collectors.toSet());
    }

    /** Whether a check has found something that could be in doubt. */
    boolean touches(Check check) {
        return codes.contains(check.getClass().getAnnotation(CheckInfo.class).code());
    }

    /** Takes in what the checks find under one supposition. */
    void suppose(Map<String, Finding> others) {
        found.forEach((id, finding) -> {
            if (!others.containsKey(id)) {
                withdrawn.put(id, finding);
            }
        });
        if (!supposed || others.size() < mildest.size()) {
            mildest.clear();
            mildest.putAll(others);
        }
        supposed = true;
    }

    /** The findings that do not stand. */
    List<Finding> withdrawn() {
        return List.copyOf(withdrawn.values());
    }

    /** What is left of them: where one of several objects falls out, the finding about the others stands. */
    List<Finding> instead() {
        Set<String> open = withdrawn.values().stream().map(Finding::code).collect(Collectors.toSet());
        List<Finding> rest = new ArrayList<>();
        mildest.forEach((id, finding) -> {
            if (open.contains(finding.code()) && !found.containsKey(id)) {
                rest.add(finding);
            }
        });
        return rest;
    }
}
