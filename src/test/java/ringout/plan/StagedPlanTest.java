package ringout.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.jgrapht.graph.DefaultEdge;
import org.jgrapht.graph.DirectedMultigraph;
import org.jgrapht.traverse.TopologicalOrderIterator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import ringout.graph.Circuit;
import ringout.graph.Wiring;
import ringout.graph.order.Before;
import ringout.graph.order.StepKind;
import ringout.model.Aircraft;
import ringout.model.Airframe;
import ringout.model.AsBuilt;
import ringout.model.Cover;
import ringout.model.Step;
import ringout.model.shape.Shape;
import ringout.plan.late.LastChance;
import ringout.plan.task.Task;
import ringout.read.AircraftReader;

/** The plans of the samples, held against what a technician expects of them and against JGraphT's topological order. */
class StagedPlanTest {
    private static final Map<String, Aircraft> SAMPLES = new ConcurrentHashMap<>();
    private static final Map<String, StagedPlan> PLANS = new ConcurrentHashMap<>();

    private static Aircraft sample(String name) {
        return SAMPLES.computeIfAbsent(
                name, key -> AircraftReader.read(Path.of("samples", key)).aircraft());
    }

    private static StagedPlan planned(String name) {
        return PLANS.computeIfAbsent(name, key -> of(sample(key)));
    }

    private static StagedPlan of(Aircraft aircraft) {
        return StagedPlans.of(Circuit.all(Wiring.of(aircraft)).get(0));
    }

    private static Aircraft withSteps(Aircraft aircraft, List<Step> steps) {
        return Shape.of(Aircraft.class)
                .with(aircraft, "record", Shape.of(AsBuilt.class).with(aircraft.record(), "steps", List.copyOf(steps)));
    }

    private static int find(StagedPlan plan, StepKind kind, String what) {
        for (int task = 0; task < plan.net().tasks().size(); task++) {
            Task one = plan.task(task);
            if (one.kind() == kind && one.what().startsWith(what)) {
                return task;
            }
        }
        throw new AssertionError("no task " + kind.word() + " " + what);
    }

    private static boolean isBefore(StagedPlan plan, int first, int then) {
        return plan.order().indexOf(first) < plan.order().indexOf(then);
    }

    private static List<String> signs(StagedPlan plan) {
        return plan.stages().stream()
                .map(stage -> plan.task(stage.hold().sign()).what())
                .toList();
    }

    @ParameterizedTest
    @ValueSource(strings = {"linewarden", "dewmaker", "starter"})
    void everyTaskIsDoneOnceAndAfterAllItNeeds(String name) {
        StagedPlan plan = planned(name);
        assertEquals(List.of(), plan.rings());
        List<Integer> order = plan.order();
        assertEquals(plan.net().tasks().size(), order.size());
        assertEquals(order.size(), new HashSet<>(order).size());
        for (Before link : plan.net().links()) {
            assertTrue(
                    isBefore(plan, link.first(), link.then()),
                    plan.task(link.first()).words() + " before "
                            + plan.task(link.then()).words());
        }
        assertEquals(order.size(), topological(plan).size(), "JGraphT finds no order where there is one");
        plan.stages().forEach(stage -> assertTrue(stage.minutes() <= stage.plainMinutes() + 1e-9, stage.name()));
    }

    private static List<Integer> topological(StagedPlan plan) {
        DirectedMultigraph<Integer, DefaultEdge> graph = new DirectedMultigraph<>(DefaultEdge.class);
        for (int task = 0; task < plan.net().tasks().size(); task++) {
            graph.addVertex(task);
        }
        plan.net().links().forEach(link -> graph.addEdge(link.first(), link.then()));
        List<Integer> order = new ArrayList<>();
        new TopologicalOrderIterator<>(graph).forEachRemaining(order::add);
        return order;
    }

    @Test
    void linewardenHoldsInTheirOrder() {
        StagedPlan plan = planned("linewarden");
        assertEquals(List.of("H1", "H2", "H3", "H4", "hold: before first power", "H5", "H6", "H7"), signs(plan));
        assertEquals("lower lid", plan.task(plan.stages().get(1).hold().then()).what());
        assertEquals("top plate", plan.task(plan.stages().get(3).hold().then()).what());
    }

    @Test
    void linewardenClampBarsComeBeforeTheLowerLid() {
        StagedPlan plan = planned("linewarden");
        int lid = find(plan, StepKind.CLOSE, "lower lid");
        for (String lead : List.of("W11", "W12", "W13", "W14", "W15", "W16")) {
            assertTrue(isBefore(plan, find(plan, StepKind.MAKE, lead + " at PDB-K"), lid), lead);
        }
        assertTrue(isBefore(plan, lid, find(plan, StepKind.CLOSE, "top plate")));
        assertTrue(isBefore(plan, find(plan, StepKind.CHECK, "torque and witness mark"), lid));
        assertTrue(isBefore(plan, find(plan, StepKind.OTHER, "thread W66"), find(plan, StepKind.CLOSE, "top plate")));
        assertTrue(isBefore(plan, find(plan, StepKind.ENERGISE, "stage U5"), find(plan, StepKind.FIT, "propeller CW")));
        assertTrue(isBefore(
                plan, find(plan, StepKind.CHECK, "propellers off"), find(plan, StepKind.ENERGISE, "stage U1")));
    }

