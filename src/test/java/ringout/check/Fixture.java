package ringout.check;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import ringout.check.form.AfterWaivers;
import ringout.check.form.Check;
import ringout.check.form.CheckInfo;
import ringout.check.form.Gathering;
import ringout.finding.Finding;
import ringout.finding.Headline;
import ringout.finding.Report;
import ringout.graph.Circuit;
import ringout.graph.Wiring;
import ringout.model.Aircraft;
import ringout.present.text.TextReport;
import ringout.read.AircraftReader;
import ringout.read.ReadResult;
import ringout.read.source.DiskFolder;

/**
 * A small aircraft made to show one check, with the text that check must say of it beside it.
 *
 * @param code code of the check, the name of its folder
 * @param name what it shows: fires..., silent..., unknown...
 */
record Fixture(String code, String name) {
    static final Path FOLDER = Path.of("src", "test", "resources", "checks");

    /** All fixtures, by code and name. */
    static List<Fixture> all() throws IOException {
        try (Stream<Path> files = Files.walk(FOLDER, 2)) {
            return files.filter(file -> file.getNameCount() == FOLDER.getNameCount() + 2)
                    .filter(file -> file.toString().endsWith(".json"))
                    .sorted()
                    .map(Fixture::of)
                    .toList();
        }
    }

    private static Fixture of(Path file) {
        String name = file.getFileName().toString().replaceFirst("\\.json$", "");
        return new Fixture(file.getParent().getFileName().toString(), name);
    }

    /** The text the check must say, or nothing when nobody wrote it down. */
    String expected() throws IOException {
        Path file = FOLDER.resolve(code).resolve(name + ".txt");
        return Files.exists(file) ? Files.readString(file, UTF_8) : "";
    }

    /** What a check says of it, alone: counts, every finding in full with its identity, everything it cannot tell. */
    String actual(Check check) {
        ReadResult read = AircraftReader.read(new DiskFolder(FOLDER), code + "/" + name + ".json");
        if (!read.ok()) {
            throw new AssertionError(this + " cannot be read: " + read.problems());
        }
        Report report = check instanceof Gathering || check instanceof AfterWaivers
                ? added(read.aircraft(), check)
                : review(read.aircraft(), List.of(check));
        StringBuilder text = new StringBuilder(counts(report));
        for (Headline headline : report.headlines()) {
            block(text, headline.finding(), report.states());
            headline.alsoExplains().forEach(also -> block(text.append("also "), also, report.states()));
        }
        report.cannotTell().forEach(open -> text.append(TextReport.of(open)));
        return text.toString();
    }

    /** The checks of the first version: later ones would change what a gathering check adds, and say nothing of it. */
    private static List<Check> first() {
        return Catalogue.all().stream()
                .filter(check ->
                        check.getClass().getAnnotation(CheckInfo.class).since().equals("0.1"))
                .toList();
    }

    private static Report review(Aircraft aircraft, List<Check> checks) {
        return Review.of(Circuit.all(Wiring.of(aircraft)), checks, Review.NO_DAY);
    }

    /** What a check that looks at what the others could not decide adds to what the whole catalogue says without it. */
    private static Report added(Aircraft aircraft, Check check) {
        List<Check> all = new ArrayList<>(first());
        if (all.stream().noneMatch(other -> other.getClass().equals(check.getClass()))) {
            all.add(check);
        }
        Report with = review(aircraft, all);
        Report without = review(
                aircraft,
                first().stream()
                        .filter(other -> !other.getClass().equals(check.getClass()))
                        .toList());
        return new Report(
                with.states(),
                with.headlines().stream()
                        .filter(headline -> !without.headlines().contains(headline))
                        .toList(),
                with.cannotTell().stream()
                        .filter(open -> !without.cannotTell().contains(open))
                        .toList(),
                List.of(),
                List.of(),
                List.of(),
                with.passed() - without.passed(),
                with.notApplicable() - without.notApplicable());
    }

    private static String counts(Report report) {
        return "passed " + report.passed() + ", headlines " + report.headlines().size() + ", cannot tell "
                + report.cannotTell().size() + ", not applicable " + report.notApplicable() + "\n";
    }

    private static void block(StringBuilder text, Finding finding, List<String> states) {
        text.append(TextReport.of(finding, states))
                .append("   id     ")
                .append(finding.id())
                .append('\n');
    }

    /** Leaves what the check said where its writer can read it and hold it against what he worked out. */
    void leave(String actual) throws IOException {
        Path file = Path.of("target", "checks", code, name + ".txt");
        Files.createDirectories(file.getParent());
        Files.writeString(file, actual, UTF_8);
    }
}
