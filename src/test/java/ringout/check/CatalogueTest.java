package ringout.check;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import ringout.check.form.CheckInfo;

/** Every check is in the catalogue, in order, with its fixtures and its page; nothing else is. */
class CatalogueTest {
    private static final String FAMILIES = "TAPSMRBX";
    private static final List<String> HEADINGS = List.of("Why it matters:", "Does not see:", "Reference:");

    private static List<CheckInfo> infos() {
        return Catalogue.all().stream()
                .map(check -> check.getClass().getAnnotation(CheckInfo.class))
                .toList();
    }

    @Test
    void holdsEveryClassThatIsACheck() {
        Set<String> marked = new ClassFileImporter()
                .withImportOption(new ImportOption.DoNotIncludeTests()).importPackages("ringout.check").stream()
                        .filter(type -> type.isAnnotatedWith(CheckInfo.class))
                        .map(JavaClass::getName)
                        .collect(Collectors.toCollection(TreeSet::new));
        Set<String> listed = Catalogue.all().stream()
                .map(check -> check.getClass().getName())
                .collect(Collectors.toCollection(TreeSet::new));
        assertEquals(marked, listed);
    }

    @Test
    void isInTheOrderOfCodesWithoutDoubles() {
        List<String> codes = infos().stream().map(CheckInfo::code).toList();
        List<String> ordered = codes.stream()
                .distinct()
                .sorted(Comparator.comparingInt((String code) -> FAMILIES.indexOf(code.charAt(0)))
                        .thenComparing(Comparator.naturalOrder()))
                .toList();
        assertEquals(ordered, codes);
    }

    @Test
    void namesAreUniqueWordsJoinedByDashes() {
        List<String> names = infos().stream().map(CheckInfo::name).toList();
        assertEquals(
                names.stream()
                        .filter(name -> name.matches("[a-z0-9]+(-[a-z0-9]+)*"))
                        .distinct()
                        .toList(),
                names);
    }

    @Test
    void everyCheckHasFixturesThatFireStayStillAndCannotTell() throws IOException {
        List<Fixture> fixtures = Fixture.all();
        List<String> missing = new ArrayList<>();
        for (CheckInfo info : infos()) {
            for (String kind : kinds(info)) {
                if (fixtures.stream()
                        .noneMatch(f -> f.code().equals(info.code()) && f.name().startsWith(kind))) {
                    missing.add(info.code() + "/" + kind);
                }
            }
        }
        assertEquals(List.of(), missing);
    }

    /** What a check can do: one without needs can always tell, one that only asks never fires. */
    private static List<String> kinds(CheckInfo info) {
        if (info.asksOnly()) {
            return List.of("silent", "unknown");
        }
        return info.needs().length == 0 ? List.of("fires", "silent") : List.of("fires", "silent", "unknown");
    }

    @Test
    void fixturesDoWhatTheirNamesSay() throws IOException {
        List<String> lying = new ArrayList<>();
        for (Fixture fixture : Fixture.all()) {
            String first = fixture.expected().lines().findFirst().orElse("");
            boolean finds = !first.contains("headlines 0");
            boolean asks = !first.contains("cannot tell 0");
            boolean right =
                    switch (fixture.name().replaceFirst("-.*", "")) {
                        case "fires" -> finds;
                        case "silent" -> !finds && !asks;
                        case "unknown" -> !finds && asks;
                        default -> false;
                    };
            if (!right) {
                lying.add(fixture.code() + "/" + fixture.name() + ": " + first);
            }
        }
        assertEquals(List.of(), lying);
    }

    @Test
    void everyCheckHasAPageWithAllItsHeadings() throws IOException {
        List<String> missing = new ArrayList<>();
        for (var check : Catalogue.all()) {
            String comment = comment(check.getClass());
            for (String heading : HEADINGS) {
                if (!comment.contains("<p>" + heading)) {
                    missing.add(check.getClass().getSimpleName() + ": " + heading);
                }
            }
            if (!comment.contains("<p>Formula:") && !comment.contains("<p>Condition:")) {
                missing.add(check.getClass().getSimpleName() + ": Formula: or Condition:");
            }
        }
        assertEquals(List.of(), missing);
    }

    private static String comment(Class<?> check) throws IOException {
        Path source = Path.of("src", "main", "java").resolve(check.getName().replace('.', '/') + ".java");
        String text = Files.readString(source, UTF_8);
        int start = text.indexOf("/**");
        return text.substring(start, text.indexOf("*/", start)).replaceAll("\\s*\\n \\* ?", " ");
    }
}
