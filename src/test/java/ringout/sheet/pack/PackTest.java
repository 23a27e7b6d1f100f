package ringout.sheet.pack;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import ringout.check.Catalogue;
import ringout.check.Review;
import ringout.graph.Circuit;
import ringout.graph.SmallAircraft;
import ringout.graph.Wiring;
import ringout.model.Aircraft;
import ringout.present.csv.TableCsv;
import ringout.present.html.DocumentPage;
import ringout.present.pdf.Paper;
import ringout.present.pdf.PdfDocuments;
import ringout.present.pdf.PdfFile;
import ringout.present.pdf.PdfInfo;
import ringout.sheet.document.Document;
import ringout.sheet.document.Row;
import ringout.sheet.document.SignOff;
import ringout.sheet.document.Table;

/** The documents of a pack: sums worked out by hand on three leads, counts on the samples. */
class PackTest {
    /**
     * Three leads: 12 AWG 300 mm black and 400 mm red from pack to board, 22 AWG 500 mm of two conductors, red and black, from
     * board to regulator behind a fuse of 5 A.
     */
    private static final String THREE = """
            {"name": "Three", "designation": "X-3", "typeRevision": "B",
             "units": [{"ref": "PK", "type": "PACK"}, {"ref": "B", "type": "BOARD"}, {"ref": "R", "type": "REG5"}],
             "leads": [
              {"id": "W1", "from": "PK-N", "to": "B-BN", "awg": 12, "lengthMm": 300, "colours": "1=BK",
               "fromFamily": "8 mm round", "toFamily": "M5 lug", "sleeve": "braid"},
              {"id": "W2", "from": "PK-P", "to": "B-BP", "awg": 12, "lengthMm": 400, "colours": "1=RD",
               "fromFamily": "8 mm round", "toFamily": "M5 lug", "sleeve": "braid"},
              {"id": "W3", "from": "B-T1", "to": "R-IN", "awg": 22, "lengthMm": 500, "colours": "1=RD 2=BK", "fuseA": 5,
               "fromFamily": "2-pole", "toFamily": "2-pole"}]}
            """;

    private static PackSource source(Aircraft aircraft) {
        List<Circuit> circuits = Circuit.all(Wiring.of(aircraft));
        return PackSource.of(circuits, Review.of(circuits, Catalogue.all(), "2026-01-01"), "2026-01-01");
    }

