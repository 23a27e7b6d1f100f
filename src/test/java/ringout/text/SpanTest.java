package ringout.text;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

/** A place is told as the program shows it that the file is opened with. */
class SpanTest {
    @Test
    void columnsOfASpreadsheetHaveLetters() {
        assertEquals("A", Span.letters(1));
        assertEquals("Z", Span.letters(26));
        assertEquals("AA", Span.letters(27));
        assertEquals("AZ", Span.letters(52));
        assertEquals("BA", Span.letters(53));
        assertEquals("XFD", Span.letters(16_384));
    }

    @Test
    void aCellOfAWorkbook() {
        Span row = Span.row(Span.sheet("list.xlsx", "Leads"), 14);
        assertEquals("list.xlsx, sheet Leads, row 14", row.words());
        assertEquals("list.xlsx, sheet Leads, cell D14, `to`", row.cell(4, "to").words());
        assertEquals("list.xlsx", row.workbook());
        assertEquals("Leads", row.sheet());
        assertEquals("D14", row.cell(4, "to").address());
    }

    @Test
    void aCellOfATextFile() {
        assertEquals(
                "leads.csv row 34, `to`",
                Span.row("leads.csv", 34).cell(3, "to").words());
        assertEquals("C34", Span.row("leads.csv", 34).cell(3, "to").address());
        assertEquals("", Span.row("leads.csv", 34).sheet());
    }
}
