package ringout.graph.order;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.function.IntPredicate;
import ringout.graph.Circuit;

/** Which lids are closed when a step is done, in the order of the procedure. */
public final class Progress {
    private final BuildPlan plan;
    private final Covers covers;
    private final List<BitSet> closed = new ArrayList<>();
    private final List<PlanStep> without = new ArrayList<>();

    private Progress(Circuit circuit) {
        this.plan = BuildPlan.of(circuit);
        this.covers = Covers.of(circuit);
        BitSet now = new BitSet();
        for (PlanStep step : plan.steps()) {
            closed.add((BitSet) now.clone());
            boolean closes = step.is(StepKind.CLOSE);
            if (closes || step.is(StepKind.OPEN)) {
                Optional<Integer> cover = step.step().cover().known().flatMap(covers::find);
                cover.ifPresent(number -> now.set(number, closes));
                if (cover.isEmpty()) {
                    without.add(step);
                }
            }
        }
    }

    /** The progress of a procedure; made once. */
    public static Progress of(Circuit circuit) {
        return circuit.know(Progress.class, Progress::new);
    }

    /** Steps that close or open a lid nobody declared or named. */
    public List<PlanStep> withoutCover() {
        return without;
    }

    /** A closed lid that hides a pin when a step is done, and the step that closed it. */
    public Optional<Closed> hiding(int step, int pin) {
        return closed.get(step).stream()
                .filter(cover -> covers.hides(cover, pin))
                .mapToObj(cover -> new Closed(cover, closing(cover, step)))
                .findFirst();
    }

    /** A closed lid that hides some pin of a plug when a step is done, and the step that closed it. */
    public Optional<Closed> hiding(int step, int unit, int plug) {
        return closed.get(step).stream()
                .filter(cover -> covers.hides(cover, unit, plug))
                .mapToObj(cover -> new Closed(cover, closing(cover, step)))
                .findFirst();
    }

    /**
     * A closed lid.
     *
     * @param cover its number
     * @param by the step that closed it
     */
    public record Closed(int cover, PlanStep by) {}

    private PlanStep closing(int cover, int before) {
        PlanStep last = plan.steps().get(before);
        for (PlanStep step : plan.steps().subList(0, before)) {
            if (closes(step, cover)) {
                last = step;
            }
        }
        return last;
    }

    private boolean closes(PlanStep step, int cover) {
        return step.is(StepKind.CLOSE)
                && step.step().cover().known().flatMap(covers::find).stream().anyMatch(found -> found == cover);
    }

    /** The first step that closes a lid. */
    public Optional<PlanStep> firstClosing(int cover) {
        return plan.steps().stream().filter(step -> closes(step, cover)).findFirst();
    }

    /** Lids no step closes. */
    public List<Integer> neverClosed() {
        List<Integer> never = new ArrayList<>();
        for (int cover = 0; cover < covers.all().size(); cover++) {
            if (firstClosing(cover).isEmpty()) {
                never.add(cover);
            }
        }
        return never;
    }

    /** The first closing of a lid that hides one of some pins: after it they cannot be reached. */
    public Optional<Closed> lastChance(BitSet pins) {
        return firstClosing(cover -> covers.pins(cover).intersects(pins));
    }

    /** The first closing of a lid that hides a whole unit: after it its switches cannot be reached. */
    public Optional<Closed> lastChance(int unit) {
        return firstClosing(cover -> covers.hidesUnit(cover, unit));
    }

    private Optional<Closed> firstClosing(IntPredicate wanted) {
        for (PlanStep step : plan.steps(StepKind.CLOSE)) {
            Optional<Integer> cover = step.step().cover().known().flatMap(covers::find);
            if (cover.isPresent() && wanted.test(cover.get())) {
                return Optional.of(new Closed(cover.get(), step));
            }
        }
        return Optional.empty();
    }
}
