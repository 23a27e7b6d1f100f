package ringout.plan.task;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import ringout.graph.order.Before;
import ringout.graph.order.LeadEnd;
import ringout.graph.order.PlanStep;
import ringout.graph.order.StepKind;
import ringout.plan.order.Side;

/**
 * Hold points: before every lid, before the first power, before motors turn, before propellers, and the release; besides
 * those the procedure has. A hold of the procedure that stands before one of these is that one.
 */
final class HoldTasks {
    /** A place that needs a hold. */
    private record Need(String stage, int task, boolean lid, int turn) {}

    /** Signing at another time. Judgement. */
    static final double SIGN_MINUTES = 1;

    private final TaskList list;
    private final Set<LeadEnd> late;
    private final List<HoldPoint> holds = new ArrayList<>();

    /** Place in the procedure of each hold, of those the procedure lacks that of what they stand before. */
    private final List<Integer> turns = new ArrayList<>();

    private HoldTasks(TaskList list, Set<LeadEnd> late) {
        this.list = list;
        this.late = late;
    }

    /** Adds all holds, each after what it is signed for. {@return them in their order} */
    static List<HoldPoint> addTo(TaskList list, List<Integer> settings, PowerTasks power) {
        HoldTasks tasks = new HoldTasks(list, power.late());
        tasks.holds(settings, power);
        tasks.chain();
        tasks.settings(settings);
        tasks.written();
        return List.copyOf(tasks.holds);
    }

    private void holds(List<Integer> settings, PowerTasks power) {
        List<Need> needs = needs(power);
        List<PlanStep> signs = new ArrayList<>(list.procedure.steps(StepKind.SIGN));
        if (signs.isEmpty() && !settings.isEmpty()) {
            hold("addresses and settings", sign("addresses and settings"), -1, Task.UNWRITTEN, settings);
        }
        for (Need need : needs) {
            List<PlanStep> before = signs.stream()
                    .filter(step -> need.turn() != Task.UNWRITTEN && step.index() < need.turn())
                    .toList();
            signs.removeAll(before);
            for (int i = 0; i < before.size() - 1; i++) {
                own(before.get(i));
            }
            if (before.isEmpty()) {
                hold(need.stage(), sign("before " + need.stage()), need);
            } else {
                PlanStep last = before.get(before.size() - 1);
                hold(need.stage(), list.taskOf(last, StepKind.SIGN).orElseThrow(), need);
            }
        }
        for (int i = 0; i < signs.size() - 1; i++) {
            own(signs.get(i));
        }
        release(signs, power);
    }

    private void release(List<PlanStep> signs, PowerTasks power) {
        List<Integer> last = new ArrayList<>(power.propellers());
        if (last.isEmpty() && power.motors() >= 0) {
            last.add(power.motors());
        }
        if (!signs.isEmpty()) {
            PlanStep step = signs.get(signs.size() - 1);
            hold("release", list.taskOf(step, StepKind.SIGN).orElseThrow(), -1, step.index(), last);
        } else if (!last.isEmpty()) {
            hold("release", sign("release"), -1, Task.UNWRITTEN, last);
        }
    }

    private int sign(String what) {
        return list.add(StepKind.SIGN, "hold: " + what, "", Side.EITHER);
    }

    private void own(PlanStep step) {
        String stage = step.step().stage().or(step.words()).replaceFirst("^\\d+\\s+", "");
        hold(stage, list.taskOf(step, StepKind.SIGN).orElseThrow(), -1, step.index(), List.of());
    }

    /** A hold before something: all that must come before that must come before the signature. */
    private void hold(String stage, int sign, Need need) {
        List<Integer> proved = list.links.stream()
                .filter(link -> link.then() == need.task() && link.first() != sign)
                .map(Before::first)
                .toList();
        int turn = list.tasks.get(sign).written() ? list.tasks.get(sign).turn() : need.turn();
        hold(stage, sign, need.lid() ? need.task() : -1, turn, proved);
        list.before(sign, need.task(), "it is signed before");
    }

    private void hold(String stage, int sign, int then, int turn, List<Integer> proved) {
        proved.forEach(task -> list.before(
                task,
                sign,
                "the signature is for it",
                "sign " + list.tasks.get(sign).what() + " with "
                        + list.tasks.get(task).words() + " open",
                SIGN_MINUTES));
        holds.add(new HoldPoint(stage, sign, then));
        turns.add(turn);
    }

