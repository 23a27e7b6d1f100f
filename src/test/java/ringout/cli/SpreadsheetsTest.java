package ringout.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import ringout.model.Aircraft;
import ringout.model.Lead;
import ringout.model.Origin;
import ringout.model.Pin;
import ringout.model.PinRole;
import ringout.model.UnitType;
import ringout.model.seal.Seal;
import ringout.read.AircraftReader;
import ringout.read.AnswersReader;
import ringout.read.ReadResult;
import ringout.read.cells.RowCells;
import ringout.read.cells.SheetCells;
import ringout.read.cells.Workbooks;
import ringout.read.intake.Question;
import ringout.read.source.DiskFolder;
import ringout.read.table.Sheets;
import ringout.text.Problem;
import ringout.text.Problems;

/**
 * Five lists kept by hand in different habits: decimal comma with ; and with tabs, ditto marks, merged heads, mm, cm and inch,
 * pin names for numbers, wires and leads mixed, titles, sub-headings, totals, ranges, formulas, hidden rows; German, French and
 * English heads. Each gives the aircraft or all that must be asked, and goes out again cell for cell.
 */
class SpreadsheetsTest {
    private static final Path FOLDER = Path.of("src", "test", "resources", "spreadsheets");
    private static final Conversion.Options PLAIN = new Conversion.Options(false, false);

    @TempDir
    private Path out;

    private static Lead lead(Aircraft aircraft, String id, int nth) {
        return aircraft.leads().stream()
                .filter(lead -> lead.id().equals(id))
                .skip(nth)
                .findFirst()
                .orElseThrow();
    }

    private static Aircraft aircraft(String file) {
        ReadResult read = AircraftReader.read(FOLDER.resolve(file));
        assertEquals(List.of(), read.problems());
        return read.aircraft();
    }

    @Test
    void germanListWithMergedHeadsAndDecimalComma() {
        Aircraft aircraft = aircraft("leitungsliste.csv");
        assertEquals(
                List.of("K1", "K1", "K2", "K3", "K10", "K10", "K10", "K11", "K12"),
                aircraft.leads().stream().map(Lead::id).toList());
        assertEquals("BAT-B-2", lead(aircraft, "K1", 1).from().text());
        assertEquals(155.0, lead(aircraft, "K1", 1).lengthMm().or(0.0));
        assertEquals(3.3, lead(aircraft, "K1", 1).areaMm2().or(0.0));
        assertEquals("PDB-M2", lead(aircraft, "K3", 0).from().text());
        assertEquals(1250.0, lead(aircraft, "K12", 0).lengthMm().or(0.0));
        assertEquals(
                "power", lead(aircraft, "K1", 0).kind().known().orElseThrow().word());
        assertEquals(Origin.ASSUMED, lead(aircraft, "K1", 0).kind().source());
        assertEquals(PinRole.CAN_H, role(aircraft, "FC", "CAN1", "H"));
    }

    @Test
    void englishListWithDittosRangesAndInches() {
        Aircraft aircraft = aircraft("workshop.csv");
        assertEquals(1 + 6 + 6 + 6 + 5, aircraft.leads().size());
        assertEquals(152.4, lead(aircraft, "P1", 0).lengthMm().or(0.0));
        assertEquals(292.1, lead(aircraft, "P4", 0).lengthMm().or(0.0));
        assertEquals("ESC5-P", lead(aircraft, "P6", 0).to().text());
        assertEquals(80.0, lead(aircraft, "ph6", 0).lengthMm().or(0.0));
        assertEquals("can", lead(aircraft, "C2", 0).kind().known().orElseThrow().word());
        assertEquals("marked ?", lead(aircraft, "R1", 0).lengthMm().absence());
        assertEquals("ESC", unitType(aircraft, "ESC6"));
    }

    @Test
    void frenchListWithTabsAndPinNames() {
        Aircraft aircraft = aircraft("cablage.tsv");
        assertEquals(0.14, lead(aircraft, "F1", 2).areaMm2().or(0.0));
        assertEquals(420.0, lead(aircraft, "F1", 3).lengthMm().or(0.0));
        assertEquals("CANH", lead(aircraft, "F1", 0).signal().or(""));
        assertEquals(1500.0, lead(aircraft, "F3", 0).lengthMm().or(0.0));
        assertEquals(PinRole.ZERO_V, role(aircraft, "GPS", "C1", "4"));
        assertEquals(PinRole.SERIAL_OUT, role(aircraft, "CN", "TELEM1", "TX"));
    }

