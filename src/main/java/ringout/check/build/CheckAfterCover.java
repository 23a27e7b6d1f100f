package ringout.check.build;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import ringout.check.form.Check;
import ringout.check.form.CheckInfo;
import ringout.check.form.Gaps;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.finding.Draft;
import ringout.finding.Severity;
import ringout.graph.order.BuildPlan;
import ringout.graph.order.Covers;
import ringout.graph.order.Item;
import ringout.graph.order.Items;
import ringout.graph.order.PlanStep;
import ringout.graph.order.Progress;
import ringout.graph.order.StepKind;
import ringout.model.PlannedTest;

/**
 * A test whose points lie under a lid that is closed by then.
 *
 * <p>Why it matters: the test is skipped, or the lid comes off again, which spoils other tests.
 *
 * <p>Condition: a planned measurement, or a step that checks a plug or pin, comes after a lid that hides the point, and no pin
 * of the same net can be reached with the lid on. Measured from another pin of the net is as good.
 *
 * <p>Does not see: whether a probe fits into a plug that can be reached; tests that look at a unit or try a function.
 *
 * <p>Reference: common practice, no source.
 */
@CheckInfo(
        code = "B02",
        name = "check-after-cover",
        severity = Severity.S2,
        since = "0.3",
        needs = {"what each lid hides", "order of the steps", "step and pins of each planned test"})
public final class CheckAfterCover implements Check {
    private static final Set<String> MEASURED = Set.of("ohms", "volts");

    /** A test point and the step it is used in. */
    private record Point(String test, PlanStep step, int pin, String name) {}

    /** A point that is out of reach and the lid in the way. */
    private record Hidden(Point point, Progress.Closed lid) {}

    @Override
    public void look(Situation at, Outcomes out) {
        if (!Lids.any(at)) {
            return;
        }
        Gaps gaps = new Gaps();
        List<Point> points = new ArrayList<>();
        planned(at, points, gaps);
        checked(at, points);
        if (points.isEmpty() && gaps.isEmpty()) {
            return;
        }
        Lids.ask(at, out);
        if (!points.isEmpty() && !at.aircraft().airframe().covers().isEmpty()) {
            out.looked();
        }
        Map<String, List<Hidden>> byTest = new LinkedHashMap<>();
        for (Point point : points) {
            Progress.of(at.circuit())
                    .hiding(point.step().index(), point.pin())
                    .filter(lid -> !reached(at, point))
                    .ifPresent(lid -> byTest.computeIfAbsent(point.test(), key -> new ArrayList<>())
                            .add(new Hidden(point, lid)));
        }
        byTest.values().forEach(hidden -> out.finding(draft(at, hidden)));
        gaps.tell(out, datum -> new Gaps.Way("ask the author of the procedure", 2));
        Lids.askUntold(at, out, BuildPlan.of(at.circuit()).untold());
    }

    private static void planned(Situation at, List<Point> points, Gaps gaps) {
        BuildPlan plan = BuildPlan.of(at.circuit());
        for (PlannedTest test : at.aircraft().record().tests()) {
            String name = "test " + test.id();
            if (test.kind().isMissing()) {
                gaps.add("kind", name);
            }
            boolean other = !test.state().or(at.state()).equals(at.state());
            if (other || !MEASURED.contains(test.kind().or("ohms").strip())) {
                continue;
            }
            Optional<PlanStep> step = test.step().known().flatMap(plan::step);
            if (step.isEmpty()) {
                gaps.add("step", name);
            } else if (test.pins().isEmpty()) {
                gaps.add("pins", name);
            } else {
                test.pins()
                        .forEach(pin ->
                                add(at, name, step.get(), Items.of(at.circuit()).find(pin), points));
            }
        }
    }

    /** Plugs and pins that a step checks, unless a planned test of that step says which pins are meant. */
    private static void checked(Situation at, List<Point> points) {
        for (PlanStep step : BuildPlan.of(at.circuit()).steps(StepKind.CHECK)) {
            if (points.stream().noneMatch(point -> point.step().equals(step))) {
                step.items().stream()
                        .filter(item -> !(item instanceof Item.OfUnit))
                        .forEach(item -> add(at, "step " + step.step().id(), step, item, points));
            }
        }
    }

    private static void add(Situation at, String test, PlanStep step, Item item, List<Point> points) {
        if (item instanceof Item.OfPin pin) {
            points.add(new Point(test, step, pin.vertex(), at.wiring().name(pin.vertex())));
        } else if (item instanceof Item.OfPlug plug) {
            int end = at.wiring().endPin(plug.unit(), plug.plug());
            for (int pin = at.wiring().firstPin(plug.unit(), plug.plug()); pin < end; pin++) {
                if (at.wiring().wiresAt(pin).length > 0) {
                    points.add(new Point(test, step, pin, at.wiring().plugName(plug.unit(), plug.plug())));
                }
            }
        }
    }

    /** Whether some pin of the same net is in reach when the step is done. */
    private static boolean reached(Situation at, Point point) {
        Progress progress = Progress.of(at.circuit());
        var nets = at.circuit().nets();
        for (int pin : nets.pins(nets.of(point.pin()))) {
            if (at.circuit().aboard(at.wiring().unitOf(pin))
                    && progress.hiding(point.step().index(), pin).isEmpty()) {
                return true;
            }
        }
        return false;
    }

    private static Draft draft(Situation at, List<Hidden> hidden) {
        Hidden first = hidden.get(0);
        PlanStep step = first.point().step();
        Covers covers = Covers.of(at.circuit());
        String lid = covers.name(first.lid().cover());
        String closed = first.lid().by().step().id();
        String points = String.join(
                " and ",
                hidden.stream().map(one -> one.point().name()).distinct().toList());
        String test = first.point().test();
        String named =
                test.startsWith("test") ? test + " in step " + step.step().id() : test;
        Draft draft = Draft.of(
                        Severity.S2,
                        "check after cover: " + named + " measures at " + points + ", under the " + lid
                                + " closed in step " + closed)
                .about(test, lid)
                .at(Lids.place(step))
                .at(Lids.place(first.lid().by()))
                .cause(Lids.cause(step))
                .sum("the " + lid + " hides " + points + "; no other pin of their nets is in reach; "
                        + Lids.again(covers, first.lid().cover()))
                .why("the test is skipped, or the lid comes off again and spoils other tests")
                .fix("do " + test + " before step " + closed + ", or bring a test point of " + points + " outside");
        hidden.forEach(one -> {
            for (int wire : at.wiring().wiresAt(one.point().pin())) {
                draft.seen(at.wiring().wires().get(wire).lead());
            }
        });
        return draft;
    }
}
