package ringout.draw.spacing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import ringout.draw.paper.Area;

class SpreadTest {
    @Test
    void thingsWithRoomStandWhereTheyWant() {
        Spread spread = Spread.of(List.of(10.0, 50.0), List.of(20.0, 20.0), 3, 0, 100);
        assertEquals(10, spread.middle(0), 0.1);
        assertEquals(50, spread.middle(1), 0.1);
    }

    @Property(seed = "20261125")
    void thingsKeepTheirOrderAndDistance(@ForAll Random random) {
        List<Double> wishes = ascending(random, 6, 200);
        List<Double> widths = new ArrayList<>();
        wishes.forEach(w -> widths.add(5 + random.nextDouble() * 20));
        Spread spread = Spread.of(wishes, widths, 3, 0, 250);
        for (int i = 1; i < wishes.size(); i++) {
            double left = spread.middle(i - 1) + widths.get(i - 1) / 2;
            assertTrue(spread.middle(i) - widths.get(i) / 2 >= left + 3 - 1e-6);
        }
        assertTrue(spread.middle(0) - widths.get(0) / 2 >= -1e-6);
        assertTrue(spread.middle(5) + widths.get(5) / 2 <= 250 + 1e-6);
    }

    private static List<Double> ascending(Random random, int count, double range) {
        List<Double> all = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            all.add(3.0 * i + random.nextDouble() * range);
        }
        Collections.sort(all);
        for (int i = 1; i < count; i++) {
            all.set(i, Math.max(all.get(i), all.get(i - 1) + 2));
        }
        return all;
    }

    /** Drawn out piece by piece, no two leaders touch. */
    @Property(seed = "20261125")
    void leadersDoNotTouch(@ForAll Random random) {
        List<Double> from = ascending(random, 7, 120);
        List<Double> to = ascending(random, 7, 120);
        int[] steps = Spread.steps(from, to);
        List<List<Area>> leaders = new ArrayList<>();
        for (int i = 0; i < steps.length; i++) {
            double turn = 1 + steps[i];
            leaders.add(List.of(
                    Area.between(from.get(i), 0, from.get(i), turn),
                    Area.between(from.get(i), turn, to.get(i), turn),
                    Area.between(to.get(i), turn, to.get(i), 20)));
        }
        for (int i = 0; i < leaders.size(); i++) {
            for (int j = i + 1; j < leaders.size(); j++) {
                for (Area a : leaders.get(i)) {
                    for (Area b : leaders.get(j)) {
                        assertFalse(a.grown(0.1).overlaps(b.grown(0.1)), i + " and " + j + " touch");
                    }
                }
            }
        }
    }
}
