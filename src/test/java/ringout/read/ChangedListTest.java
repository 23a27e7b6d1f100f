package ringout.read;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import ringout.model.Aircraft;
import ringout.read.source.MemoryFolder;
import ringout.text.Problem;

/** Lists told by what differs from another one. */
class ChangedListTest {
    private static final MemoryFolder LISTS = MemoryFolder.named("fleet")
            .with("base/units.csv", "ref,type,what\nA,BOX,first\nB,BOX,second\n")
            .with("base/aircraft.json", "{\"name\": \"Kite\", \"library\": [\"../types\"]}")
            .with("types/boxes.json", "{\"types\": [{\"name\": \"BOX\"}]}")
            .with("tail/changes.edit", "# tail 7\nfrom ../base\nset tail 7\n\nset units[B].firmware 2.3\n")
            .with("later/changes.edit", "from ../tail\nset units[A].firmware 2.4\n")
            .with("ring/changes.edit", "from ../ring\n")
            .with("headless.edit", "set tail 7\n")
            .with("wrong.edit", "from base\nset units[C].firmware 1\nset units[A].firmwear 1\n");

    private static ReadResult read(String file) {
        return AircraftReader.read(LISTS, file);
    }

    @Test
    void allTheOtherListSaysHoldsUnlessItIsChanged() {
        Aircraft tail = read("tail/changes.edit").aircraft();
        assertEquals("Kite", tail.name());
        assertEquals("7", tail.tail().or(""));
        assertEquals("2.3", tail.units().get(1).firmware().or(""));
        assertEquals("first", tail.units().get(0).what().or(""));
        assertEquals("BOX", tail.types().get(0).name());
        assertEquals("types", tail.library().get(0));
    }

    @Test
    void aChangedRowStandsAtItsChange() {
        Aircraft tail = read("tail/changes.edit").aircraft();
        assertEquals("tail/changes.edit", tail.units().get(1).at().file());
        assertEquals(5, tail.units().get(1).at().line());
        assertTrue(tail.units().get(0).at().file().endsWith("units.csv"));
    }

    @Test
    void changesOfChanges() {
        Aircraft later = read("later/changes.edit").aircraft();
        assertEquals("2.3", later.units().get(1).firmware().or(""));
        assertEquals("2.4", later.units().get(0).firmware().or(""));
    }

    @Test
    void whatIsWrongIsTold() {
        assertTrue(read("headless.edit").problems().get(0).words().contains("does not name the list it changes"));
        assertTrue(read("ring/changes.edit").problems().get(0).words().contains("ring"));
        assertEquals(
                List.of(
                        "wrong.edit line 3, column 1: no field `firmwear` here (did you mean firmware?)",
                        "wrong.edit line 2, column 1: units[C].firmware: there is no 'C' (did you mean A?)"),
                read("wrong.edit").problems().stream().map(Problem::words).toList());
    }
}