    /** Lids from the inside out, then power, motors, propellers; where the procedure tells, in its order. */
    private List<Need> needs(PowerTasks power) {
        List<Need> needs = new ArrayList<>();
        List<Integer> lids = new ArrayList<>();
        for (int cover = 0; cover < list.covers.all().size(); cover++) {
            lids.add(cover);
        }
        lids.sort(Comparator.comparingInt(cover -> -list.covers.over(cover).size()));
        lids.forEach(cover -> needs.add(need(
                "closing the " + list.covers.name(cover), list.order.closes().get(cover), true)));
        if (power.first() >= 0) {
            needs.add(need("first power", power.first(), false));
        }
        if (power.motors() >= 0) {
            needs.add(need("motors turn", power.motors(), false));
        }
        power.propellers().stream().findFirst().ifPresent(fit -> needs.add(need("propellers", fit, false)));
        List<Need> written = needs.stream()
                .filter(need -> need.turn() != Task.UNWRITTEN)
                .sorted(Comparator.comparingInt(Need::turn))
                .toList();
        int next = 0;
        for (int i = 0; i < needs.size(); i++) {
            if (needs.get(i).turn() != Task.UNWRITTEN) {
                needs.set(i, written.get(next++));
            }
        }
        return needs;
    }

    private Need need(String stage, int task, boolean lid) {
        return new Need(stage, task, lid, list.tasks.get(task).turn());
    }

    private void chain() {
        for (int i = 1; i < holds.size(); i++) {
            HoldPoint before = holds.get(i - 1);
            HoldPoint hold = holds.get(i);
            list.before(
                    before.then() < 0 ? before.sign() : before.then(),
                    hold.sign(),
                    "hold after hold",
                    "sign " + list.tasks.get(hold.sign()).what() + " first",
                    SIGN_MINUTES);
        }
    }

    /** What a step does is done before the next hold of the procedure, and what looks at something closed, after it is. */
    private void written() {
        for (PlanStep step : list.procedure.steps()) {
            Optional<HoldPoint> next = next(turn(step));
            for (int act : list.order.ofStep(step.index())) {
                if (next.isPresent() && list.tasks.get(act).kind() != StepKind.SIGN) {
                    before(act, step, next.get());
                }
            }
            if (step.is(StepKind.CHECK) || step.is(StepKind.OTHER)) {
                list.taskOf(step, step.kind().orElse(StepKind.OTHER)).ifPresent(act -> after(act, step));
            }
        }
    }

    /** The place of a step in the procedure, or of the last step it says it waits for. */
    private int turn(PlanStep step) {
        int turn = step.index();
        for (String id : step.step().after()) {
            turn = Math.max(turn, list.procedure.step(id).map(PlanStep::index).orElse(turn));
        }
        return turn;
    }

    /** The first hold after a place in the procedure. */
    private Optional<HoldPoint> next(int turn) {
        for (int i = 0; i < holds.size(); i++) {
            if (turns.get(i) != Task.UNWRITTEN && turns.get(i) > turn) {
                return Optional.of(holds.get(i));
            }
        }
        return Optional.empty();
    }

    /** Settings are signed for with the first that the procedure makes, else with the first hold of all. */
    private void settings(List<Integer> settings) {
        int first = settings.stream()
                .map(task -> list.tasks.get(task).turn())
                .min(Comparator.naturalOrder())
                .orElse(Task.UNWRITTEN);
        Optional<HoldPoint> hold = next(first).or(() -> holds.stream().findFirst());
        hold.ifPresent(point -> settings.stream()
                .filter(task -> !list.tasks.get(task).written())
                .forEach(task -> list.before(
                        task,
                        point.sign(),
                        "settings are cheapest on the bench",
                        "set it later, where it sits",
                        TaskList.AGAIN_MINUTES)));
    }

    /** Whether a task makes an end later than its step says: its unit is not there yet, or it waits for its stage of power. */
    private boolean comesLater(int act, PlanStep step) {
        return list.order.makes().entrySet().stream()
                .filter(end -> end.getValue() == act)
                .map(Map.Entry::getKey)
                .anyMatch(end -> late.contains(end)
                        || list.tasks
                                        .get(list.order.fits().getOrDefault(end.unit(), act))
                                        .turn()
                                > step.index());
    }

    private void before(int act, PlanStep step, HoldPoint next) {
        if (!comesLater(act, step) && list.tasks.get(act).kind() != StepKind.ENERGISE) {
            list.before(
                    act,
                    next.sign(),
                    "the procedure has step " + step.step().id() + " before it",
                    "ask the author whether step " + step.step().id() + " may come later",
                    TaskList.ASK_MINUTES);
        }
    }

    /** A look that comes after a lid in the procedure, at something the lid does not hide, is a look at the closed aircraft. */
    private void after(int act, PlanStep step) {
        for (int close : list.order.closes()) {
            Task lid = list.tasks.get(close);
            boolean later = lid.written() && lid.turn() < step.index();
            boolean under = list.links.stream().anyMatch(link -> link.first() == act && link.then() == close);
            if (later && !under) {
                list.before(
                        close,
                        act,
                        "the procedure has step " + step.step().id() + " after it",
                        "do step " + step.step().id() + " with the lid open",
                        SIGN_MINUTES);
            }
        }
    }
}
