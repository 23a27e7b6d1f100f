package ringout.read.json;

import org.jspecify.annotations.Nullable;
import ringout.text.Problems;
import ringout.text.Span;
import tools.jackson.core.JsonParser;
import tools.jackson.core.TokenStreamLocation;

/** Where the parser stands, in the words of the user's file. */
final class JsonPlaces {
    private final String file;
    private final JsonParser parser;
    private final Problems problems;

    JsonPlaces(String file, JsonParser parser, Problems problems) {
        this.file = file;
        this.parser = parser;
        this.problems = problems;
    }

    /** The place of the current token. */
    Span here() {
        return of(file, parser.currentTokenLocation());
    }

    /** The place of a location in a file. */
    static Span of(String file, @Nullable TokenStreamLocation location) {
        return location == null
                ? Span.at(file, 1, 1)
                : Span.at(file, Math.max(1, location.getLineNr()), Math.max(1, location.getColumnNr()));
    }

    /** Tells a problem at the current token. */
    void tell(String message, String hint) {
        problems.add(here(), message, hint);
    }

    /** Tells a problem at a place. */
    void tell(Span at, String message, String hint) {
        problems.add(at, message, hint);
    }
}
