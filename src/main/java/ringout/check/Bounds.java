package ringout.check;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.function.Predicate;
import ringout.check.open.OpenData;
import ringout.check.open.OpenDatum;
import ringout.finding.CannotTell;
import ringout.finding.Finding;
import ringout.model.Aircraft;

/**
 * Holds what checks say of an aircraft against what they say with the missing data at either end of what they usually are. What
 * is not the same hangs on a datum that nobody gave.
 */
final class Bounds {
    /** So many data of one kind are tried one by one; of more all those are named that the finding speaks of. */
    private static final int ONE_BY_ONE = 8;

    private static final int WAYS = 3;

    /**
     * What some checks say.
     *
     * @param findings what they find, by identity
     * @param looked codes of those that had something to look at
     */
    record Said(Map<String, Finding> findings, Set<String> looked) {}

    /**
     * A datum to ask for.
     *
     * @param datum what it is, in trade words
     * @param open of what, and for which check
     */
    record Question(String datum, CannotTell open) {}

    private final OpenData open;
    private final Said said;
    private final Function<Aircraft, Said> other;
    private final Set<String> withdrawn = new LinkedHashSet<>();

    /** By check and datum, what it is missing of. */
    private final Map<String, Map<String, Asked>> asked = new TreeMap<>();

    /** A question of one check. */
    private static final class Asked {
        final Set<OpenDatum> data = new LinkedHashSet<>();
        final Set<String> states = new TreeSet<>();
    }

    /**
     * Bounds for what was said.
     *
     * @param open the missing data
     * @param said what the checks say without them
     * @param other what the same checks say of another aircraft
     */
    Bounds(OpenData open, Said said, Function<Aircraft, Said> other) {
        this.open = open;
        this.said = said;
        this.other = other;
        Map<String, List<OpenDatum>> byDatum = new LinkedHashMap<>();
        open.all()
                .forEach(datum -> byDatum.computeIfAbsent(datum.datum(), key -> new ArrayList<>())
                        .add(datum));
        byDatum.values().forEach(this::suppose);
        if (byDatum.size() > 1) {
            together();
        }
    }

    /** One kind of data at its ends, the others left as they are. */
    private void suppose(List<OpenDatum> data) {
        for (int way = 0; way < WAYS; way++) {
            int end = way;
            if (data.stream().noneMatch(datum -> end < datum.ends().size())) {
                break;
            }
            Map<String, Set<Finding>> changed = changed(supposing(data::contains, way));
            if (!changed.isEmpty()) {
                name(data, way, changed);
            }
        }
    }

    /** All kinds at once: what hangs on several of them together. */
    private void together() {
        for (int way = 0; way < 2; way++) {
            Map<String, Set<Finding>> changed = changed(supposing(datum -> true, way));
            changed.keySet().removeAll(asked.keySet());
            changed.forEach(
                    (code, findings) -> near(open.all(), findings).forEach(datum -> ask(code, datum, findings)));
        }
    }

    private Said supposing(Predicate<OpenDatum> which, int way) {
        return other.apply(open.supposing(which, way));
    }

    private void name(List<OpenDatum> data, int way, Map<String, Set<Finding>> changed) {
        if (data.size() > 1 && data.size() <= ONE_BY_ONE) {
            Set<String> settled = new TreeSet<>();
            for (OpenDatum datum : data) {
                changed(supposing(datum::equals, way)).forEach((code, findings) -> {
                    settled.add(code);
                    ask(code, datum, findings);
                });
            }
            changed.keySet().removeAll(settled);
        }
        changed.forEach((code, findings) -> near(data, findings).forEach(datum -> ask(code, datum, findings)));
    }

    /** The data of things that findings speak of; all of them when they speak of none. */
    private static List<OpenDatum> near(List<OpenDatum> data, Set<Finding> findings) {
        Set<String> names = new TreeSet<>();
        for (Finding finding : findings) {
            names.addAll(finding.objects());
            finding.at().forEach(place -> names.add(place.row()));
            names.addAll(finding.evidence().path().names());
        }
        List<OpenDatum> near = data.stream()
                .filter(datum ->
                        datum.of().stream().anyMatch(of -> names.stream().anyMatch(name -> speaks(name, of))))
                .toList();
        return near.isEmpty() ? data : near;
    }

    private static boolean speaks(String words, String of) {
        return words.equals(of) || words.startsWith(of + "-") || of.startsWith(words + "-");
    }

    private void ask(String code, OpenDatum datum, Set<Finding> findings) {
        Asked one =
                asked.computeIfAbsent(code, key -> new TreeMap<>()).computeIfAbsent(datum.datum(), key -> new Asked());
        one.data.add(datum);
        findings.forEach(finding -> one.states.addAll(finding.states()));
    }

    /** By check, the findings that are there in one case only; a check that only now has something to look at has none. */
    private Map<String, Set<Finding>> changed(Said now) {
        Map<String, Set<Finding>> changed = new TreeMap<>();
        said.findings().forEach((id, finding) -> {
            if (now.findings().values().stream().noneMatch(again -> same(finding, again) || within(again, finding))) {
                withdrawn.add(id);
                changed.computeIfAbsent(finding.code(), key -> new LinkedHashSet<>())
                        .add(finding);
            }
        });
        now.findings().forEach((id, finding) -> {
            if (said.findings().values().stream().noneMatch(before -> same(before, finding))) {
                changed.computeIfAbsent(finding.code(), key -> new LinkedHashSet<>())
                        .add(finding);
            }
        });
        for (String code : now.looked()) {
            if (!said.looked().contains(code)) {
                changed.computeIfAbsent(code, key -> new LinkedHashSet<>());
            }
        }
        return changed;
    }

    /** Whether a finding tells of all that another one tells of. */
    private static boolean same(Finding finding, Finding other) {
        return finding.code().equals(other.code())
                && (finding.id().equals(other.id()) || finding.objects().containsAll(other.objects()));
    }

    private static boolean within(Finding finding, Finding larger) {
        return same(larger, finding);
    }

    /** Identities of findings that do not stand whatever the data are. */
    Set<String> withdrawn() {
        return withdrawn;
    }

    /**
     * What has to be asked for instead.
     *
     * @param names names of checks by code
     * @param states all states, where no finding tells in which
     */
    List<Question> asked(Map<String, String> names, List<String> states) {
        List<Question> all = new ArrayList<>();
        asked.forEach((code, byDatum) -> byDatum.forEach((datum, one) -> {
            Set<String> of = new TreeSet<>();
            one.data.forEach(open -> of.addAll(open.of()));
            OpenDatum first = one.data.iterator().next();
            CannotTell open = new CannotTell(
                    code,
                    names.getOrDefault(code, ""),
                    List.copyOf(of),
                    datum + " of " + String.join(", ", of),
                    first.how(),
                    first.minutes() * one.data.size(),
                    one.states.isEmpty()
                            ? states
                            : states.stream().filter(one.states::contains).toList());
            all.add(new Question(datum, open));
        }));
        return all;
    }
}
