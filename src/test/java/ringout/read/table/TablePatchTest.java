package ringout.read.table;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import ringout.model.Aircraft;
import ringout.model.Lead;
import ringout.model.shape.Shape;
import ringout.read.AircraftReader;
import ringout.read.source.MemoryFolder;

/** Cells changed in place: what the owner wrote around them stays, byte for byte. */
class TablePatchTest {
    private static final String LIST = """
            # harness of the left wing, checked by K.
            id;from;to;pins;awg;length (cm);note

            W1;A-P;B-P;1>1;22;60;"short; but enough"
            W2;A-Q;C-P;1>2;24;"40";old
            W3;A-R;D-P;";";12;
            """.replace("D-P;\";\";12", "D-P;1>1;\";12");

    private static Lead lead(int index) {
        MemoryFolder folder = MemoryFolder.named("x").with("leads.csv", LIST);
        Aircraft read = AircraftReader.read(folder).aircraft();
        return read.leads().get(index);
    }

    private static Lead with(Lead lead, String field, Object value) {
        return Shape.of(Lead.class).with(lead, field, value);
    }

    private static Optional<String> patched(List<TablePatch.Change> changes, List<Object> added) {
        return TablePatch.of(LIST.getBytes(StandardCharsets.UTF_8), Table.LEADS, changes, added);
    }

    @Test
    void onlyTheCellChanges() {
        Lead now = lead(0);
        Lead then = with(now, "pins", lead(1).pins());
        assertEquals(
                LIST.replace("W1;A-P;B-P;1>1;", "W1;A-P;B-P;1>2;"),
                patched(List.of(change(now, then)), List.of()).orElseThrow());
    }

    @Test
    void aNumberUnderAHeadWithAUnitCarriesItsOwn() {
        Lead now = lead(1);
        Lead then = with(now, "lengthMm", lead(0).lengthMm());
        assertEquals(
                LIST.replace(";\"40\";old", ";600 mm;old"),
                patched(List.of(change(now, then)), List.of()).orElseThrow());
    }

    /** The mark below would change its meaning with the cell above. */
    @Test
    void aDittoMarkBelowIsWrittenOut() {
        Lead now = lead(1);
        Lead then = with(now, "awg", lead(0).awg());
        assertEquals(
                LIST.replace("1>2;24", "1>2;22").replace("1>1;\";12", "1>1;24;12"),
                patched(List.of(change(now, then)), List.of()).orElseThrow());
    }

    @Test
    void aRowGoesAndANewOneComesLast() {
        Lead fresh = with(with(lead(0), "id", "W9"), "pins", lead(1).pins());
        String expected = LIST.replace("W1;A-P;B-P;1>1;22;60;\"short; but enough\"\n", "")
                + "W9;A-P;B-P;1>2;22;600 mm;\"short; but enough\"\n";
        assertEquals(
                expected,
                patched(List.of(new TablePatch.Change(lead(0).at().line(), lead(0), Optional.empty())), List.of(fresh))
                        .orElseThrow());
    }

    @Test
    void aFieldWithoutAColumnHasNoPlace() {
        Lead now = lead(0);
        Lead then = with(now, "fuseA", ringout.model.Datum.of(5.0));
        assertEquals(Optional.empty(), patched(List.of(change(now, then)), List.of()));
    }

    private static TablePatch.Change change(Lead before, Lead after) {
        return new TablePatch.Change(before.at().line(), before, Optional.of(after));
    }
}
