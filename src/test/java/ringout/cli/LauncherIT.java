package ringout.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** The finished program: the jar, its launcher, and the class-data archive that must not fail in silence. */
@EnabledOnOs({OS.LINUX, OS.MAC})
class LauncherIT {
    private static final Path BUILT = Path.of(System.getProperty("ringout.home", "target"));
    private static final Path JAVA = Path.of(System.getProperty("java.home"), "bin", "java");

    @TempDir
    private Path scratch;

    private record Ended(int status, String out, String err) {}

    @Test
    void theJarAloneRuns() throws Exception {
        Ended ended = run(
                Map.of(), JAVA.toString(), "-jar", BUILT.resolve("ringout.jar").toString(), "--version");
        assertEquals(new Ended(0, "ringout 0.1.0\n", ""), ended);
    }

    @Test
    void theLauncherStartsWithoutAWordOnStandardError() throws Exception {
        assertEquals(new Ended(0, "ringout 0.1.0\n", ""), launch(BUILT, Map.of()));
    }

    /** The libraries that write PDF have words of their own; they are none for a person at a terminal. */
    @Test
    void writingPdfPutsNothingOnStandardError() throws Exception {
        String into = scratch.resolve("pdf").toString();
        Ended ended = run(
                own(Map.of()),
                BUILT.resolve("ringout").toString(),
                "draw",
                "samples/starter",
                "-o",
                into,
                "--format",
                "pdf");
        assertEquals(new Ended(0, ended.out(), ""), ended);
        assertTrue(Files.exists(Path.of(into, "drawings.pdf")), ended::out);
    }

    @Test
    void theStatusOfTheProgramIsTheStatusOfTheLauncher() throws Exception {
        Ended ended = run(own(Map.of()), BUILT.resolve("ringout").toString(), "no-such-command");
        assertEquals(ExitStatus.WRONG_INPUT, ended.status());
    }

    /** Java 5 classes do not get into an archive; the build raises them, and this is where it shows. */
    @Test
    void ownAndLibraryClassesComeFromTheArchive() throws Exception {
        Path log = scratch.resolve("classes.txt");
        launch(BUILT, Map.of("RINGOUT_JAVA_OPTS", "-Xlog:class+load:file=" + log));
        List<String> strays = Files.readAllLines(log, UTF_8).stream()
                .filter(line -> line.contains(" picocli.") || line.contains(" ringout.cli.Main "))
                .filter(line -> !line.contains("shared objects file"))
                .toList();
        assertEquals(List.of(), strays);
        assertTrue(Files.readString(log, UTF_8).contains(" picocli.CommandLine source: shared objects file (top)"));
        assertTrue(Files.readString(log, UTF_8).contains(" ringout.cli.Main source: shared objects file (top)"));
    }

    @Test
    void aLinkElsewhereStartsTheSameProgram() throws Exception {
        Path link = Files.createSymbolicLink(scratch.resolve("ringout"), BUILT.resolve("ringout"));
        assertEquals(new Ended(0, "ringout 0.1.0\n", ""), run(own(Map.of()), link.toString(), "--version"));
        Files.delete(link);
    }

    @Test
    void aMissingArchiveIsTold() throws Exception {
        Path moved = copy("ringout", "ringout.jar");
        assertTold("is missing", moved);
    }

    @Test
    void anArchiveOfAnOlderJarIsTold() throws Exception {
        Path moved = copy("ringout", "ringout.jar", "ringout.jsa", "ringout.jsa.java");
        Files.setLastModifiedTime(
                moved.resolve("ringout.jar"), FileTime.from(Instant.now().plusSeconds(60)));
        assertTold("is older than ringout.jar", moved);
    }

    @Test
    void anArchiveOfAnotherJavaIsTold() throws Exception {
        Path moved = copy("ringout", "ringout.jar", "ringout.jsa");
        Files.writeString(moved.resolve("ringout.jsa.java"), "/bin/sh\n", UTF_8);
        assertTold("was made by another Java", moved);
    }

    /** What the launcher cannot see, the JVM sees: here a jar at another place than the archive knows. */
    @Test
    void anArchiveTheJvmRefusesIsTold() throws Exception {
        Path moved = copy("ringout", "ringout.jar", "ringout.jsa", "ringout.jsa.java");
        Ended ended = launch(moved, Map.of());
        assertEquals(new Ended(0, "ringout 0.1.0\n", ended.err()), ended);
        assertTrue(ended.err().startsWith("[warning] Unable to use shared archive"), ended.err());
    }

    @Test
    void aMovedProgramCanMakeItsOwnArchive() throws Exception {
        Path moved = copy("ringout", "ringout.jar");
        Ended made = run(own(Map.of()), moved.resolve("ringout").toString(), "--make-archive", "--help");
        assertEquals(new Ended(0, "", ""), made);
        assertEquals(new Ended(0, "ringout 0.1.0\n", ""), launch(moved, Map.of()));
    }

    @Test
    void aCallThatFailsMakesNoArchive() throws Exception {
        Path moved = copy("ringout", "ringout.jar");
        Ended made = run(own(Map.of()), moved.resolve("ringout").toString(), "--make-archive", "no-such-command");
        assertEquals(ExitStatus.DEFECT, made.status());
        assertTrue(made.err().contains("no archive made"), made.err());
        assertTrue(Files.notExists(moved.resolve("ringout.jsa")));
    }

    private static void assertTold(String what, Path home) throws Exception {
        Ended ended = launch(home, Map.of());
        assertEquals(new Ended(0, "ringout 0.1.0\n", ended.err()), ended);
        assertTrue(ended.err().startsWith("ringout: slow start, the class-data archive " + what), ended.err());
        assertEquals(1, ended.err().lines().count(), ended.err());
    }

    /** A folder with a space in its name that holds the named files of the build. */
    private Path copy(String... names) throws IOException {
        Path moved = Files.createDirectories(scratch.resolve("another place"));
        for (String name : names) {
            Files.copy(BUILT.resolve(name), moved.resolve(name), StandardCopyOption.COPY_ATTRIBUTES);
        }
        return moved;
    }

    private static Ended launch(Path home, Map<String, String> surroundings) throws Exception {
        return run(own(surroundings), home.resolve("ringout").toString(), "--version");
    }

    /** The Java of this test, which is also the one that made the archive. */
    private static Map<String, String> own(Map<String, String> surroundings) {
        Map<String, String> all = new TreeMap<>(surroundings);
        all.put("JAVA_HOME", System.getProperty("java.home"));
        return all;
    }

    private static Ended run(Map<String, String> surroundings, String... words) throws Exception {
        ProcessBuilder builder = new ProcessBuilder(new ArrayList<>(List.of(words)));
        builder.environment().putAll(surroundings);
        Path err = Files.createTempFile("ringout", ".err");
        builder.redirectError(err.toFile());
        Process process = builder.start();
        process.getOutputStream().close();
        String out = new String(process.getInputStream().readAllBytes(), UTF_8);
        int status = process.waitFor();
        String complaints = Files.readString(err, UTF_8);
        Files.delete(err);
        return new Ended(status, out, complaints);
    }
}
