package ringout.bench;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

/** The wiring sheets of the samples are no worse than what a general layout engine makes of the same ports. */
class LayoutAgainstEngineTest {
    @Test
    void crossFewerTimesAndTurnNoMoreOften() throws InterruptedException {
        List<LayoutAgainstEngine.Line> lines =
                LayoutAgainstEngine.of(List.of("samples/linewarden", "samples/dewmaker"));
        LayoutAgainstEngine.Line all = lines.get(lines.size() - 1);
        assertTrue(all.engine().crossings() > 50 && all.engine().bends() > 200, all.toString());
        assertTrue(all.own().bends() > 200, all.toString());
        assertTrue(all.own().crossings() <= 0.9 * all.engine().crossings(), all.toString());
        assertTrue(all.own().bends() <= 1.0 * all.engine().bends(), all.toString());
    }
}
