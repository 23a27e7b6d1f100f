package ringout.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import ringout.check.form.Check;
import ringout.check.form.CheckInfo;

/**
 * The page of every check is its javadoc. {@code -Dpages=write} writes the pages anew; read the difference before you keep
 * it.
 */
class PagesTest {
    private static final Path FOLDER = Path.of("src/main/resources/ringout/pages");
    private static final int WIDTH = 100;

    @TestFactory
    Stream<DynamicTest> everyPageIsTheDocumentationOfItsCheck() {
        return Catalogue.all().stream().map(check -> dynamicTest(info(check).code(), () -> compare(check)));
    }

    private static CheckInfo info(Check check) {
        return check.getClass().getAnnotation(CheckInfo.class);
    }

    private static void compare(Check check) throws IOException {
        String page = page(check);
        Path file = FOLDER.resolve(info(check).code() + ".txt");
        if (System.getProperty("pages", "").equals("write")) {
            Files.createDirectories(FOLDER);
            Files.writeString(file, page);
        }
        assertEquals(page, Files.exists(file) ? Files.readString(file) : "", "write the pages with -Dpages=write");
    }

    private static String page(Check check) throws IOException {
        CheckInfo info = info(check);
        Path source = Path.of("src/main/java/" + check.getClass().getName().replace('.', '/') + ".java");
        String text = Files.readString(source);
        int end = text.lastIndexOf("*/", text.indexOf("@CheckInfo("));
        int start = text.lastIndexOf("/**", end);
        String doc = text.substring(start + 3, end).replaceAll("(?m)^ *\\* ?", "");
        doc = doc.replaceAll("\\{@(?:code|link) ([^}]*)\\}", "$1")
                .replace("&lt;", "<")
                .replace("&gt;", ">")
                .replace("&amp;", "&");
        StringBuilder page = new StringBuilder(info.code() + " " + info.name() + ", usually " + info.severity() + " ("
                + info.severity().words() + ")\n");
        for (String paragraph : doc.split("<p>")) {
            page.append('\n');
            wrap(paragraph.replaceAll("<[^>]+>", "").replaceAll("\\s+", " ").strip())
                    .forEach(line -> page.append(line).append('\n'));
        }
        if (info.needs().length > 0) {
            page.append('\n');
            wrap("Needs: " + String.join("; ", info.needs()) + ". Without it: cannot tell, never a pass.")
                    .forEach(line -> page.append(line).append('\n'));
        }
        return page.toString();
    }

    private static List<String> wrap(String text) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : text.split(" ")) {
            if (line.length() + word.length() + 1 > WIDTH && line.length() > 0) {
                lines.add(line.toString());
                line.setLength(0);
            }
            line.append(line.length() == 0 ? "" : " ").append(word);
        }
        lines.add(line.toString());
        return lines;
    }
}
