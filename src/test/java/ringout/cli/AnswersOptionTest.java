package ringout.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Whatever reads a list says how to answer what it leaves open: so it must take the answers, and none of them in vain. */
class AnswersOptionTest {
    @TempDir
    private Path out;

    @ParameterizedTest
    @ValueSource(
            strings = {
                "check LIST",
                "review LIST -o OUT",
                "draw LIST -o OUT",
                "probe LIST FC-C2-H FC-C2-L",
                "fault LIST --silent FC",
                "loads LIST",
                "plan LIST",
                "pack LIST -o OUT",
                "compare LIST LIST",
                "convert LIST OUT/to.json",
                "ask LIST",
                "unseen LIST",
                "freeze LIST -o OUT/frozen.json",
                "record LIST --take OUT/page.json -o OUT/to.json"
            })
    void noCommandLeavesTheAnswersUnread(String call) {
        StringWriter told = new StringWriter();
        PrintWriter printer = new PrintWriter(told, true);
        List<String> words = Stream.concat(
                        Stream.of(call.split(" "))
                                .map(word ->
                                        word.replace("LIST", "samples/starter").replace("OUT", out.toString())),
                        Stream.of("--answers", out.resolve("nothing.csv").toString()))
                .toList();
        assertEquals(ExitStatus.WRONG_INPUT, Main.run(printer, printer, words.toArray(String[]::new)), call);
        assertTrue(told.toString().contains("the answers: "), told::toString);
    }
}
