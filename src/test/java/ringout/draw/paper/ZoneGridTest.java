package ringout.draw.paper;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Numbers of fields and frame sizes: ISO 5457:1999, from memory. */
class ZoneGridTest {
    @Test
    void numberOfFieldsIsThatOfTheStandard() {
        assertEquals(
                List.of(6, 8, 12, 16),
                SheetSize.all().stream().map(s -> new ZoneGrid(s).columns()).toList());
        assertEquals(
                List.of(4, 6, 8, 12),
                SheetSize.all().stream().map(s -> new ZoneGrid(s).rows()).toList());
    }

    @Test
    void frameIsThatOfTheStandard() {
        assertEquals(new Area(20, 10, 390, 277), SheetSize.A3.frame());
        assertEquals(new Area(20, 10, 564, 400), SheetSize.A2.frame());
        assertEquals(new Area(20, 10, 811, 574), SheetSize.A1.frame());
    }

    @Test
    void zonesAreCountedFromTheUpperLeft() {
        ZoneGrid a3 = new ZoneGrid(SheetSize.A3);
        assertEquals("A1", a3.zoneOf(new Point(0, 0)));
        assertEquals("A1", a3.zoneOf(new Point(59, 47)));
        assertEquals("B2", a3.zoneOf(new Point(61, 49)));
        assertEquals("D5", a3.zoneOf(new Point(211, 149)));
        assertEquals("F8", a3.zoneOf(new Point(420, 297)));
    }

    @Test
    void lettersSkipIAndO() {
        ZoneGrid a1 = new ZoneGrid(SheetSize.A1);
        assertEquals("H", a1.rowName(7));
        assertEquals("J", a1.rowName(8));
    }

    @Test
    void edgesRunFromFrameToFrame() {
        assertEquals(
                List.of(20.0, 60.0, 110.0, 160.0, 210.0, 260.0, 310.0, 360.0, 410.0),
                new ZoneGrid(SheetSize.A3).columnEdges());
    }
}
