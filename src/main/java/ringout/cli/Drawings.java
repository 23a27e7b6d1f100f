package ringout.cli;

import java.util.ArrayList;
import java.util.List;
import ringout.draw.harness.SheetSet;
import ringout.draw.ink.StyledSheet;
import ringout.draw.scene.Earlier;
import ringout.finding.Report;
import ringout.graph.Circuit;
import ringout.model.Aircraft;
import ringout.model.seal.Seal;
import ringout.present.html.HtmlPage;
import ringout.present.html.PageHead;
import ringout.present.html.PageSheet;
import ringout.present.json.LayoutJson;
import ringout.present.pdf.PdfInfo;
import ringout.present.pdf.PdfSheets;
import ringout.present.png.PngWriter;
import ringout.present.svg.SvgOutcome;
import ringout.sheet.page.PageBooks;

/** The sheets of an aircraft as files: each as SVG and PNG, and only when the verifier passed it. */
final class Drawings {
    /** Kinds of sheets. */
    enum Kind {
        /** Every kind. */
        ALL,
        /** Units by zone, one line a lead. */
        BLOCK,
        /** Pin-to-pin wiring sheets. */
        WIRING,
        /** Bus diagrams to scale of length. */
        BUS,
        /** Power tree. */
        POWER,
        /** Return diagram. */
        RETURN,
        /** Places and routes to scale. */
        PLACE,
        /** Map of motors and control surfaces. */
        MAP,
        /** What is lost with each plug, lead and part. */
        LOSS,
        /** What comes of plugs in wrong sockets. */
        MISPLUG,
        /** Drawings of made-up leads. */
        LEAD,
        /** Faces of plugs. */
        FACE,
        /** One finding each. */
        FINDING
    }

    /** Forms a sheet is written in. */
    enum Format {
        /** Every form. */
        ALL,
        /** Scalable. */
        SVG,
        /** Picture. */
        PNG,
        /** One file with a page a sheet, for paper. */
        PDF,
        /** One page with all of them, the findings and what can be looked up. */
        HTML;

        boolean includes(Format one) {
            return this == ALL || this == one;
        }
    }

    /** File with the places on the wiring sheets, for a later drawing to hold. */
    static final String LAYOUT = "layout.json";

    /** A drawn sheet by name. */
    private record Named(String name, StyledSheet sheet, SvgOutcome outcome) {}

    private final List<Named> sheets;
    private final List<String> missing;
    private final Earlier layout;
    private final Report report;
    private final String hash;

    /** Draws the sheets of one state. */
    Drawings(Circuit circuit, Report report, Kind kind) {
        this(circuit, report, kind, Earlier.NONE);
    }

    /** Draws the sheets of one state, held against an earlier output. */
    Drawings(Circuit circuit, Report report, Kind kind, Earlier earlier) {
        this.report = report;
        hash = Seal.ofList(circuit.wiring().aircraft()).mark();
        List<SheetSet.Numbered> set = SheetSet.of(circuit, report, hash, earlier);
        layout = kind == Kind.ALL || kind == Kind.WIRING ? SheetSet.layout(set) : Earlier.NONE;
        missing = kind == Kind.ALL ? SheetSet.missing(circuit, set) : List.of();
        sheets = set.stream()
                .filter(sheet ->
                        kind == Kind.ALL || kind.name().equals(sheet.kind().name()))
                .parallel()
                .map(sheet -> new Named(sheet.name(), sheet.sheet(), SvgOutcome.of(sheet.sheet())))
                .toList();
    }

    /** Adds the files of the sheets that passed. */
    void addTo(OutputFolder folder, Format format) {
        if (!layout.sheets().isEmpty()) {
            folder.with(LAYOUT, LayoutJson.of(layout));
        }
        for (Named sheet : sheets) {
            if (sheet.outcome() instanceof SvgOutcome.Verified verified) {
                if (format.includes(Format.SVG)) {
                    folder.with(sheet.name() + ".svg", verified.text());
                }
                if (format.includes(Format.PNG)) {
                    folder.with(sheet.name() + ".png", PngWriter.write(verified, PngWriter.SCREEN_DPI));
                }
            }
        }
    }

    /** Adds one file with all sheets that passed, if there are any. */
    void addPdf(OutputFolder folder, Aircraft aircraft) {
        List<PdfSheets.Page> pages = new ArrayList<>();
        for (Named named : sheets) {
            if (named.outcome() instanceof SvgOutcome.Verified verified) {
                pages.add(
                        new PdfSheets.Page(named.sheet().title(), named.sheet().size(), verified));
            }
        }
        if (!pages.isEmpty()) {
            PageHead head = new PageHead(aircraft, hash, Version.NUMBER);
            PdfInfo info = new PdfInfo(head.title() + ", drawings", head.mark(), "ringout " + Version.NUMBER);
            folder.with("drawings.pdf", PdfSheets.of(info, pages).bytes());
        }
    }

    /** Adds the page of all declared states; the first is the one that is drawn. */
    void addPage(OutputFolder folder, List<Circuit> circuits) {
        List<PageSheet> drawn = new ArrayList<>();
        for (Named sheet : sheets) {
            if (sheet.outcome() instanceof SvgOutcome.Verified verified) {
                drawn.add(new PageSheet(sheet.name(), verified.text()));
            }
        }
        PageHead head = new PageHead(circuits.get(0).wiring().aircraft(), hash, Version.NUMBER);
        folder.with("page.html", HtmlPage.of(head, report, PageBooks.of(circuits), drawn));
    }

    /** Sheets there ought to be and are not, and why. */
    List<String> missing() {
        return missing.stream().map(sheet -> "not drawn: " + sheet).toList();
    }

    /** Sheets that were not written, and why. */
    List<String> refused() {
        List<String> lines = new ArrayList<>();
        for (Named sheet : sheets) {
            if (sheet.outcome() instanceof SvgOutcome.Refused refused) {
                lines.add("sheet " + sheet.name() + " is not legible and was not written: " + refused.flaws());
            }
        }
        return lines;
    }
}
