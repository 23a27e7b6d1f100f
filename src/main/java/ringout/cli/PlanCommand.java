package ringout.cli;

import java.nio.file.Path;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import ringout.finding.Report;
import ringout.graph.Circuit;
import ringout.model.Aircraft;
import ringout.plan.StagedPlan;
import ringout.plan.StagedPlans;
import ringout.present.csv.TableCsv;
import ringout.present.html.DocumentPage;
import ringout.present.pdf.Paper;
import ringout.present.pdf.PdfDocuments;
import ringout.present.pdf.PdfFile;
import ringout.present.pdf.PdfInfo;
import ringout.present.text.PlanText;
import ringout.present.xlsx.TableWorkbook;
import ringout.sheet.build.BuildDocuments;
import ringout.sheet.build.BuildSource;
import ringout.sheet.document.Document;
import ringout.sheet.document.RevisionMark;
import ringout.sheet.document.Table;
import ringout.sheet.pack.PackSource;

/** {@code plan}: stages of the build, last chances of each lid, and the first power-up. */
@Command(
        name = "plan",
        description = {
            "The plan of the build: stages with hold points in an order that saves walking and turning, the last-chance list of each"
                    + " lid with the minutes it costs to be late, orders that cannot be kept with the cheapest way out, the order of"
                    + " the pack plugs, and the first power-up with computed volts and amperes and stop limits.",
            "With or without a written procedure. Computed from the list; nothing in it is measured.",
        },
        footer = {
            "",
            "  ringout plan samples/linewarden",
            "  ringout plan samples/linewarden -o plan --format pdf",
            "",
            "Propellers off before any pack is plugged."
        },
        mixinStandardHelpOptions = true)
final class PlanCommand implements Callable<Integer> {
    /** Forms the sheets can be written in. */
    enum Format {
        /** For the bench. */
        PDF,
        /** For a telephone. */
        HTML,
        /** For a spreadsheet, a leaf a table. */
        XLSX,
        /** For a spreadsheet, a file a table. */
        CSV,
        /** All of them. */
        ALL
    }

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Mixin
    private Question question = new Question();

    @Option(
            names = {"-o", "--out"},
            paramLabel = "DIR",
            description = "Folder to write the sheets into; without it the plan is told in short.")
    private Optional<Path> folder = Optional.empty();

    @Option(names = "--format", paramLabel = "F", description = "pdf, html, xlsx, csv or all (default: all).")
    private Format format = Format.ALL;

    @Override
    public Integer call() {
        Inputs inputs = question.inputs(spec.commandLine());
        Optional<Aircraft> read = inputs.aircraft(question.aircraft());
        if (read.isEmpty()) {
            return ExitStatus.WRONG_INPUT;
        }
        Circuit circuit = inputs.circuits(read.get(), question.states()).get(0);
        StagedPlan plan = StagedPlans.of(circuit);
        RevisionMark mark = RevisionMark.of(read.get(), circuit.state().name());
        spec.commandLine().getOut().print(PlanText.of(plan, mark.words()));
        int status = plan.rings().isEmpty() ? ExitStatus.CLEAN : ExitStatus.FINDINGS;
        return folder.map(into -> write(into, source(circuit, plan), status)).orElse(status);
    }

    /** The sheets with what forbids to power or to fly: none offers a line to sign on while any of it is open. */
    private BuildSource source(Circuit circuit, StagedPlan plan) {
        Report report = question.review(List.of(circuit));
        PackSource pack = PackSource.of(List.of(circuit), report, question.today());
        return new BuildSource(plan, pack.mark(), pack.grave());
    }

    private int write(Path into, BuildSource source, int status) {
        List<Document> documents = BuildDocuments.of(source);
        OutputFolder files = new OutputFolder(into);
        Set<Format> wanted = format == Format.ALL ? EnumSet.allOf(Format.class) : EnumSet.of(format);
        String title = "Plan of the build of " + source.mark().aircraft();
        String creator = "ringout " + Version.NUMBER;
        List<String> flaws = List.of();
        if (wanted.contains(Format.PDF)) {
            PdfFile pdf = PdfDocuments.of(new PdfInfo(title, source.mark().words(), creator), documents, Paper.A4);
            flaws = pdf.flaws();
            files.with("plan.pdf", pdf.bytes());
        }
        if (wanted.contains(Format.HTML)) {
            files.with("plan.html", DocumentPage.of(title, creator, Paper.A4.name(), documents));
        }
        if (wanted.contains(Format.XLSX)) {
            files.with("plan.xlsx", TableWorkbook.of(documents, "ringout", "1.0"));
        }
        if (wanted.contains(Format.CSV)) {
            for (Document document : documents) {
                for (Table table : document.tables()) {
                    files.with(table.name() + ".csv", TableCsv.of(table, source.mark()));
                }
            }
        }
        files.write();
        files.names().forEach(name -> spec.commandLine().getOut().println(into.resolve(name)));
        flaws.forEach(flaw -> spec.commandLine().getErr().println("ringout: plan.pdf: " + flaw));
        source.grave().forEach(line -> spec.commandLine().getOut().println("open, not to be signed: " + line));
        return flaws.isEmpty() ? status : ExitStatus.DEFECT;
    }
}
