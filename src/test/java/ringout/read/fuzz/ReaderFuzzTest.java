package ringout.read.fuzz;

import com.code_intelligence.jazzer.api.FuzzedDataProvider;
import com.code_intelligence.jazzer.junit.FuzzTest;
import java.nio.charset.StandardCharsets;

/** The reader under a coverage-guided fuzzer (profile fuzz); without it each method runs once on its seeds. */
class ReaderFuzzTest {
    @FuzzTest(maxDuration = "3m")
    void json(FuzzedDataProvider data) {
        AnyInput.json(data.consumeRemainingAsBytes());
    }

    @FuzzTest(maxDuration = "3m")
    void table(FuzzedDataProvider data) {
        String name = data.pickValue(new String[] {"leads.csv", "units.csv", "pins.csv", "parts.csv", "ports.csv"});
        AnyInput.table(name, data.consumeRemainingAsBytes());
    }

    @FuzzTest(maxDuration = "1m")
    void edits(FuzzedDataProvider data) {
        AnyInput.edits(new String(data.consumeRemainingAsBytes(), StandardCharsets.UTF_8));
    }
}