    @Test
    void workbookOfSeveralTables() {
        ReadResult read = AircraftReader.read(FOLDER.resolve("nose.xlsx"));
        assertEquals(List.of(), read.problems());
        Aircraft aircraft = read.aircraft();
        assertEquals("FC-C2-4", lead(aircraft, "N1", 3).from().text());
        assertEquals(620.0, lead(aircraft, "N1", 3).lengthMm().or(0.0));
        assertEquals(450.0, lead(aircraft, "N3", 0).lengthMm().or(0.0));
        assertEquals("1203", aircraft.units().get(2).serial().or(""));
        assertEquals("G19", aircraft.units().get(3).serial().or(""));
        assertEquals("2026-03-01", aircraft.record().readings().get(0).date().or(""));
        List<String> taken = read.assumptions().stream()
                .map(a -> a.at().words() + ": " + a.what())
                .toList();
        assertTrue(taken.contains("nose.xlsx, sheet Wiring, row 9: this row is hidden, and read like the others"));
        assertTrue(taken.contains("nose.xlsx, sheet Meter: this worksheet is hidden, and read like the others"));
        assertTrue(taken.contains("nose.xlsx, sheet Photos to take: this worksheet is not read"));
        assertTrue(taken.contains(
                "nose.xlsx, sheet Wiring, cell G13, `To Pin`: 'Total' taken for a total, not for a row"));
        assertTrue(taken.contains(
                "nose.xlsx, sheet Wiring, cell B9, `From Unit`: N2 taken as straight: pin 1 to pin 1," + " 2 to 2"));
    }

    @Test
    void allThatIsUnclearIsAskedAtOnceCellByCell() {
        ReadResult read = AircraftReader.read(FOLDER.resolve("bench.xlsx"));
        List<String> blocking = read.questions().stream()
                .filter(Question::blocking)
                .map(q -> q.at().sheet() + " " + q.at().address() + " " + q.ask())
                .toList();
        assertEquals(
                List.of(
                        "Ger\u00e4te C2 the formula here has no value: (formula without a value)",
                        "Ger\u00e4te C3 the spreadsheet cut the last digits of this: 1234567890123456770",
                        "Ger\u00e4te C4 the spreadsheet cut the last digits of this: 1,23E+11",
                        "Kabel H1 no column `Pr\u00fcfer` in a table of leads",
                        "Kabel G2 the spreadsheet made a day of this: 2026-02-01",
                        "Kabel F3 '1,250' can be read in two ways",
                        "Kabel F4 the formula here has no value: (formula without a value)",
                        "Kabel D5 'powr' is not one of power, power 5 V, return, can, pulse, phase, sense, light, data,"
                                + " serial, i2c, video, trigger, coax, other",
                        "Kabel B6 lead L5 has no `from`"),
                blocking);
        assertTrue(read.questions().stream()
                .anyMatch(q ->
                        q.about().equals("FC-CAN1") && q.ask().startsWith("CAN plug CAN1 of FC: which pins are H")));
    }

    @Test
    void theQuestionsFilledInMakeTheAircraft() throws IOException {
        String asked = run("ask", FOLDER.resolve("bench.xlsx").toString(), "--format", "csv");
        String filled = asked.lines()
                .map(line -> line.replaceFirst(",$", "," + answer(line)))
                .collect(Collectors.joining("\n", "", "\n"));
        Path answers = Files.writeString(out.resolve("answers.csv"), filled);
        AnswersReader.Result given = AnswersReader.read(new DiskFolder(out), "answers.csv");
        assertEquals(List.of(), given.problems());
        ReadResult read = AircraftReader.read(FOLDER.resolve("bench.xlsx"), given.answers());
        assertEquals(List.of(), read.problems());
        Aircraft aircraft = read.aircraft();
        assertEquals(
                "1>1 2>2 3>3 4>4",
                lead(aircraft, "L1", 0).pins().known().orElseThrow().toString());
        assertEquals(1250.0, lead(aircraft, "L2", 0).lengthMm().or(0.0));
        assertEquals("LOG-PWR", lead(aircraft, "L3", 0).to().text());
        assertEquals("123000000017", aircraft.units().get(2).serial().or(""));
        assertEquals(PinRole.CAN_H, role(aircraft, "FC", "CAN1", "2"));
        assertEquals(PinRole.SUPPLY_IN, role(aircraft, "GNX", "C1", "1"));
        assertFalse(read.questions().stream().anyMatch(q -> q.about().equals("FC-CAN1")));
        assertInstanceOf(
                Conversion.Outcome.Written.class,
                Conversion.convert(FOLDER.resolve("bench.xlsx"), out.resolve("b.xlsx"), PLAIN, given.answers()));
        ReadResult again = AircraftReader.read(out.resolve("b.xlsx"));
        assertEquals(Seal.ofAll(named(aircraft)), Seal.ofAll(named(again.aircraft())));
        assertTrue(Files.exists(answers));
    }

