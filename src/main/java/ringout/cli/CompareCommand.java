package ringout.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import ringout.compare.fleet.Fleet;
import ringout.compare.fleet.Tail;
import ringout.compare.fleet.Trends;
import ringout.compare.judge.Judgement;
import ringout.finding.Report;
import ringout.graph.Circuit;
import ringout.model.Aircraft;
import ringout.present.difference.CompareCsv;
import ringout.present.difference.CompareJson;
import ringout.present.difference.CompareText;

/** {@code compare}: what differs between aircraft, by the meaning of their connections. */
@Command(
        name = "compare",
        description =
                "Compares a list with others: design with as-built, revision with revision, one tail with the rest of"
                        + " the fleet. Dangerous differences first.",
        mixinStandardHelpOptions = true)
final class CompareCommand implements Callable<Integer> {
    /** Forms the differences can be written in. */
    enum Format {
        /** For a person. */
        TEXT,
        /** For other programs. */
        JSON,
        /** For a spreadsheet: the table of all tails, or the differences of one. */
        CSV
    }

    /** An aircraft with what the checks say of it. */
    private record Reviewed(String name, List<Circuit> circuits, Report report) {
        Circuit first() {
            return circuits.get(0);
        }

        Aircraft aircraft() {
            return first().wiring().aircraft();
        }
    }

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(
            arity = "2..*",
            paramLabel = "AIRCRAFT",
            description = "The base, then one or more to hold against it: folders of tables, workbooks or JSON files.")
    private List<Path> aircraft = new ArrayList<>();

    @Option(names = "--format", paramLabel = "F", description = "text, json or csv (default: text).")
    private Format format = Format.TEXT;

    @Option(
            names = {"-o", "--out"},
            paramLabel = "DIR",
            description = "Folder to write the tables and the difference drawings into.")
    private Optional<Path> folder = Optional.empty();

    @Mixin
    private Judging judging = new Judging();

    @Mixin
    private Answering answering = new Answering();

    @Override
    public Integer call() {
        Inputs inputs = answering.inputs(spec.commandLine());
        List<Reviewed> all = new ArrayList<>();
        for (Path path : aircraft) {
            inputs.aircraft(path).ifPresent(read -> all.add(reviewed(path, inputs.circuits(read, List.of()))));
        }
        if (all.size() < aircraft.size()) {
            return ExitStatus.WRONG_INPUT;
        }
        Fleet fleet = fleet(all);
        if (folder.isPresent()) {
            return written(all, fleet, folder.get());
        }
        spec.commandLine().getOut().print(text(fleet));
        return status(fleet);
    }

    private Reviewed reviewed(Path path, List<Circuit> circuits) {
        return new Reviewed(path.toString(), circuits, judging.review(circuits));
    }

    private static Fleet fleet(List<Reviewed> all) {
        Reviewed base = all.get(0);
        List<Tail> tails = new ArrayList<>();
        for (Reviewed other : all.subList(1, all.size())) {
            Judgement judgement = Judgement.of(base.first(), base.report(), other.first(), other.report());
            tails.add(Tail.of(
                    other.name(),
                    other.aircraft(),
                    judgement,
                    Trends.of(other.first().wiring())));
        }
        return Fleet.of(base.aircraft(), base.name(), Trends.of(base.first().wiring()), tails);
    }

    private String text(Fleet fleet) {
        return switch (format) {
            case TEXT -> CompareText.of(fleet);
            case JSON -> CompareJson.of(fleet, Version.NUMBER);
            case CSV -> fleet.tails().size() > 1 ? CompareCsv.fleet(fleet) : CompareCsv.differences(fleet);
        };
    }

    private int written(List<Reviewed> all, Fleet fleet, Path to) {
        OutputFolder files = new OutputFolder(to)
                .with("differences.txt", CompareText.of(fleet))
                .with("differences.json", CompareJson.of(fleet, Version.NUMBER))
                .with("differences.csv", CompareCsv.differences(fleet))
                .with("test-again.csv", CompareCsv.retests(fleet));
        if (fleet.tails().size() > 1) {
            files.with("fleet.csv", CompareCsv.fleet(fleet));
        }
        DifferenceFiles drawn = new DifferenceFiles(fleet);
        for (int i = 0; i < fleet.tails().size(); i++) {
            drawn.draw(fleet.tails().get(i), all.get(i + 1).report());
        }
        drawn.addTo(files);
        files.write();
        drawn.refused().forEach(line -> spec.commandLine().getErr().println("ringout: " + line));
        files.names().forEach(name -> spec.commandLine().getOut().println(to.resolve(name)));
        return drawn.refused().isEmpty() ? status(fleet) : ExitStatus.DEFECT;
    }

    private int status(Fleet fleet) {
        return fleet.rows().stream().anyMatch(row -> judging.counts(row.severity()))
                ? ExitStatus.FINDINGS
                : ExitStatus.CLEAN;
    }
}
