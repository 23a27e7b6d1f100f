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

    /** The second step of the plan: its objects and what it says; the first stays, and where there is no third nothing is done. */
    @Test
    void aStepOfThePlanIsChangedWhereItStands() {
        String plan = "{\"record\": {\"steps\": [{\"id\": \"1\", \"objects\": [\"A\"]},\n"
                + "  {\"id\": \"2\", \"objects\": [\"B\"], \"says\": \"on\"}]}}";
        assertEquals(
                plan.replace("[\"B\"]", "[\"B\", \"C\"]"),
                JsonPatch.words(plan, List.of("record", "steps", "1", "objects"), List.of("B", "C"))
                        .orElseThrow());
        assertEquals(
                plan.replace("\"on\"", "\"off\""),
                JsonPatch.word(plan, List.of("record", "steps", "1", "says"), "off")
                        .orElseThrow());
        assertEquals(java.util.Optional.empty(), JsonPatch.word(plan, List.of("record", "steps", "2", "says"), "off"));
    }
}
