package ringout.read.json;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A list of words replaced in a JSON text; all around it stays. */
class JsonPatchTest {
    private static final String TEXT = """
            { "note": "plugOrder",   "airframe": {"plugOrder" : [ "A",
               "B" ], "masses": [1]},
              "library": [] }
            """;

    @Test
    void onlyTheListChanges() {
        assertEquals(
                TEXT.replace("[ \"A\",\n   \"B\" ]", "[\"B\", \"A \\\" ü\"]"),
                JsonPatch.words(TEXT, List.of("airframe", "plugOrder"), List.of("B", "A \" ü"))
                        .orElseThrow());
    }

    @Test
    void anEmptyListFills() {
        assertEquals(
                TEXT.replace("[] }", "[\"../x\"] }"),
                JsonPatch.words(TEXT, List.of("library"), List.of("../x")).orElseThrow());
    }

    @Test
    void whatIsNotThereIsNotMade() {
        assertEquals(Optional.empty(), JsonPatch.words(TEXT, List.of("airframe", "none"), List.of()));
        assertEquals(Optional.empty(), JsonPatch.words(TEXT, List.of("note"), List.of()));
        assertEquals(Optional.empty(), JsonPatch.words("{ \"a\": ", List.of("a"), List.of()));
    }
}
