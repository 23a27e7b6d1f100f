package ringout.check.record;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.stream.Collectors;
import ringout.check.form.CheckInfo;
import ringout.check.form.Gathering;
import ringout.check.form.Outcomes;
import ringout.finding.CannotTell;
import ringout.finding.Severity;

/**
 * Data that are missing behind checks of the gravest kind.
 *
 * <p>Why it matters: "cannot tell" is not a pass. Of many unknowns, a few data decide most of what can burn or fall.
 *
 * <p>Condition: a check whose findings are S1 or S2 could not decide. The lines of those checks are not said again: one
 * line counts the data, adds up the minutes and names the three that hold up most checks, the quickest first. With one such datum
 * alone its own line says everything.
 *
 * <p>Does not see: data that no check asked for.
 *
 * <p>Reference: common practice, no source.
 */
@CheckInfo(
        code = "X01",
        name = "data-hole",
        severity = Severity.S5,
        since = "0.1",
        asksOnly = true,
        needs = {"all data of checks whose findings are S1 or S2"})
public final class DataHole implements Gathering {
    private static final int FIRST = 3;

    /** A datum, the checks it holds up and the minutes it takes. */
    private record Datum(String missing, TreeSet<String> codes, int minutes) {}

    @Override
    public void gather(List<CannotTell> open, Outcomes out) {
        Map<String, Datum> data = new LinkedHashMap<>();
        for (CannotTell one : open) {
            data.computeIfAbsent(one.missing(), key -> new Datum(one.missing(), new TreeSet<>(), one.minutes()))
                    .codes()
                    .add(one.code());
        }
        if (data.isEmpty()) {
            out.looked();
        }
        if (data.size() < 2) {
            return;
        }
        List<Datum> ranked = data.values().stream()
                .sorted(Comparator.comparingInt((Datum datum) -> -datum.codes().size())
                        .thenComparingInt(Datum::minutes)
                        .thenComparing(Datum::missing))
                .toList();
        TreeSet<String> codes = new TreeSet<>();
        ranked.forEach(datum -> codes.addAll(datum.codes()));
        int minutes = ranked.stream().mapToInt(Datum::minutes).sum();
        String first = ranked.stream()
                .limit(FIRST)
                .map(datum -> datum.missing() + " (" + String.join(" ", datum.codes()) + ")")
                .collect(Collectors.joining("; "));
        out.cannotTell(
                ranked.size() + " data behind checks of S1 and S2 (" + String.join(" ", codes) + "), first " + first,
                "get these first, all of them take " + minutes + " min",
                ranked.stream().limit(FIRST).mapToInt(Datum::minutes).sum());
    }
}
