package ringout.random;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import ringout.finding.Report;

/** An aircraft without a fault is told to have none, whatever its names, pin orders, chain orders and states. */
class ValidAircraftTest {
    @Property(seed = "20261125", tries = 200, shrinking = ShrinkingMode.OFF)
    void hasNoFindingOfWeight(@ForAll Random random) {
        Craft craft = Craft.of(random.nextLong());
        Report report = Told.review(craft.aircraft());
        assertEquals(List.of(), Told.heavy(report), craft::toString);
        assertEquals(List.of(), Told.open(report), craft::toString);
    }
}
