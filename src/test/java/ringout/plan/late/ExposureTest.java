package ringout.plan.late;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

/** What is at stake, by hand. */
class ExposureTest {
    /**
     * Three joints: a clamp with two leads (0.02) under 35 min, tested now and as written; a plug (0.005) under 22 min, tested only in
     * the plan; an open row (0.02) under 22 min, tested in neither. As written: 0.02 x 35 x 0.1 + 0.005 x 22 + 0.02 x 22 = 0.07 + 0.11 +
     * 0.44 = 0.62. As planned: 0.07 + 0.011 + 0.44 = 0.521.
     */
    @Test
    void threeJoints() {
        Exposure exposure = new Exposure(
                List.of(
                        new Exposure.Term("K1P", 0.02, 35, true, true),
                        new Exposure.Term("T1", 0.005, 22, false, true),
                        new Exposure.Term("HA", 0.02, 22, false, false)),
                List.of());
        assertEquals(0.62, exposure.before(), 1e-12);
        assertEquals(0.521, exposure.after(), 1e-12);
    }

    @Test
    void anOpenRowGoesWrongMoreOftenThanAShroudedPlug() {
        assertTrue(JointRisk.OPEN_ROW.wrong() > JointRisk.SCREWED.wrong());
        assertTrue(JointRisk.SCREWED.wrong() > JointRisk.SHROUDED.wrong());
    }
}
