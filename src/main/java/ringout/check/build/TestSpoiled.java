package ringout.check.build;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import ringout.check.form.Check;
import ringout.check.form.CheckInfo;
import ringout.check.form.Gaps;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.finding.Draft;
import ringout.finding.Place;
import ringout.finding.Severity;
import ringout.graph.Nets;
import ringout.graph.Wire;
import ringout.graph.order.BuildPlan;
import ringout.graph.order.Item;
import ringout.graph.order.Items;
import ringout.graph.order.LeadEnd;
import ringout.graph.order.PlanStep;
import ringout.graph.order.StepKind;
import ringout.model.Change;
import ringout.model.PinRole;
import ringout.model.PlannedTest;
import ringout.model.Reading;

/**
 * A test of something that was touched after it.
 *
 * <p>Why it matters: a plug that was pulled and pushed in again is a new joint; the old reading proves nothing about it.
 *
 * <p>Condition: a reading or a planned measurement rests on the leads of the nets of its points, 0V apart. A step after the
 * measurement breaks or makes one of them again, or a change on record of a later day names one of them or a unit at its ends,
 * and no later measurement of the same net follows. Making a plug again counts as touching.
 *
 * <p>Does not see: leads of 0V; what was touched and not written down.
 *
 * <p>Reference: common practice, no source.
 */
@CheckInfo(
        code = "B09",
        name = "test-spoiled-by-later-work",
        severity = Severity.S3,
        since = "0.3",
        needs = {"day of each reading and change", "step of each planned test"})
public final class TestSpoiled implements Check {
    @Override
    public void look(Situation at, Outcomes out) {
        Gaps gaps = new Gaps();
        if (!at.aircraft().record().steps().isEmpty()) {
            planned(at, out);
        }
        List<Change> changes = at.aircraft().record().changes();
        if (!changes.isEmpty()) {
            at.aircraft().record().readings().forEach(reading -> changed(at, out, reading, changes, gaps));
        }
        gaps.tell(out, datum -> new Gaps.Way("ask who was there", 2));
    }

    private static void planned(Situation at, Outcomes out) {
        BuildPlan plan = BuildPlan.of(at.circuit());
        List<PlannedTest> tests = at.aircraft().record().tests();
        for (PlannedTest test : tests) {
            Optional<PlanStep> step = test.step().known().flatMap(plan::step);
            boolean measured = test.kind().is("ohms") || test.kind().is("volts");
            if (measured && step.isPresent() && test.state().or(at.state()).equals(at.state())) {
                Set<Integer> rows = rows(at, test.pins());
                Optional<PlanStep> touch = touching(at, plan, rows, step.get());
                boolean again = touch.isPresent()
                        && tests.stream().anyMatch(other -> repeats(at, plan, other, rows, touch.get()));
                if (touch.isPresent() && !again) {
                    out.finding(spoiled(at, "test " + test.id(), test, step.get(), touch.get(), rows));
                } else {
                    out.looked();
                }
            }
        }
    }

    /** Rows of the leads that a measurement between points rests on. */
    private static Set<Integer> rows(Situation at, List<String> points) {
        Set<Integer> rows = new HashSet<>();
        Nets nets = at.whole().nets();
        for (String point : points) {
            if (Items.of(at.circuit()).find(point) instanceof Item.OfPin on && !zero(at, nets, on.vertex())) {
                for (int pin : nets.pins(nets.of(on.vertex()))) {
                    for (int wire : at.wiring().wiresAt(pin)) {
                        rows.add(at.wiring().wires().get(wire).leadIndex());
                    }
                }
            }
        }
        return rows;
    }

    private static boolean zero(Situation at, Nets nets, int vertex) {
        for (int pin : nets.pins(nets.of(vertex))) {
            if (at.wiring().is(pin, PinRole.ZERO_V) || at.wiring().is(pin, PinRole.PACK_MINUS)) {
                return true;
            }
        }
        return false;
    }

    /** The last step after a test that breaks one of the leads, or makes one again that was made before the test. */
    private static Optional<PlanStep> touching(Situation at, BuildPlan plan, Set<Integer> rows, PlanStep test) {
        PlanStep last = test;
        for (PlanStep step : plan.steps().subList(test.index() + 1, plan.steps().size())) {
            boolean touches = step.is(StepKind.BREAK) || step.is(StepKind.MAKE);
            if (touches
                    && BuildPlan.ends(Items.of(at.circuit()), at.wiring(), step).stream()
                            .anyMatch(end -> rows.contains(end.row())
                                    && (step.is(StepKind.BREAK) || madeBefore(plan, end, test)))) {
                last = step;
            }
        }
        return last.equals(test) ? Optional.empty() : Optional.of(last);
    }