    private static String answer(String line) {
        List<List<String>> answers = List.of(
                List.of(",C2,,the formula", "F-1"),
                List.of(",C3,,the spreadsheet", "1234567890123456789"),
                List.of(",C4,,", "123000000017"),
                List.of(",H1,,", "leave out"),
                List.of(",G2,,", "1>1 2>2 3>3 4>4"),
                List.of(",F3,,", "1250"),
                List.of(",F4,,", "?"),
                List.of(",D5,,", "power"),
                List.of(",B6,,", "PDB-T3"),
                List.of(",C4,,'LOG'", "LOG-PWR"),
                List.of(",FC-CAN1,", "in=1 H=2 L=3 0V=4"),
                List.of(",GN1-C1,", "in=1 H=2 L=3 0V=4"));
        return answers.stream()
                .filter(pair -> line.contains(pair.get(0)))
                .reduce((a, b) -> b)
                .map(pair -> '"' + pair.get(1) + '"')
                .orElse("");
    }

    @ParameterizedTest
    @ValueSource(strings = {"leitungsliste.csv", "workshop.csv", "cablage.tsv", "nose.xlsx"})
    void theSameCellsComeBack(String file) throws IOException {
        Path from = FOLDER.resolve(file);
        List<SheetCells> cells = sheets(from);
        Path book = out.resolve("out.xlsx");
        Path folder = out.resolve("folder");
        Path again = out.resolve("again.xlsx");
        written(from, book);
        written(from, folder);
        written(folder, again);
        same(cells, sheets(book));
        same(cells.subList(0, 1), sheets(again));
        same(cells.subList(0, 1), List.of(sheets(folder.resolve("leads.csv")).get(0)));
        Seal seal = Seal.ofAll(named(aircraft(file)));
        for (Path copy : List.of(book, folder, again)) {
            assertEquals(seal, Seal.ofAll(named(AircraftReader.read(copy).aircraft())), copy.toString());
        }
        if (!file.endsWith("xlsx")) {
            written(from, out.resolve("one.csv"));
            same(cells, sheets(out.resolve("one.csv")));
        }
    }

    @Test
    void theSamplesGoOutAndComeBackAsWorkbooks() throws IOException {
        Path sample = Path.of("samples", "starter");
        written(sample, out.resolve("starter.xlsx"));
        written(sample, out.resolve("again.xlsx"));
        assertArrayEquals(
                Files.readAllBytes(out.resolve("starter.xlsx")), Files.readAllBytes(out.resolve("again.xlsx")));
        ReadResult read = AircraftReader.read(out.resolve("starter.xlsx"));
        assertEquals(List.of(), read.problems());
        assertEquals(Seal.ofAll(AircraftReader.read(sample).aircraft()), Seal.ofAll(read.aircraft()), "starter");
        same(
                List.of(sheets(sample.resolve("leads.csv")).get(0)),
                sheets(out.resolve("starter.xlsx")).stream()
                        .filter(sheet -> sheet.name().equals("leads"))
                        .toList());
    }

    @Test
    void checkSaysWhatStopsAListAndHowToAnswer() {
        StringWriter err = new StringWriter();
        int status = Main.run(
                new PrintWriter(new StringWriter()),
                new PrintWriter(err, true),
                "check",
                FOLDER.resolve("bench.xlsx").toString());
        assertEquals(ExitStatus.WRONG_INPUT, status);
        assertTrue(err.toString().contains("bench.xlsx, sheet Kabel, cell G2, `Belegung`: the spreadsheet made a day"));
        assertTrue(err.toString().contains("--answers questions.csv"));
    }

