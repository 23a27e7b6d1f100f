package ringout.check.misplug;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ringout.check.form.Trials;
import ringout.finding.Finding;
import ringout.finding.Severity;

/**
 * A kind of wrong way to plug, and what comes of it.
 *
 * @param way the one of its kind that was tried: the one that concerns most of what flight depends on
 * @param alike all of its kind
 * @param worst the worst finding it leads to
 */
public record Tried(Misplug way, List<Misplug> alike, Optional<Finding> worst) {
    /** Keeps its own copy. */
    public Tried {
        alike = List.copyOf(alike);
    }

    /**
     * Tries one of each kind.
     *
     * @param ways all ways
     * @param untried takes the ways there was no time for
     */
    public static List<Tried> all(List<Misplug> ways, Trials trials, List<Misplug> untried) {
        Map<String, List<Misplug>> kinds = new LinkedHashMap<>();
        for (Misplug way : ways) {
            String kind = way.harmless() ? "harmless " + way.plugs() : way.plugs() + " " + way.kind();
            kinds.computeIfAbsent(kind, key -> new ArrayList<>()).add(way);
        }
        List<Tried> tried = new ArrayList<>();
        for (List<Misplug> alike : kinds.values()) {
            Misplug way = alike.get(0);
            for (Misplug other : alike) {
                way = other.critical() > way.critical() ? other : way;
            }
            Optional<Trials.Harm> harm = way.harmless()
                    ? Optional.of(new Trials.Harm(Optional.empty()))
                    : trials.of(way.change().get(), way.currents());
            if (harm.isPresent()) {
                tried.add(new Tried(way, alike, harm.get().worst()));
            } else {
                untried.addAll(alike);
            }
        }
        return tried;
    }

    /** How much it matters: a way that burns is to be closed, one that crashes is to be labelled, the rest is worth knowing. */
    public Severity severity() {
        return worst.map(finding -> switch (finding.severity()) {
                    case S1 -> Severity.S3;
                    case S2 -> Severity.S4;
                    default -> Severity.S5;
                })
                .orElse(Severity.S5);
    }

    /** What is done and what comes of it. */
    public String words() {
        return way.words() + ": "
                + worst.map(finding -> finding.severity() + " " + finding.code() + " " + finding.title())
                        .orElse("nothing")
                + (alike.size() > 1 ? " (" + (alike.size() - 1) + " more of the kind)" : "");
    }
}
