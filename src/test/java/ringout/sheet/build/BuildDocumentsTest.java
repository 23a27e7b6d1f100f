package ringout.sheet.build;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import ringout.graph.Circuit;
import ringout.graph.Wiring;
import ringout.plan.StagedPlans;
import ringout.read.AircraftReader;
import ringout.sheet.document.Block;
import ringout.sheet.document.Caution;
import ringout.sheet.document.Document;
import ringout.sheet.document.RevisionMark;
import ringout.sheet.document.Row;
import ringout.sheet.document.SignOff;
import ringout.sheet.document.Table;
import ringout.solve.power.LoadCase;
import ringout.solve.power.OperatingPoint;
import ringout.solve.power.PackCharge;
import ringout.solve.power.PowerFlow;

/** The sheets of the builds of the samples say what a person on the bench needs. */
class BuildDocumentsTest {
    private static final Circuit LINEWARDEN = Circuit.all(Wiring.of(
                    AircraftReader.read(Path.of("samples", "linewarden")).aircraft()))
            .get(0);

    private static List<Document> documents(List<String> grave) {
        RevisionMark mark = RevisionMark.of(LINEWARDEN.wiring().aircraft(), "as flown");
        return BuildDocuments.of(new BuildSource(StagedPlans.of(LINEWARDEN), mark, grave));
    }

    private static Document document(List<Document> all, String kind) {
        return all.stream()
                .filter(one -> one.kind().equals(kind))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no " + kind));
    }

    private static Table table(Document document, String name) {
        return document.tables().stream()
                .filter(one -> one.name().equals(name))
                .findFirst()
                .orElseThrow(() -> new AssertionError(document.kind() + " has no " + name));
    }

    private static List<Block> blocks(Document document) {
        return document.sections().stream()
                .flatMap(section -> section.blocks().stream())
                .toList();
    }

    @Test
    void aSheetAStageAndALidAndOneForThePower() {
        List<Document> all = documents(List.of());
        assertEquals(
                List.of(
                        "build-plan",
                        "stage-1",
                        "stage-2",
                        "last-chance-lower-lid",
                        "stage-3",
                        "stage-4",
                        "last-chance-top-plate",
                        "stage-5",
                        "stage-6",
                        "stage-7",
                        "stage-8",
                        "power-up"),
                all.stream().map(Document::kind).toList());
        assertEquals(all.size(), all.get(all.size() - 1).sheet());
        List<String> names = all.stream()
                .flatMap(one -> one.tables().stream())
                .map(Table::name)
                .toList();
        assertEquals(names.size(), new HashSet<>(names).size(), names.toString());
        for (Document one : all) {
            assertFalse(one.mark().hash().isEmpty());
            assertTrue(one.foot().startsWith("Propellers off"));
            assertTrue(blocks(one).stream().anyMatch(Caution.class::isInstance), one.kind() + " has no caution");
        }
    }

    @Test
    void theLowerLidsSheetHasSixClampsAndNothingElse() {
        Table table = table(document(documents(List.of()), "last-chance-lower-lid"), "last-chance-lower-lid");
        assertEquals(List.of("PDB-K1P", "PDB-K2P", "PDB-K3P", "PDB-K1N", "PDB-K2N", "PDB-K3N"), table.cells("joint"));
        assertEquals("W11 W14", table.cells("leads").get(0));
        assertEquals(List.of("35", "35", "35", "35", "35", "35"), table.cells("late"));
    }

    @Test
    void eachLineOfAStageHasABoxAndTurningOverIsALine() {
        Table table = table(document(documents(List.of()), "stage-2"), "stage-2");
        List<String> lines = table.cells("do");
        int turn = lines.indexOf("turn the aircraft belly up, two people, no pack plugged");
        assertTrue(turn >= 0 && turn < lines.indexOf("make W11 at PDB-K1P"), lines.toString());
        assertEquals("close lower lid", lines.get(lines.size() - 1));
        assertEquals("2.2", table.cells("step").get(lines.indexOf("make W11 at PDB-K1P")));
        assertTrue(table.column("done") > 0);
        List<String> plate =
                table(document(documents(List.of()), "stage-4"), "stage-4").cells("do");
        assertTrue(
                plate.indexOf("photo PDB, every plug") > plate.indexOf("check PDB-T4: latched, tug W77, ring it out"),
                "a photo shows what was proved");
        int back = plate.indexOf("turn the aircraft on its legs, two people, no pack plugged");
        assertTrue(back >= 0 && plate.indexOf("thread W65 through the hole \"top plate\"") > back, plate.toString());
    }

    /** What the sheet prints is the operating point of that stage, rounded. */
    @Test
    void thePowerUpSheetIsTheOperatingPoint() {
        Document sheet = document(documents(List.of()), "power-up");
        PowerFlow flow = (PowerFlow) OperatingPoint.of(LINEWARDEN, LoadCase.IDLE.with(PackCharge.supply(4.0)));
        String amps = String.format(Locale.ROOT, "%.2f", flow.packs().get(0).amps());
        Table third = table(sheet, "power-u3");
        int row = third.cells("where").indexOf("current of the supply");
        assertEquals(amps, third.cells("expect").get(row));
        assertEquals("1.93", amps);
        assertEquals(List.of("0.53"), List.of(last(table(sheet, "power-u1"))));
        assertEquals(List.of("0.63"), List.of(last(table(sheet, "power-u2"))));
        assertTrue(table(sheet, "power-u5").rows().stream()
                .anyMatch(one ->
                        one.kind() == Row.Kind.GRAVE && one.cells().get(0).contains("cannot tell, needs")));
    }

    private static String last(Table table) {
        List<String> cells = table.cells("expect");
        return cells.get(cells.size() - 1);
    }

    @Test
    void nothingIsSignedWhileSomethingGraveIsOpen() {
        List<SignOff> offered = signOffs(documents(List.of()));
        assertTrue(offered.size() >= 8 && offered.stream().allMatch(SignOff::offered));
        assertTrue(
                signOffs(documents(List.of("S1 P01 a pole to a pole"))).stream().noneMatch(SignOff::offered));
    }

    private static List<SignOff> signOffs(List<Document> all) {
        return all.stream()
                .flatMap(one -> blocks(one).stream())
                .filter(SignOff.class::isInstance)
                .map(SignOff.class::cast)
                .toList();
    }
}