    private static Table table(Document document, String name) {
        return document.tables().stream()
                .filter(table -> table.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private static List<List<String>> rows(Table table, String... heads) {
        List<List<String>> rows = new ArrayList<>();
        for (Row row : table.rows()) {
            List<String> cells = new ArrayList<>();
            for (String head : heads) {
                cells.add(row.cells().get(table.column(head)));
            }
            rows.add(cells);
        }
        return rows;
    }

    @Test
    void wireIsBoughtByMetreWithATenthMore() {
        Document bill = BillOfMaterial.of(source(SmallAircraft.read(THREE)));
        assertEquals(
                List.of(
                        List.of("12 AWG", "BK", "1", "0.30", "0.33"),
                        List.of("12 AWG", "RD", "1", "0.40", "0.44"),
                        List.of("22 AWG", "BK", "1", "0.50", "0.55"),
                        List.of("22 AWG", "RD", "1", "0.50", "0.55")),
                rows(table(bill, "bill-wire"), "wire", "colour", "pieces", "sum", "to buy"));
    }

    @Test
    void plugsContactsFusesAndSleeveAreCounted() {
        Document bill = BillOfMaterial.of(source(SmallAircraft.read(THREE)));
        assertEquals(
                List.of(
                        // six plugs
                        List.of("2-pole", "2", "2"),
                        List.of("8 mm round", "2", "2"),
                        List.of("M5 lug", "2", "2"),
                        // eight contacts, each kind with a tenth, rounded up
                        List.of("2-pole", "4", "5"),
                        List.of("8 mm round", "2", "3"),
                        List.of("M5 lug", "2", "3"),
                        List.of("fuse 5 A with holder", "1", "2"),
                        // 0.3 + 0.4 m, and a tenth
                        List.of("braid, m", "0.70", "0.77")),
                rows(table(bill, "bill-parts"), "part", "count", "to buy"));
    }

    @Test
    void aTenthIsRoundedUpExactly() {
        assertEquals(
                List.of(2, 11, 13, 22, 24, 110),
                IntStream.of(1, 10, 11, 20, 21, 100)
                        .map(BillOfMaterial::withSpoiled)
                        .boxed()
                        .toList());
    }

    @Test
    void theCutListHasTheLongestFirstAndItsSums() {
        Table cut = CutList.table(source(SmallAircraft.read(THREE)));
        assertEquals(
                List.of(
                        List.of("300", "W1"), List.of("300", "1 piece"),
                        List.of("400", "W2"), List.of("400", "1 piece"),
                        List.of("500", "W3.2"), List.of("500", "1 piece"),
                        List.of("500", "W3.1"), List.of("500", "1 piece")),
                rows(cut, "length", "conductor"));
        Table long1 = CutList.table(source(SmallAircraft.sample("linewarden")));
        long1.groups().forEach(group -> {
            List<Integer> lengths = group.rows().stream()
                    .filter(row -> row.kind() == Row.Kind.LINE)
                    .map(row -> Integer.valueOf(row.cells().get(1)))
                    .toList();
            assertEquals(lengths.stream().sorted((a, b) -> b - a).toList(), lengths);
            Row sum = group.rows().get(group.rows().size() - 1);
            assertEquals(
                    lengths.stream().mapToInt(Integer::intValue).sum(),
                    Integer.parseInt(sum.cells().get(1)));
        });
    }

    /** 12 AWG is 3.309 mm2: 0.3 / 58 / 3.309 = 1.6 milliohm; 22 AWG 0.3255 mm2: 26 milliohm; two contacts of 20 milliohm each. */
    @Test
    void ringOutExpectsCopperAndTwoContacts() {
        Table three = table(RingOut.of(source(SmallAircraft.read(THREE))), "ring-out");
        assertEquals(
                List.of(
                        List.of("1", "W1", "0.04", "0.5"),
                        List.of("2", "W2", "0.04", "0.5"),
                        List.of("3", "W3.1", "0.07", "0.5"),
                        List.of("4", "W3.2", "0.07", "0.5")),
                rows(three, "no", "conductor", "expect", "accept"));
        // 26 AWG, 620 mm, 2 x 20 milliohm = 0.12 ohm: a worked figure of the trade, no source
        Table sample = table(RingOut.of(source(SmallAircraft.sample("linewarden"))), "ring-out");
        assertEquals(145, sample.rows().size());
        assertTrue(rows(sample, "conductor", "expect", "accept").contains(List.of("W65.1", "0.12", "0.5")));
        assertEquals(0.5, RingOut.accept(0.25));
        assertEquals(0.7, RingOut.accept(0.31));
    }

    @Test
    void shortsAreLookedForNetByNetAndBetweenNeighbours() {
        Document sheet = ShortSheet.of(source(SmallAircraft.read(THREE)));
        assertEquals(4, table(sheet, "net-against-all").rows().size());
        assertEquals(
                List.of(List.of("B-T1", "1-2"), List.of("R-IN", "1-2")),
                rows(table(sheet, "neighbours"), "plug", "between pins"));
    }

    @Test
    void aHealthyBusReadsSixtyOhm() {
        Table bus = table(AsFitted.of(source(SmallAircraft.sample("linewarden"))), "as-fitted-bus");
        assertTrue(bus.rows().size() >= 9, "five members of one bus, two of the other");
        for (String ohm : bus.cells("expect")) {
            assertEquals(60, Double.parseDouble(ohm), 1.5);
        }
    }

    @Test
    void everyDocumentIsThereWithOneMark() {
        List<Document> pack = Pack.of(source(SmallAircraft.sample("linewarden")), Plates.NONE, Optional.empty());
        Set<String> kinds = new HashSet<>();
        Set<String> tables = new HashSet<>();
        for (int i = 0; i < pack.size(); i++) {
            Document document = pack.get(i);
            assertEquals(pack.get(0).mark(), document.mark());
            assertTrue(document.mark().hash().matches("[0-9a-f]{8}"));
            assertEquals(i + 1, document.sheet());
            assertEquals(pack.size(), document.of());
            assertFalse(document.foot().isEmpty());
            assertTrue(kinds.add(document.kind()), document.kind());
            document.tables().forEach(table -> assertTrue(tables.add(table.name()), table.name()));
        }
        assertTrue(
                kinds.containsAll(List.of(
                        "cover",
                        "findings",
                        "limitations",
                        "wire-list",
                        "pin-tables",
                        "bill-of-material",
                        "cut-list",
                        "ring-out",
                        "short-sheet",
                        "as-fitted",
                        "motors",
                        "configuration",
                        "weight-and-load",
                        "magnetic-and-antenna",
                        "loss-table",
                        "not-checked")),
                kinds.toString());
        assertTrue(signOffs(pack).stream().allMatch(SignOff::offered));
    }

    @Test
    void noPageIsSignedWhileSomethingGraveIsOpen() {
        PackSource source = source(SmallAircraft.sample("linewarden-review"));
        assertFalse(source.grave().isEmpty());
        List<SignOff> signOffs = signOffs(Pack.of(source, Plates.NONE, Optional.empty()));
        assertTrue(signOffs.size() > 5);
        signOffs.forEach(signOff -> {
            assertFalse(signOff.offered());
            assertEquals(source.grave(), signOff.open());
        });
    }

    /** Idle currents of the staged power-up, worked out by hand from the tables of loads: 0.53, 0.63 and 1.93 A. */
    @Test
    void thePowerUpSheetReadsTheOperatingPointOfEachStage() {
        Document sheet = Pack.of(source(SmallAircraft.sample("linewarden")), Plates.NONE, Optional.empty()).stream()
                .filter(document -> document.kind().equals("power-up"))
                .findFirst()
                .orElseThrow();
        List<String> amps = List.of("0.53", "0.63", "1.93");
        for (int i = 0; i < amps.size(); i++) {
            Table stage = table(sheet, "power-u" + (i + 1));
            assertTrue(
                    rows(stage, "where", "expect", "unit").contains(List.of("current of the supply", amps.get(i), "A")),
                    stage.rows().toString());
        }
        assertEquals(
                "BAT2-POS",
                table(sheet, "plug-order").rows().get(3).cells().get(1).split("[ ,]+")[1]);
    }

    @Test
    void differencesFromAnEarlierRevisionAreTold() {
        Circuit earlier =
                Circuit.all(Wiring.of(SmallAircraft.sample("linewarden"))).get(0);
        PackSource now = source(SmallAircraft.sample("linewarden-review"));
        Table table = DifferenceSheet.table(now, earlier);
        assertTrue(
                rows(table, "kind", "what", "earlier", "now")
                        .contains(List.of("terminator", "LOG CAN2 terminator", "off", "on")),
                table.rows().toString());
        assertEquals("W81", table.cells("what").get(0));
        assertEquals(Row.Kind.GRAVE, table.rows().get(0).kind());
        assertTrue(Pack.of(now, Plates.NONE, Optional.of(earlier)).stream()
                .anyMatch(document -> document.kind().equals("differences")));
    }

    /** Texts that bite in one form or another must come through all of them as texts. */
    @Test
    void hostileTextsStayTexts() {
        String evil = "=cmd|' /C calc'!A0 <script>alert(1)</script> \u202E";
        String json = THREE.replace("\"braid\"", quoted(evil))
                .replace("\"M5 lug\"", quoted("N".repeat(10_000)))
                .replace("\"X-3\"", quoted(evil));
        PackSource source = source(SmallAircraft.read(json));
        List<Document> pack = Pack.of(source, Plates.NONE, Optional.empty());
        String page = DocumentPage.of("t", "c", "A4", pack);
        assertFalse(page.contains("<script"));
        assertFalse(page.contains("\u202E"));
        for (Document document : pack) {
            for (Table table : document.tables()) {
                TableCsv.of(table, document.mark())
                        .lines()
                        .forEach(line -> assertFalse(line.matches("(.*[,\"])?[=@].*"), line));
            }
        }
        PdfFile pdf = PdfDocuments.of(new PdfInfo("t", "s", "c"), pack, Paper.A4);
        assertEquals(List.of(), pdf.flaws());
    }

    @Test
    void anAircraftOfWhichNothingIsListedYetHasItsPack() {
        for (String json : List.of("{\"name\": \"bare\"}", """
                {"name": "joints", "joints": [{"id": "J1"}, {"id": "J2"}],
                 "leads": [{"id": "W1", "from": "J1", "to": "J2"}]}
                """)) {
            List<Document> pack = Pack.of(source(SmallAircraft.read(json)), Plates.NONE, Optional.empty());
            assertTrue(pack.size() > 15);
            assertEquals(
                    List.of(),
                    PdfDocuments.of(new PdfInfo("t", "s", "c"), pack, Paper.A4).flaws());
        }
    }

    private static String quoted(String text) {
        return '"' + text.replace("\u202E", "\\u202E") + '"';
    }

    private static List<SignOff> signOffs(List<Document> pack) {
        return pack.stream()
                .flatMap(document -> document.sections().stream())
                .flatMap(section -> section.blocks().stream())
                .filter(SignOff.class::isInstance)
                .map(SignOff.class::cast)
                .toList();
    }
}
