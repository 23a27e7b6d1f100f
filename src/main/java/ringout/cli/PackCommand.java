package ringout.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.CompletableFuture;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import ringout.finding.Report;
import ringout.graph.Circuit;
import ringout.model.Aircraft;
import ringout.present.csv.TableCsv;
import ringout.present.html.DocumentPage;
import ringout.present.pdf.Paper;
import ringout.present.pdf.PdfDocuments;
import ringout.present.pdf.PdfFile;
import ringout.present.pdf.PdfInfo;
import ringout.present.xlsx.TableWorkbook;
import ringout.sheet.document.Document;
import ringout.sheet.document.Table;
import ringout.sheet.pack.Pack;
import ringout.sheet.pack.PackSource;

/** {@code pack}: all documents to hand over, at once. */
@Command(
        name = "pack",
        description =
                "The documents to hand over: one PDF, one page, one workbook, and each table as CSV. Computed from the"
                        + " list; nothing in it is measured.",
        mixinStandardHelpOptions = true)
final class PackCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Mixin
    private Question question = new Question();

    @Option(
            names = {"-o", "--out"},
            paramLabel = "DIR",
            required = true,
            description = "Folder to write into.")
    private Path folder = Path.of("");

    @Option(names = "--paper", paramLabel = "P", description = "a4 or a3 (default: a4).")
    private Paper paper = Paper.A4;

    @Option(
            names = "--against",
            paramLabel = "OTHER",
            description = "Earlier revision or other tail to tell the differences from.")
    private Optional<Path> against = Optional.empty();

    @Override
    public Integer call() {
        Inputs inputs = question.inputs(spec.commandLine());
        Optional<Aircraft> read = inputs.aircraft(question.aircraft());
        if (read.isEmpty()) {
            return ExitStatus.WRONG_INPUT;
        }
        List<Circuit> circuits = inputs.circuits(read.get(), question.states());
        Report report = question.review(circuits);
        PackSource source = PackSource.of(circuits, report, question.today());
        Optional<Circuit> earlier = against.flatMap(new Inputs(spec.commandLine())::aircraft)
                .map(aircraft -> inputs.circuits(aircraft, List.of()).get(0));
        if (against.isPresent() && earlier.isEmpty()) {
            return ExitStatus.WRONG_INPUT;
        }
        PackPlates plates =
                new PackPlates(circuits.get(0), report, source.mark().hash());
        List<Document> documents = Pack.of(source, plates.plates(), earlier);
        String title = "Pack of " + source.mark().aircraft();
        String creator = "ringout " + Version.NUMBER;
        // The page and the workbook are written while the formatter, the slowest by far, works on the PDF.
        CompletableFuture<String> page =
                CompletableFuture.supplyAsync(() -> DocumentPage.of(title, creator, paper.name(), documents));
        CompletableFuture<byte[]> book =
                CompletableFuture.supplyAsync(() -> TableWorkbook.of(documents, "ringout", "1.0"));
        PdfFile pdf = PdfDocuments.of(new PdfInfo(title, source.mark().words(), creator), documents, paper);
        OutputFolder files = new OutputFolder(folder)
                .with("pack.pdf", pdf.bytes())
                .with("pack.html", page.join())
                .with("pack.xlsx", book.join());
        for (Document document : documents) {
            for (Table table : document.tables()) {
                files.with(table.name() + ".csv", TableCsv.of(table, source.mark()));
            }
        }
        files.write();
        pdf.flaws().forEach(flaw -> spec.commandLine().getErr().println("ringout: pack.pdf: " + flaw));
        plates.refused().forEach(line -> spec.commandLine().getErr().println("ringout: " + line));
        spec.commandLine()
                .getOut()
                .println(documents.size() + " documents of " + source.mark().words() + " in " + folder);
        source.grave().forEach(line -> spec.commandLine().getOut().println("open, not to be signed: " + line));
        return pdf.flaws().isEmpty() && plates.refused().isEmpty() ? question.status(report) : ExitStatus.DEFECT;
    }
}
