package ringout.check;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** The page of each check: its own documentation, kept equal to it by a test. */
public final class Pages {
    private Pages() {}

    /**
     * The page of a code, lines ending in \n.
     *
     * @throws IllegalArgumentException if there is no such check
     */
    public static String of(String code) {
        try (InputStream page = Pages.class.getResourceAsStream("/ringout/pages/" + code + ".txt")) {
            if (page == null) {
                throw new IllegalArgumentException("no page for " + code);
            }
            return new String(page.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
