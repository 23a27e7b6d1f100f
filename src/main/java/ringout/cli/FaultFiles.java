package ringout.cli;

import java.nio.file.Path;
import java.util.List;
import picocli.CommandLine;
import ringout.present.html.DocumentPage;
import ringout.present.json.FaultJson;
import ringout.present.pdf.Paper;
import ringout.present.pdf.PdfDocuments;
import ringout.present.pdf.PdfFile;
import ringout.present.pdf.PdfInfo;
import ringout.sheet.document.Document;
import ringout.sheet.document.RevisionMark;
import ringout.sheet.fault.FaultSheet;
import ringout.trace.session.Diagnosis;
import ringout.trace.session.FaultReport;
import ringout.trace.session.SearchTree;

/** Writes the fault-finding sheet of a search, and the search itself. */
final class FaultFiles {
    /** Tests on any way down the paper. */
    private static final int DEEP = 2;

    /** Outcomes less likely than this are not followed on paper. */
    private static final double LEAST = 0.06;

    private FaultFiles() {}

    static void write(Diagnosis search, Path folder, CommandLine line) {
        FaultReport report = FaultReport.of(search);
        RevisionMark mark = RevisionMark.of(
                search.circuit().wiring().aircraft(), search.circuit().state().name());
        Document sheet = FaultSheet.of(report, SearchTree.grow(search, DEEP, LEAST), mark);
        String creator = "ringout " + Version.NUMBER;
        PdfFile pdf = PdfDocuments.of(new PdfInfo(sheet.title(), mark.words(), creator), List.of(sheet), Paper.A4);
        OutputFolder files = new OutputFolder(folder)
                .with("fault-finding.pdf", pdf.bytes())
                .with("fault-finding.html", DocumentPage.of(sheet.title(), creator, Paper.A4.name(), List.of(sheet)))
                .with("fault-finding.json", FaultJson.of(report));
        files.write();
        files.names().forEach(name -> line.getErr().println("written: " + folder.resolve(name)));
        pdf.flaws().forEach(flaw -> line.getErr().println("ringout: fault-finding.pdf: " + flaw));
    }
}
