package ringout.trace.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import ringout.graph.Circuit;
import ringout.graph.SmallAircraft;
import ringout.graph.Wiring;

class FaultReportTest {
    private static final Circuit CIRCUIT =
            Circuit.all(Wiring.of(SmallAircraft.sample("linewarden"))).get(0);

    /** The list says that W68 is in LOG-C2; the readings say that it is in LOG-AUX, and nobody plugged it there by mistake. */
    @Test
    void theOneRowThatFitsIsProposedWhenTheListMayBeWrong() {
        Scene scene = Scene.silent(List.of("GMC", "COR"))
                .withAlive(List.of("FC", "GN1", "IMU", "LOG"))
                .withLit(List.of("GMC"));
        FaultReport report = FaultReport.of(Diagnosis.of(CIRCUIT, scene)
                .with("ohms H-L GMC-C1 mated", "about 120")
                .with("wire volts GMC-C1", "3.3 V on one"));
        ListDoubt doubt = report.listDoubts().get(0);
        assertEquals("W68", doubt.row());
        assertEquals("LOG-C2", doubt.says());
        assertEquals("LOG-AUX", doubt.should());
        assertTrue(doubt.share() > 0.3, doubt.toString());
    }

    @Test
    void twoFaultsAreOfferedAndNotClaimedWhenOnlyAFarFetchedOneExplainsBoth() {
        Scene scene = Scene.silent(List.of("ADB", "MOT3")).withOthersAlive();
        FaultReport report = FaultReport.of(Diagnosis.of(CIRCUIT, scene));
        assertFalse(report.single());
        assertTrue(report.pairs().any());
        double most = report.pairs().atLeastOneOf().get(0).share();
        assertTrue(most < 0.9, "never certain: " + most);
        report.pairs().pairs().forEach(two -> {
            var one = ringout.trace.predict.Predictions.of(CIRCUIT).signature(two.one());
            var other = ringout.trace.predict.Predictions.of(CIRCUIT).signature(two.other());
            for (String unit : scene.silent()) {
                boolean shown = one.silent().contains(unit)
                        || other.silent().contains(unit)
                        || one.erratic().contains(unit)
                        || other.erratic().contains(unit);
                assertTrue(
                        shown,
                        unit + " with " + two.one().title() + " and "
                                + two.other().title());
            }
        });
    }

    @Test
    void noPairIsOfferedWhileOneFaultExplainsEverything() {
        Scene scene = Scene.silent(List.of("GMC")).withOthersAlive().withLit(List.of("GMC"));
        assertFalse(FaultReport.of(Diagnosis.of(CIRCUIT, scene)).pairs().any());
    }

    @Test
    void whatWasDisturbedByTestsIsProvedAgainToo() {
        Scene scene = Scene.silent(List.of("GMC")).withOthersAlive().withLit(List.of("GMC"));
        FaultReport report =
                FaultReport.of(Diagnosis.of(CIRCUIT, scene).with("ohms H-L GN1-C1 into lead", "about 120"));
        List<String> objects = report.retest().stream().map(Retest::object).toList();
        assertTrue(objects.containsAll(List.of("GMC", "GN1-C1", "W65")), objects.toString());
    }

    @Test
    void theTreeGoesOnFromEveryLikelyOutcome() {
        Scene scene = Scene.silent(List.of("GMC")).withOthersAlive().withLit(List.of("GMC"));
        SearchTree tree = SearchTree.grow(Diagnosis.of(CIRCUIT, scene), 2, 0.06);
        NextStep.Test test = (NextStep.Test) tree.step();
        long likely =
                test.branches().stream().filter(one -> one.chance() >= 0.06).count();
        assertEquals(likely, tree.limbs().size());
        assertTrue(tree.limbs().stream().anyMatch(limb -> !limb.then().limbs().isEmpty()));
        tree.limbs()
                .forEach(limb -> limb.then()
                        .limbs()
                        .forEach(leaf -> assertTrue(leaf.then().limbs().isEmpty())));
    }
}