    /** Six clamps and nothing else; 13 min and the top plate's 12 over it, a test of its own and one of the leads through the plate. */
    @Test
    void theLowerLidIsTheLastChanceOfSixClamps() {
        StagedPlan plan = planned("linewarden");
        LastChance lid = plan.lastChances().get(0);
        assertEquals("lower lid", lid.cover());
        assertEquals(2, lid.stage());
        assertEquals(
                List.of("PDB-K1P", "PDB-K2P", "PDB-K3P", "PDB-K1N", "PDB-K2N", "PDB-K3N"),
                lid.joints().stream().map(LastChance.Joint::name).toList());
        assertEquals(25.0, lid.openMinutes().orElseThrow());
        assertEquals(35.0, lid.joints().get(0).lateMinutes().orElseThrow());
        assertEquals(List.of("W11", "W14"), lid.joints().get(0).leads());
        assertEquals(List.of(), lid.settings());
    }

    @Test
    void theTopPlateHidesASwitchAndJointsNothingElseShows() {
        LastChance plate = planned("linewarden").lastChances().get(1);
        assertEquals(List.of("terminator switch of CAN2 on LOG"), plate.settings());
        LastChance.Joint inside = plate.joints().stream()
                .filter(joint -> joint.name().equals("IMU-C2"))
                .findFirst()
                .orElseThrow();
        LastChance.Joint outside = plate.joints().stream()
                .filter(joint -> joint.name().equals("FC-A1"))
                .findFirst()
                .orElseThrow();
        assertEquals("", inside.outside(), "the lead from IMU to LOG shows nowhere outside");
        assertEquals("LGC-CMD", outside.outside());
        LastChance.Joint tap = plate.joints().stream()
                .filter(joint -> joint.name().equals("PDB-T1"))
                .findFirst()
                .orElseThrow();
        assertEquals("", tap.outside(), "the net shows at the packs, but not the contact of the tap");
    }

    @Test
    void aNameUnderALidThatMeansNothingIsAskedFor() {
        Aircraft clean = sample("linewarden");
        Shape<Cover> shape = Shape.of(Cover.class);
        List<Cover> covers = clean.airframe().covers().stream()
                .map(cover -> cover.name().equals("lower lid")
                        ? shape.with(cover, "hides", List.of("PDB-K1P", "PDB-K9"))
                        : shape.with(cover, "hides", List.of()))
                .toList();
        Airframe airframe = Shape.of(Airframe.class).with(clean.airframe(), "covers", covers);
        StagedPlan plan = of(Shape.of(Aircraft.class).with(clean, "airframe", airframe));
        List<String> open =
                plan.lastChances().stream().flatMap(lid -> lid.open().stream()).toList();
        assertEquals(2, open.size(), open.toString());
        assertTrue(open.stream().anyMatch(words -> words.startsWith("what is meant by PDB-K9 under the lower lid")));
        assertTrue(open.contains("what lies under the top plate"));
    }

    @Test
    void thePlanPutsLessAtStakeThanTheProcedure() {
        StagedPlan plan = planned("linewarden");
        assertTrue(plan.exposure().after() < plan.exposure().before());
        assertTrue(plan.exposure().terms().stream().allMatch(term -> term.provedAsPlanned()));
        StagedPlan bare = of(withSteps(sample("linewarden"), List.of()));
        assertTrue(bare.exposure().before() > plan.exposure().before(), "no procedure proves nothing before its lid");
    }

    @Test
    void withoutAProcedureTheHoldsAreTheUsualOnes() {
        StagedPlan plan = of(withSteps(sample("linewarden"), List.of()));
        assertEquals(
                List.of(
                        "hold: addresses and settings",
                        "hold: before closing the lower lid",
                        "hold: before closing the top plate",
                        "hold: before first power",
                        "hold: before motors turn",
                        "hold: before propellers",
                        "hold: release"),
                signs(plan));
        assertEquals(List.of(), plan.rings());
        int last = plan.stages().size();
        assertEquals(last, plan.stages().get(last - 1).number());
        assertTrue(
                isBefore(plan, find(plan, StepKind.MAKE, "W13 at PDB-K3P"), find(plan, StepKind.CLOSE, "lower lid")));
    }

