package ringout.present.pdf;

import org.xml.sax.SAXException;
import ringout.draw.letter.Lettering;
import ringout.draw.letter.Weight;
import ringout.sheet.document.Block;
import ringout.sheet.document.Caution;
import ringout.sheet.document.Figure;
import ringout.sheet.document.KeyValues;
import ringout.sheet.document.Paragraph;
import ringout.sheet.document.Section;
import ringout.sheet.document.SignOff;
import ringout.sheet.document.Table;

/** Writes what stands between head and foot. */
final class BlockFo {
    private static final String SPACE = "2mm";
    private static final double KEY_SHARE = 0.3;
    private static final double INDENT = 3;
    private static final String SIGN_LINE = "0.25mm solid black";
    private final FoWriter fo;
    private final double width;

    BlockFo(FoWriter fo, double width) {
        this.fo = fo;
        this.width = width;
    }

    void section(Section section) throws SAXException {
        if (!section.title().isEmpty()) {
            heading(section.title(), Lettering.MEDIUM, "3mm");
        }
        for (Block block : section.blocks()) {
            write(block);
        }
    }

    private void write(Block block) throws SAXException {
        if (block instanceof Paragraph paragraph) {
            fo.element("block", text(paragraph.text(), width), "space-after", SPACE);
        } else if (block instanceof Caution caution) {
            caution(caution);
        } else if (block instanceof KeyValues facts) {
            facts(facts);
        } else if (block instanceof Table table) {
            table(table);
        } else if (block instanceof Figure figure) {
            figure(figure);
        } else if (block instanceof SignOff signOff) {
            sign(signOff);
        }
    }

    private void heading(String title, double capHeight, String before) throws SAXException {
        fo.element(
                "block",
                LongWords.broken(title, capHeight, Weight.BOLD, width),
                "font-weight",
                "bold",
                "font-size",
                FoWriter.mm(Lettering.emOf(capHeight)),
                "space-before",
                before,
                "space-after",
                "1mm",
                "keep-with-next.within-page",
                "always");
    }

    private String text(String text, double room) {
        return LongWords.broken(text, Lettering.SMALL, Weight.REGULAR, room);
    }

    private void caution(Caution caution) throws SAXException {
        fo.open(
                "block",
                "border",
                "0.5mm solid black",
                "padding",
                "1.5mm",
                "margin",
                "0mm 2mm",
                "space-before",
                "1mm",
                "space-after",
                "3mm",
                "keep-together.within-page",
                "9");
        fo.element("block", "CAUTION", "font-weight", "bold", "keep-with-next.within-page", "always");
        for (String line : caution.lines()) {
            fo.element(
                    "block",
                    "\u2022 " + text(line, width - 3 * INDENT),
                    "start-indent",
                    "inherited-property-value(start-indent) + 3mm",
                    "text-indent",
                    "-3mm");
        }
        fo.close();
    }

    private void facts(KeyValues facts) throws SAXException {
        double key = facts.pairs().stream()
                        .mapToDouble(pair -> Lettering.width(pair.key(), Lettering.SMALL, Weight.BOLD))
                        .max()
                        .orElse(0)
                + INDENT;
        double left = Math.min(key, width * KEY_SHARE);
        fo.open(
                "table",
                "table-layout",
                "fixed",
                "width",
                "100%",
                "space-after",
                SPACE,
                "keep-together.within-page",
                "3",
                "keep-with-next.within-page",
                "3");
        fo.empty("table-column", "column-width", FoWriter.mm(left));
        fo.empty("table-column", "column-width", FoWriter.mm(width - left));
        fo.open("table-body");
        for (KeyValues.Pair pair : facts.pairs()) {
            fo.open("table-row", "keep-together.within-page", "9");
            fo.open("table-cell", "font-weight", "bold", "padding", "0.3mm 0mm");
            fo.element("block", LongWords.broken(pair.key(), Lettering.SMALL, Weight.BOLD, left - 2));
            fo.close().open("table-cell", "padding", "0.3mm 0mm");
            fo.element("block", text(pair.value(), width - left));
            fo.close().close();
        }
        fo.close().close();
    }

    private void table(Table table) throws SAXException {
        if (!table.title().isEmpty()) {
            heading(table.title(), Lettering.SMALL, SPACE);
        }
        if (table.rows().isEmpty()) {
            fo.element("block", "none", "space-after", SPACE);
        } else {
            new TableFo(fo, table, width).write();
        }
    }

    private void figure(Figure figure) throws SAXException {
        fo.open("block", "space-after", SPACE, "text-align", "center", "keep-together.within-page", "9");
        fo.open(
                "instream-foreign-object",
                "content-width",
                "scale-down-to-fit",
                "content-height",
                "scale-down-to-fit",
                "inline-progression-dimension.maximum",
                "100%",
                "block-progression-dimension.maximum",
                "100%",
                "width",
                "100%",
                "scaling",
                "uniform");
        fo.drawing(figure.svg().get()).close();
        fo.close();
        fo.element("block", text(figure.title(), width), "text-align", "center", "space-after", SPACE);
    }

    private void sign(SignOff signOff) throws SAXException {
        fo.open(
                "block",
                "space-before",
                "4mm",
                "keep-together.within-page",
                "9",
                "keep-with-previous.within-page",
                "7");
        if (!signOff.offered()) {
            fo.element("block", "Not to be signed: open findings forbid it", "font-weight", "bold");
            for (String line : signOff.open()) {
                fo.element("block", "\u2022 " + text(line, width - INDENT));
            }
            fo.close();
            return;
        }
        fo.open("table", "table-layout", "fixed", "width", "100%", "font-weight", "normal");
        double[] shares = {0.22, 0.34, 0.22, 0.22};
        for (double share : shares) {
            fo.empty("table-column", "column-width", FoWriter.mm(width * share));
        }
        fo.open("table-body");
        for (String role : signOff.roles()) {
            fo.open("table-row", "block-progression-dimension.minimum", "11mm", "keep-together.within-page", "always");
            for (String word : new String[] {role, "name, licence", "signature", "date"}) {
                fo.open("table-cell", "border-bottom", SIGN_LINE, "padding", "0.5mm");
                fo.element("block", text(word, width * shares[3] - 2)).close();
            }
            fo.close();
        }
        fo.close().close().close();
    }
}