    @Test
    void aDamagedWorkbookIsToldAndNeverThrown() throws IOException {
        byte[] whole = Files.readAllBytes(FOLDER.resolve("nose.xlsx"));
        for (int cut = 1; cut < whole.length; cut += 97) {
            Path broken = Files.write(out.resolve("broken.xlsx"), Arrays.copyOf(whole, cut));
            List<Problem> problems = AircraftReader.read(broken).problems();
            assertFalse(problems.isEmpty(), "cut at " + cut);
            assertTrue(problems.get(0).words().startsWith("broken.xlsx: this workbook cannot be opened"));
        }
    }

    @Test
    void tablesThatCannotKeepTheirHeadsAreNamed() throws IOException {
        Path folder = Files.createDirectory(out.resolve("folder"));
        try (var files = Files.list(Path.of("samples", "starter"))) {
            for (Path file : files.toList()) {
                Files.copy(file, folder.resolve(file.getFileName()));
            }
        }
        StringWriter err = new StringWriter();
        int status = Main.run(
                new PrintWriter(new StringWriter()),
                new PrintWriter(err, true),
                "convert",
                folder.toString(),
                out.resolve("starter.xlsx").toString());
        assertEquals(ExitStatus.CLEAN, status);
        assertTrue(err.toString().contains("pins went out in plain heads"), err.toString());
        assertFalse(err.toString().contains("leads went out"), err.toString());
    }

    private static String run(String... args) {
        StringWriter text = new StringWriter();
        PrintWriter printer = new PrintWriter(text);
        int unused = Main.run(printer, printer, args);
        printer.flush();
        return text.toString();
    }

    private static void written(Path from, Path to) {
        Conversion.Outcome outcome = Conversion.convert(from, to, PLAIN);
        assertInstanceOf(Conversion.Outcome.Written.class, outcome, outcome.toString());
    }

    private static List<SheetCells> sheets(Path file) throws IOException {
        String name = file.getFileName().toString();
        Problems problems = new Problems();
        List<SheetCells> sheets = Workbooks.isWorkbook(name)
                ? Workbooks.read(name, Files.readAllBytes(file), problems)
                : List.of(Sheets.ofText(name, Files.readAllBytes(file), problems));
        assertEquals(List.of(), problems.sorted());
        return sheets;
    }

    /** The first worksheets of a file hold the same cells in the same rows, hidden ones hidden. */
    private static void same(List<SheetCells> expected, List<SheetCells> found) {
        for (int i = 0; i < expected.size(); i++) {
            assertEquals(
                    cells(expected.get(i)), cells(found.get(i)), expected.get(i).name());
        }
    }

    private static List<String> cells(SheetCells sheet) {
        List<String> cells = new ArrayList<>();
        for (RowCells row : sheet.rows()) {
            for (int i = 0; i < row.cells().size(); i++) {
                String text = row.cells().get(i).text().strip();
                if (!text.isEmpty()) {
                    cells.add(row.number() + "," + (i + 1) + " " + text);
                }
            }
        }
        return cells;
    }

    private static Aircraft named(Aircraft aircraft) {
        return ringout.model.shape.Shape.of(Aircraft.class).with(aircraft, "name", "x");
    }

    private static String unitType(Aircraft aircraft, String ref) {
        return aircraft.units().stream()
                .filter(unit -> unit.ref().equals(ref))
                .findFirst()
                .orElseThrow()
                .type();
    }

    private static PinRole role(Aircraft aircraft, String type, String plug, String pin) {
        Optional<UnitType> found = aircraft.types().stream()
                .filter(t -> t.name().equals(type) || t.name().equals(type + "X"))
                .findFirst();
        Pin contact = found.orElseThrow().plugs().stream()
                .filter(p -> p.name().equals(plug))
                .findFirst()
                .orElseThrow()
                .pins()
                .stream()
                .filter(p -> p.number().equals(pin))
                .findFirst()
                .orElseThrow();
        return contact.role().known().orElse(PinRole.NONE);
    }
}