    /** Speed controllers that all leave the factory as 10: each is set before its bus lead is made. */
    @Test
    void unitsOfEqualAddressAreAddressedOneAtATime() {
        StagedPlan plan = of(withSteps(sample("dewmaker"), List.of()));
        int set = find(plan, StepKind.SET, "address of CANE on ESC5");
        int make = find(plan, StepKind.MAKE, "W43 at ESC5-C1");
        assertTrue(isBefore(plan, set, make));
        assertTrue(plan.net().links().stream()
                .anyMatch(link -> link.first() == set
                        && link.then() == make
                        && link.why().contains("leave the factory with address 10")));
        assertFalse(plan.net().links().stream()
                .anyMatch(link -> plan.task(link.first()).what().startsWith("address of CANC on GNA")
                        && plan.task(link.then()).kind() == StepKind.MAKE));
    }

    @Test
    void packsAreComparedBeforeTheSecondIsPlugged() {
        StagedPlan plan = planned("dewmaker");
        int compare = find(plan, StepKind.CHECK, "measure PKA and PKB");
        assertEquals("7.2", plan.task(compare).step());
        assertTrue(isBefore(plan, compare, find(plan, StepKind.MAKE, "W04 at PKB-POS")));
        assertTrue(isBefore(plan, find(plan, StepKind.MAKE, "W02 at PKA-POS"), compare));
    }

    /** A test that wants the closed plate and what the plate hides: told in words, with the cheapest way out. */
    @Test
    void tellsARingInWordsAndCutsItWhereItIsCheapest() {
        Aircraft clean = sample("linewarden");
        Shape<Step> shape = Shape.of(Step.class);
        List<Step> steps = new ArrayList<>();
        for (Step step : clean.record().steps()) {
            steps.add(step.id().equals("5.3") ? shape.with(step, "after", List.of("8.1")) : step);
        }
        StagedPlan plan = of(withSteps(clean, steps));
        assertEquals(1, plan.rings().size());
        Ring ring = plan.rings().get(0);
        assertTrue(
                ring.words().stream().anyMatch(words -> words.contains("step 5.3 says after step 8.1")),
                ring.words()::toString);
        assertTrue(ring.words().stream().anyMatch(words -> words.contains("top plate hides")), ring.words()::toString);
        assertEquals(1, ring.cut().size());
        assertEquals("open top plate again", ring.cut().get(0).cut());
        assertEquals(12, ring.cut().get(0).minutes());
        for (int i = 0; i < ring.links().size(); i++) {
            assertEquals(
                    ring.links().get(i).then(),
                    ring.links().get((i + 1) % ring.links().size()).first());
        }
        assertEquals(plan.net().tasks().size(), plan.order().size());
    }

    /**
     * The address switch is under the plate, the board must have power to set it, and power comes after the plate: the way
     * out is a bench supply lead with the plate open.
     */
    @Test
    void aSettingThatNeedsPowerUnderALidIsDoneOnABenchSupply() {
        Aircraft clean = sample("linewarden");
        Shape<Step> shape = Shape.of(Step.class);
        List<Step> steps = new ArrayList<>();
        for (Step step : clean.record().steps()) {
            if (!List.of("8.2", "8.3").contains(step.id())) {
                steps.add(step.id().equals("1.8") ? shape.with(step, "after", List.of("9.1")) : step);
            }
        }
        StagedPlan plan = of(withSteps(clean, steps));
        assertEquals(1, plan.rings().size());
        Ring ring = plan.rings().get(0);
        assertEquals(
                "power up on a bench supply lead with the top plate open",
                ring.cut().get(0).cut());
        assertEquals(5, ring.cut().get(0).minutes());
        int set = find(plan, StepKind.SET, "terminator off");
        assertTrue(isBefore(plan, find(plan, StepKind.ENERGISE, "stage U1"), set));
        assertTrue(isBefore(plan, set, find(plan, StepKind.CLOSE, "top plate")));
    }

    /** A plate that carries the power board it hides: nobody can build that. */
    @Test
    void saysWhenThereIsNoWayOut() {
        Aircraft clean = sample("linewarden");
        Shape<Cover> shape = Shape.of(Cover.class);
        List<Cover> covers = clean.airframe().covers().stream()
                .map(cover -> cover.name().equals("top plate")
                        ? shape.with(
                                shape.with(cover, "carries", List.of("PDB")), "minutes", ringout.model.Datum.unknown())
                        : cover)
                .toList();
        Airframe airframe = Shape.of(Airframe.class).with(clean.airframe(), "covers", covers);
        StagedPlan plan = of(Shape.of(Aircraft.class).with(clean, "airframe", airframe));
        assertEquals(List.of(), plan.stages());
        assertEquals(1, plan.rings().size());
        assertEquals(List.of(), plan.rings().get(0).cut());
        assertTrue(plan.rings().get(0).words().stream().anyMatch(words -> words.contains("carried by top plate")));
        assertEquals(
                Optional.empty(),
                plan.lastChances().stream()
                        .flatMap(list -> list.joints().stream())
                        .filter(joint -> joint.lateMinutes().isPresent())
                        .findFirst());
    }
}