    private static boolean madeBefore(BuildPlan plan, LeadEnd end, PlanStep test) {
        return plan.making(end).stream().anyMatch(step -> step.index() <= test.index());
    }

    private static boolean repeats(Situation at, BuildPlan plan, PlannedTest other, Set<Integer> rows, PlanStep touch) {
        boolean later =
                other.step().known().flatMap(plan::step).stream().anyMatch(step -> step.index() > touch.index());
        return later && rows(at, other.pins()).containsAll(rows);
    }

    private static Draft spoiled(
            Situation at, String name, PlannedTest test, PlanStep step, PlanStep touch, Set<Integer> rows) {
        Draft draft = Draft.of(
                        Severity.S3,
                        "test spoiled by later work: " + name + " in step "
                                + step.step().id() + " rests on what step "
                                + touch.step().id() + " touches after it")
                .about(name)
                .at(new Place(test.at(), test.id(), name + ": " + String.join(" to ", test.pins())))
                .at(Lids.place(touch))
                .cause(Lids.cause(touch))
                .sum("step " + touch.step().id() + " comes after step "
                        + step.step().id() + "; later measurements of the same nets: 0")
                .why("a plug pulled and pushed in again is a new joint: the old reading proves nothing about it")
                .fix("do " + name + " after step " + touch.step().id() + ", or once more");
        BuildPlan.ends(Items.of(at.circuit()), at.wiring(), touch).stream()
                .map(LeadEnd::row)
                .filter(rows::contains)
                .distinct()
                .forEach(row -> draft.at(at.aircraft().leads().get(row)));
        return draft;
    }

    private static void changed(Situation at, Outcomes out, Reading reading, List<Change> changes, Gaps gaps) {
        List<String> points = List.of(reading.where().strip().split("\\s+to\\s+|\\s*[,;]\\s*|\\s+", -1));
        Set<String> names = names(at, rows(at, points));
        for (Change change : changes) {
            List<String> touched =
                    change.objects().stream().filter(names::contains).toList();
            if (touched.isEmpty()) {
                continue;
            }
            if (reading.date().isMissing() || change.date().isMissing()) {
                gaps.add("day", reading.date().isMissing() ? "reading " + reading.where() : "change " + change.id());
            } else if (change.date().or("").equals(reading.date().or("")) && !later(at, reading, change, 0)) {
                gaps.add("time of day", "change " + change.id() + " and of reading " + reading.where());
            } else if (change.date().or("").compareTo(reading.date().or("")) > 0 && !later(at, reading, change, -1)) {
                out.finding(spoiled(reading, change, touched));
            } else {
                out.looked();
            }
        }
    }

    /** The leads, and the units and plugs at their ends. */
    private static Set<String> names(Situation at, Set<Integer> rows) {
        Set<String> names = new HashSet<>();
        for (Wire wire : at.wiring().wires()) {
            if (rows.contains(wire.leadIndex())) {
                names.add(wire.lead().id());
                for (int pin : new int[] {wire.fromPin(), wire.toPin()}) {
                    names.add(at.directory().name(at.wiring().unitOf(pin)));
                    names.add(at.wiring()
                            .plugName(at.wiring().unitOf(pin), at.wiring().plugIndex(pin)));
                }
            }
        }
        return names;
    }

    /** Whether the place was read again after the change: on a day that compares with its day as more than this. */
    private static boolean later(Situation at, Reading reading, Change change, int than) {
        return at.aircraft().record().readings().stream()
                .anyMatch(other -> other.where().equalsIgnoreCase(reading.where())
                        && other.date().or("").compareTo(change.date().or("")) > than);
    }

    private static Draft spoiled(Reading reading, Change change, List<String> touched) {
        List<String> about = new ArrayList<>(List.of(reading.where(), "change " + change.id()));
        return Draft.of(
                        Severity.S3,
                        "test spoiled by later work: " + reading.where() + " was read on "
                                + reading.date().or("")
                                + ", change " + change.id() + " touched " + String.join(", ", touched) + " on "
                                + change.date().or(""))
                .about(about)
                .at(new Place(reading.at(), reading.where(), "reading " + reading.where()))
                .at(new Place(change.at(), change.id(), "change " + change.id()))
                .cause("change " + change.id())
                .sum(change.date().or("") + " is after " + reading.date().or("") + "; later readings there: 0")
                .why("what was touched is a new joint: the old reading proves nothing about it")
                .meter("measure " + reading.where() + " again")
                .fix("measure " + reading.where() + " again after change " + change.id());
    }
}
