package ringout.present.csv;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ringout.sheet.document.Column;
import ringout.sheet.document.RevisionMark;
import ringout.sheet.document.Table;

/** Tables of a document as CSV. */
class TableCsvTest {
    private static final RevisionMark MARK = new RevisionMark("X", "", "", "", "as flown", "1a2b3c4d");

    @Test
    void groupsAndHashStandInEveryRow() {
        Table table = Table.named("t", Column.text("conductor"), Column.number("length", "mm"))
                .by("zone")
                .group("arm, left")
                .row("W1", "450")
                .group("hub")
                .row("W\"2", "")
                .table();
        assertEquals(
                "zone,conductor,length [mm],data\n\"arm, left\",W1,450,1a2b3c4d\nhub,\"W\"\"2\",,1a2b3c4d\n",
                TableCsv.of(table, MARK));
    }

    @Test
    void whatIsSaidAboutAGroupHasAColumn() {
        Table table = Table.named("t", Column.text("pin"))
                .by("plug")
                .group("FC-C2", "4-pole, sockets")
                .row("1")
                .table();
        assertEquals("plug,about the plug,pin,data\nFC-C2,\"4-pole, sockets\",1,1a2b3c4d\n", TableCsv.of(table, MARK));
    }

    @ParameterizedTest
    @CsvSource(
            quoteCharacter = '`',
            value = {
                "=cmd|' /C calc'!A0, '=cmd|' /C calc'!A0",
                "+12V, '+12V",
                "@SUM(1), '@SUM(1)",
                "-1+2, '-1+2",
                "-5.2, -5.2",
                "+, +",
                "-, -",
                "W1, W1"
            })
    void noCellIsAFormula(String text, String cell) {
        assertEquals(cell, TableCsv.neutral(text));
    }

    @Test
    void noHiddenMarkPassesAndNoBlankHidesAFormula() {
        assertEquals("a\uFFFDb", TableCsv.neutral("a\u202Eb"));
        assertEquals("'=1+1", TableCsv.neutral("\t =1+1"));
        assertEquals("'\uFF1D1+1", TableCsv.neutral("\uFF1D1+1"));
    }
}
