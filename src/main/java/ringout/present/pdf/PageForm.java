package ringout.present.pdf;

import org.xml.sax.SAXException;
import ringout.draw.letter.Lettering;
import ringout.draw.letter.Weight;
import ringout.sheet.document.Document;

/**
 * The pages of a document on one size of paper, in mm.
 *
 * @param wide width of the page
 * @param high height of the page
 * @param footLines lines of the caution at its foot
 */
record PageForm(double wide, double high, int footLines) {
    static final double MARGIN = 12;

    /** Distance of a line to the next, over the size fonts are counted in. */
    static final double LEADING = 1.22;

    private static final double HEAD = 15;
    private static final double FOOT = 8;
    private static final double GAP = 3;

    static PageForm of(Document document, Paper paper) {
        boolean portrait = document.form() == Document.Form.PORTRAIT;
        double wide = portrait ? paper.narrow() : paper.wide();
        double high = portrait ? paper.wide() : paper.narrow();
        int lines = Lettering.wrap(
                        document.foot(), Lettering.SMALL, Weight.BOLD, wide - 2 * MARGIN - 2, Integer.MAX_VALUE)
                .size();
        return new PageForm(wide, high, lines);
    }

    /** Height of one line of small lettering. */
    static double line() {
        return Lettering.emOf(Lettering.SMALL) * LEADING;
    }

    /** Width of what stands between the margins. */
    double text() {
        return wide - 2 * MARGIN;
    }

    private double foot() {
        return FOOT + footLines * line();
    }

    void master(FoWriter fo, String name) throws SAXException {
        fo.open(
                "simple-page-master",
                "master-name",
                name,
                "page-width",
                FoWriter.mm(wide),
                "page-height",
                FoWriter.mm(high),
                "margin",
                FoWriter.mm(MARGIN / 2) + " " + FoWriter.mm(MARGIN));
        fo.empty("region-body", "margin-top", FoWriter.mm(HEAD + GAP), "margin-bottom", FoWriter.mm(foot() + GAP));
        fo.empty("region-before", "extent", FoWriter.mm(HEAD));
        fo.empty("region-after", "extent", FoWriter.mm(foot()), "display-align", "after");
        fo.close();
    }
}
