package ringout.compare.fleet;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;
import java.util.stream.Collectors;
import ringout.compare.difference.Fate;
import ringout.compare.difference.Kind;
import ringout.compare.judge.Case;
import ringout.compare.judge.Judged;
import ringout.finding.Severity;
import ringout.model.Aircraft;
import ringout.model.shape.Scalars;

/**
 * Tails held against one base, in one table: the gravest first, differences before readings that run away.
 *
 * @param base the aircraft compared with
 * @param baseName what it is called in the table
 * @param baseTrends readings of the base over the hours
 * @param tails the others
 * @param rows the table; differences that are of the record only are not in it
 * @param trends the trends of the rows
 */
public record Fleet(
        Aircraft base,
        String baseName,
        List<Trend> baseTrends,
        List<Tail> tails,
        List<FleetRow> rows,
        List<Trend> trends) {
    /** Keeps its own copies. */
    public Fleet {
        baseTrends = List.copyOf(baseTrends);
        tails = List.copyOf(tails);
        rows = List.copyOf(rows);
        trends = List.copyOf(trends);
    }

    /** The table of all tails. */
    public static Fleet of(Aircraft base, String baseName, List<Trend> baseTrends, List<Tail> tails) {
        Map<String, List<Optional<Case>>> byMatter = new LinkedHashMap<>();
        for (int tail = 0; tail < tails.size(); tail++) {
            for (Case matter : tails.get(tail).cases()) {
                if (!ofRecord(matter)) {
                    byMatter.computeIfAbsent(key(matter), any -> empty(tails.size()))
                            .set(tail, Optional.of(matter));
                }
            }
        }
        List<FleetRow> rows = new ArrayList<>();
        byMatter.values().forEach(cases -> rows.add(row(cases)));
        List<Trend> trends = new ArrayList<>();
        for (int tail = 0; tail < tails.size(); tail++) {
            for (Trend trend : tails.get(tail).trends()) {
                rows.add(row(trend, tail, tails.size(), trends.size()));
                trends.add(trend);
            }
        }
        rows.sort(Comparator.comparing(FleetRow::severity));
        return new Fleet(base, baseName, baseTrends, tails, rows, trends);
    }

    /** The rows that make it wrong to fly one of the tails. */
    public List<FleetRow> dangerous() {
        return rows.stream().filter(row -> row.severity().atLeast(Severity.S2)).toList();
    }

    /** Number of differences of a tail that are of the record only. */
    public static long ofRecord(Tail tail) {
        return tail.cases().stream().filter(Fleet::ofRecord).count();
    }

    private static boolean ofRecord(Case matter) {
        return matter.severity().compareTo(Severity.S4) > 0
                && matter.members().stream()
                        .allMatch(one -> one.difference().kind().ofRecord());
    }

    private static List<Optional<Case>> empty(int size) {
        return new ArrayList<>(Collections.nCopies(size, Optional.empty()));
    }

    private static String key(Case matter) {
        return matter.members().stream()
                .map(one -> one.difference().kind() + " " + one.difference().what())
                .collect(Collectors.joining("\n"));
    }

    private static FleetRow row(List<Optional<Case>> cases) {
        List<Case> there = cases.stream().flatMap(Optional::stream).toList();
        Case worst = there.stream().min(Comparator.comparing(Case::severity)).orElseThrow();
        Judged first = worst.members().get(0);
        return new FleetRow(
                worst.severity(),
                joined(worst, one -> one.difference().what(), " and "),
                joined(worst, one -> one.difference().before(), "; "),
                cases.stream().map(one -> one.map(Fleet::cell).orElse("")).toList(),
                worst.head().map(finding -> finding.code() + " " + finding.title()),
                first.fate(),
                (int) there.stream().filter(Fleet::undocumented).count(),
                OptionalInt.empty());
    }

    private static boolean undocumented(Case matter) {
        return matter.members().stream()
                .anyMatch(one -> one.change().isEmpty()
                        && one.difference().kind() != Kind.SERIAL
                        && !one.difference().kind().ofRecord());
    }

    private static String cell(Case matter) {
        return joined(
                matter,
                one -> one.difference().after().isEmpty()
                        ? "gone"
                        : one.difference().after(),
                "; ");
    }

    private static String joined(Case matter, Function<Judged, String> words, String between) {
        return matter.members().stream().map(words).collect(Collectors.joining(between));
    }

    private static FleetRow row(Trend trend, int tail, int tails, int number) {
        List<String> cells = new ArrayList<>(Collections.nCopies(tails, ""));
        cells.set(
                tail,
                trend.points().stream()
                                .map(point -> Scalars.number(point.value()))
                                .collect(Collectors.joining(", ")) + " " + trend.quantity());
        return new FleetRow(
                trend.severity(),
                "reading at " + trend.where(),
                (trend.upper() ? "at most " : "at least ") + Scalars.number(trend.limit()) + " " + trend.quantity(),
                cells,
                Optional.empty(),
                Fate.PUT_BACK,
                0,
                OptionalInt.of(number));
    }
}
