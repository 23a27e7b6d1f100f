package ringout.compare.judge;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import ringout.compare.match.Match;
import ringout.finding.CannotTell;
import ringout.finding.Finding;
import ringout.finding.Headline;
import ringout.finding.Report;
import ringout.finding.Severity;
import ringout.graph.Directory;

/** Findings that come and go between two aircraft: the same check of the same objects, whatever these are called, is the same. */
final class ComingGoing {
    /** The check that only counts what the others could not tell. */
    private static final String SUM_OF_HOLES = "X01";

    private final Map<String, String> names = new HashMap<>();
    private final Map<String, List<Finding>> groups = new HashMap<>();
    private final List<Finding> appear = new ArrayList<>();
    private final List<Finding> vanish = new ArrayList<>();
    private final List<CannotTell> blind = new ArrayList<>();

    ComingGoing(Match match, Report before, Report after) {
        renamed(match);
        Map<String, Finding> here = new LinkedHashMap<>();
        all(before).forEach(finding -> here.put(key(finding.code(), finding.objects(), Map.of()), finding));
        Map<String, Finding> there = new LinkedHashMap<>();
        all(after).forEach(finding -> there.put(key(finding.code(), finding.objects(), names), finding));
        there.forEach((key, finding) -> {
            if (!here.containsKey(key)) {
                appear.add(finding);
            }
        });
        here.forEach((key, finding) -> {
            if (!there.containsKey(key)) {
                vanish.add(finding);
            }
        });
        String tail = match.base().aircraft().tail().or("");
        String tailThere = match.other().aircraft().tail().or("");
        name(tailThere, tail);
        Set<String> open = new TreeSet<>();
        before.cannotTell().forEach(one -> open.add(key(one.code() + one.missing(), one.objects(), Map.of())));
        after.cannotTell().stream()
                .filter(one -> !one.code().equals(SUM_OF_HOLES))
                .filter(one ->
                        !open.contains(key(one.code() + word(one.missing(), tailThere, tail), one.objects(), names)))
                .forEach(blind::add);
    }

    /** A text with one word for another: of what is asked of the tail itself. */
    private static String word(String text, String word, String other) {
        return word.isEmpty()
                ? text
                : text.replaceAll("\\b" + Pattern.quote(word) + "\\b", Matcher.quoteReplacement(other));
    }

    private void renamed(Match match) {
        Directory here = match.base().directory();
        for (int unit = 0; unit < here.count(); unit++) {
            if (match.unit(unit) >= 0) {
                name(match.other().directory().name(match.unit(unit)), here.name(unit));
            }
        }
        match.pairs().forEach(pair -> name(pair.other().id(), pair.base().id()));
    }

    private void name(String there, String here) {
        if (!there.equals(here)) {
            names.put(there.toUpperCase(Locale.ROOT), here);
        }
    }

    /** Findings that ask for something to be done; tables and notes come and go with anything. */
    private List<Finding> all(Report report) {
        List<Finding> all = new ArrayList<>();
        for (Headline headline : report.headlines()) {
            List<Finding> group = new ArrayList<>(List.of(headline.finding()));
            group.addAll(headline.alsoExplains());
            group.forEach(finding -> groups.putIfAbsent(finding.id(), List.copyOf(group)));
            group.stream()
                    .filter(finding -> finding.severity().atLeast(Severity.S4))
                    .forEach(all::add);
        }
        return all;
    }

    /** The findings of one mistake, by the identity of each of them. */
    Map<String, List<Finding>> groups() {
        return groups;
    }

    private static String key(String code, List<String> objects, Map<String, String> names) {
        Set<String> told = new TreeSet<>();
        objects.forEach(object -> told.add(told(object, names)));
        return code + told;
    }

    /** The name of an object in the words of the base: its unit renamed, the rest of it as it is. */
    private static String told(String object, Map<String, String> names) {
        if (names.isEmpty()) {
            return object;
        }
        for (int end = object.length(); end > 0; end--) {
            boolean whole = end == object.length() || !Character.isLetterOrDigit(object.charAt(end));
            String here = whole ? names.get(object.substring(0, end).toUpperCase(Locale.ROOT)) : null;
            if (here != null) {
                return here + object.substring(end);
            }
        }
        return object;
    }

    List<Finding> appear() {
        return appear;
    }

    List<Finding> vanish() {
        return vanish;
    }

    List<CannotTell> blind() {
        return blind;
    }
}
