package ringout.present.difference;

import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import ringout.compare.difference.Difference;
import ringout.compare.fleet.Fleet;
import ringout.compare.fleet.FleetRow;
import ringout.compare.fleet.Tail;
import ringout.compare.fleet.Trend;
import ringout.compare.judge.Judged;
import ringout.compare.judge.Retest;
import ringout.model.shape.Scalars;

/** Differences, the table of the fleet and the tests to be done again as comma-separated values (RFC 4180, lines ending in \n). */
public final class CompareCsv {
    private CompareCsv() {}

    /** {@return every difference of every tail in a row, the gravest of a tail first} */
    public static String differences(Fleet fleet) {
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of(
                "tail",
                "severity",
                "kind",
                "what",
                "base",
                "now",
                "nets",
                "row in base",
                "row now",
                "comes",
                "goes",
                "usual",
                "change on record",
                "signatures that lapse"));
        for (Tail tail : fleet.tails()) {
            tail.judgement().all().forEach(judged -> rows.add(row(tail, judged)));
            tail.trends().forEach(trend -> rows.add(row(tail, trend)));
        }
        return text(rows);
    }

    private static List<String> row(Tail tail, Judged judged) {
        Difference difference = judged.difference();
        return List.of(
                DifferenceWords.of(tail),
                judged.severity().name(),
                difference.kind().word(),
                difference.what(),
                difference.before(),
                difference.after(),
                String.join("; ", difference.effects()),
                DifferenceWords.places(difference.at()),
                DifferenceWords.places(difference.there()),
                judged.appear().stream().map(DifferenceWords::finding).collect(Collectors.joining("; ")),
                judged.vanish().stream().map(DifferenceWords::finding).collect(Collectors.joining("; ")),
                judged.fate().words(),
                judged.change().orElse(""),
                String.join("; ", judged.lapsing()));
    }

    private static List<String> row(Tail tail, Trend trend) {
        String limit =
                (trend.upper() ? "at most " : "at least ") + Scalars.number(trend.limit()) + " " + trend.quantity();
        return List.of(
                DifferenceWords.of(tail),
                trend.severity().name(),
                "trend",
                "reading at " + trend.where(),
                limit,
                TrendWords.readings(trend),
                "",
                "",
                trend.at().known() ? trend.at().words() : "",
                TrendWords.limit(trend),
                "",
                "",
                "",
                "");
    }

    /** {@return the table of all tails} */
    public static String fleet(Fleet fleet) {
        List<List<String>> rows = new ArrayList<>();
        List<String> head = new ArrayList<>(List.of("severity", "what", "base"));
        fleet.tails().forEach(tail -> head.add(DifferenceWords.of(tail)));
        head.addAll(List.of("comes", "usual", "without change on record"));
        rows.add(head);
        for (FleetRow row : fleet.rows()) {
            List<String> line = new ArrayList<>(List.of(row.severity().name(), row.what(), row.base()));
            line.addAll(row.cells());
            boolean trend = row.trend().isPresent();
            line.add(
                    trend
                            ? TrendWords.limit(fleet.trends().get(row.trend().getAsInt()))
                            : row.finding().orElse(""));
            line.add(trend ? "" : row.fate().words());
            line.add(Integer.toString(row.undocumented()));
            rows.add(line);
        }
        return text(rows);
    }

    /** {@return the tests to be done again, with room for the reading and initials} */
    public static String retests(Fleet fleet) {
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of("tail", "test", "what", "points", "expected", "because of", "reading", "initials"));
        for (Tail tail : fleet.tails()) {
            for (Judged judged : tail.judgement().all()) {
                for (Retest test : judged.retests()) {
                    rows.add(List.of(
                            DifferenceWords.of(tail),
                            test.kind().word(),
                            test.what(),
                            String.join(" ", test.points()),
                            DifferenceWords.expected(test),
                            judged.difference().what(),
                            "",
                            ""));
                }
            }
        }
        return text(rows);
    }

    private static String text(List<List<String>> rows) {
        StringWriter text = new StringWriter();
        try (CsvWriter csv = CsvWriter.builder().lineDelimiter(LineDelimiter.LF).build(text)) {
            rows.forEach(csv::writeRecord);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return text.toString();
    }
}
