package ringout.present.pdf;

import org.xml.sax.SAXException;
import ringout.draw.letter.Lettering;
import ringout.draw.letter.Weight;
import ringout.sheet.document.Column;
import ringout.sheet.document.Group;
import ringout.sheet.document.Row;
import ringout.sheet.document.Table;

/** Writes one table: its head again on every page, its rows whole. */
final class TableFo {
    private static final String THIN = "0.25mm solid #707070";
    private static final String THICK = "0.35mm solid black";
    private static final String BAR = "1mm solid black";
    private static final String SIDE = "0.6mm 1mm";
    private static final String HAND = "6.8mm";
    private static final int SHORT_GROUP = 9;
    private static final int SHORT_TABLE = 30;
    private static final String BOX = "\u2610";
    private static final double BOX_MM = 4.6;
    private final FoWriter fo;
    private final Table table;
    private final double[] widths;
    private final boolean byHand;

    TableFo(FoWriter fo, Table table, double width) {
        this.fo = fo;
        this.table = table;
        widths = ColumnWidths.of(table, width);
        byHand = table.columns().stream().anyMatch(column -> column.form() == Column.Form.WRITE_IN);
    }

    void write() throws SAXException {
        fo.open(
                "table",
                "table-layout",
                "fixed",
                "width",
                "100%",
                "space-after",
                "3mm",
                "border-bottom",
                THICK,
                "keep-together.within-page",
                lines() <= SHORT_TABLE ? "3" : "auto");
        for (double width : widths) {
            fo.empty("table-column", "column-width", FoWriter.mm(width));
        }
        head();
        fo.open("table-body");
        for (Group group : table.groups()) {
            if (!group.title().isEmpty()) {
                title(group);
            }
            int last = group.rows().size() - 1;
            for (int i = 0; i <= last; i++) {
                row(group.rows().get(i), table.divided() && last < SHORT_GROUP && i < last);
            }
        }
        fo.close().close();
    }

    /** How many lines it has, about: what fills less than a page is not divided. */
    private double lines() {
        double lines = table.groups().size();
        for (Row row : table.rows()) {
            double most = byHand ? 2 : 1;
            for (int i = 0; i < widths.length; i++) {
                double text = Lettering.width(row.cells().get(i), Lettering.SMALL, Weight.REGULAR);
                most = Math.max(most, Math.ceil(text / (widths[i] - ColumnWidths.PADDING)));
            }
            lines += most;
        }
        return lines;
    }

    private void head() throws SAXException {
        fo.open("table-header").open("table-row");
        for (int i = 0; i < widths.length; i++) {
            Column column = table.columns().get(i);
            fo.open(
                    "table-cell",
                    "padding",
                    SIDE,
                    "border-top",
                    THICK,
                    "border-bottom",
                    THICK,
                    "display-align",
                    "after",
                    "text-align",
                    align(column));
            fo.element("block", broken(column.head(), Weight.BOLD, i), "font-weight", "bold");
            if (!column.unit().isEmpty()) {
                fo.element("block", broken(column.unit(), Weight.REGULAR, i));
            }
            fo.close();
        }
        fo.close().close();
    }

    private void title(Group group) throws SAXException {
        fo.open("table-row", "keep-with-next.within-page", "always", "keep-together.within-page", "9");
        fo.open(
                "table-cell",
                "number-columns-spanned",
                Integer.toString(widths.length),
                "padding",
                SIDE,
                "background-color",
                "#e8e8e8",
                "border-bottom",
                THIN,
                "font-weight",
                "bold");
        double all = 0;
        for (double width : widths) {
            all += width;
        }
        fo.element(
                "block",
                LongWords.broken(
                        table.groupHead() + ": " + group.words(),
                        Lettering.SMALL,
                        Weight.BOLD,
                        all - ColumnWidths.PADDING));
        fo.close().close();
    }

    private void row(Row row, boolean withNext) throws SAXException {
        boolean sum = row.kind() == Row.Kind.SUM;
        fo.open(
                "table-row",
                "keep-together.within-page",
                "9",
                "block-progression-dimension.minimum",
                byHand ? HAND : "0mm",
                "keep-with-next.within-page",
                withNext ? "5" : "auto");
        for (int i = 0; i < widths.length; i++) {
            Column column = table.columns().get(i);
            boolean mark = i == 0 && row.kind() == Row.Kind.GRAVE;
            Weight weight = sum || mark ? Weight.BOLD : Weight.REGULAR;
            fo.open(
                    "table-cell",
                    "padding",
                    SIDE,
                    "border-bottom",
                    THIN,
                    "border-top",
                    sum ? THICK : "none",
                    "border-left",
                    mark ? BAR : column.form() == Column.Form.WRITE_IN ? THIN : "none",
                    "border-right",
                    column.form() == Column.Form.WRITE_IN ? THIN : "none",
                    "display-align",
                    byHand ? "center" : "before",
                    "text-align",
                    align(column),
                    "font-weight",
                    weight == Weight.BOLD ? "bold" : "normal");
            cell(column, row.cells().get(i), weight, i);
            fo.close();
        }
        fo.close();
    }

    private void cell(Column column, String text, Weight weight, int number) throws SAXException {
        boolean tick = column.form() == Column.Form.TICK && text.isEmpty();
        // The empty box of the font, drawn large: it is text like everything else, and so it is selected and read
        // aloud.
        fo.element(
                "block",
                tick ? BOX : broken(text, weight, number),
                "font-size",
                tick ? FoWriter.mm(BOX_MM) : FoWriter.mm(Lettering.emOf(Lettering.SMALL)),
                "line-height",
                tick ? "1" : Double.toString(PageForm.LEADING));
    }

    private String broken(String text, Weight weight, int column) {
        return LongWords.broken(text, Lettering.SMALL, weight, widths[column] - ColumnWidths.PADDING);
    }

    private static String align(Column column) {
        return switch (column.form()) {
            case NUMBER -> "end";
            case TICK -> "center";
            default -> "start";
        };
    }
}
