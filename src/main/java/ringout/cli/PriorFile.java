package ringout.cli;

import de.siegmar.fastcsv.reader.CommentStrategy;
import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import ringout.trace.candidate.PriorTable;

/** The weights of faults from a table of an operator: kind of fault or kind with circumstance, weight, and where it comes from. */
final class PriorFile {
    private PriorFile() {}

    static PriorTable read(Path file) throws FaultNames.Unknown {
        List<List<String>> rows = new ArrayList<>();
        try (CsvReader<CsvRecord> csv = CsvReader.builder()
                .commentStrategy(CommentStrategy.SKIP)
                .fieldSeparator(separator(file))
                .ofCsvRecord(file, StandardCharsets.UTF_8)) {
            csv.forEach(record -> rows.add(record.getFields()));
        } catch (IOException | UncheckedIOException | CsvParseException failed) {
            throw new FaultNames.Unknown("cannot read " + file + ": " + failed.getMessage());
        }
        if (!rows.isEmpty()
                && rows.get(0).size() > 1
                && rows.get(0).get(1).strip().equalsIgnoreCase("weight")) {
            rows.remove(0);
        }
        PriorTable.Parsed parsed = PriorTable.parse(rows);
        if (!parsed.problems().isEmpty()) {
            throw new FaultNames.Unknown(file + ": " + String.join("; ", parsed.problems()));
        }
        return parsed.table();
    }

    /** A key may hold a comma: then a semicolon parts the columns, as spreadsheets write it where the comma is decimal. */
    private static char separator(Path file) throws IOException {
        String first = Files.readAllLines(file, StandardCharsets.UTF_8).stream()
                .findFirst()
                .orElse("");
        return first.contains(";") ? ';' : ',';
    }
}
