package ringout.plan;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import ringout.graph.order.Before;
import ringout.graph.order.StepKind;
import ringout.plan.order.Moving;
import ringout.plan.order.Place;
import ringout.plan.order.SetupOrder;
import ringout.plan.order.Work;
import ringout.plan.task.HoldPoint;
import ringout.plan.task.Task;
import ringout.plan.task.TaskNet;

/**
 * Cuts the tasks into stages, one a hold point: a stage holds what must come before its hold and not before an earlier one.
 * What comes before no hold is left for the last stage.
 */
final class Stages {
    private final TaskNet net;
    private final List<List<Integer>> needs = new ArrayList<>();
    private final Map<String, Integer> zones = new LinkedHashMap<>();
    private Place at = Place.START;

    private Stages(TaskNet net, List<Before> links) {
        this.net = net;
        net.tasks().forEach(task -> needs.add(new ArrayList<>(2)));
        links.forEach(link -> needs.get(link.then()).add(link.first()));
    }

    static List<Stage> of(TaskNet net, List<Before> links) {
        return new Stages(net, links).find();
    }

    private List<Stage> find() {
        List<Stage> stages = new ArrayList<>();
        BitSet placed = new BitSet();
        List<HoldPoint> left = new ArrayList<>(net.holds());
        while (!left.isEmpty()) {
            HoldPoint hold = left.stream()
                    .filter(one -> left.stream().noneMatch(other -> !other.equals(one) && waits(one, other)))
                    .findFirst()
                    .orElseThrow();
            left.remove(hold);
            BitSet wanted = before(hold);
            if (left.isEmpty()) {
                wanted.set(0, net.tasks().size());
            }
            wanted.andNot(placed);
            placed.or(wanted);
            stages.add(stage(stages.size() + 1, hold, wanted));
        }
        return stages;
    }

    private boolean waits(HoldPoint one, HoldPoint other) {
        return before(one).get(other.sign());
    }

    /** All that must come before a hold, with it and what it allows at once. */
    private BitSet before(HoldPoint hold) {
        BitSet seen = new BitSet();
        Deque<Integer> open = new ArrayDeque<>(List.of(hold.then() < 0 ? hold.sign() : hold.then()));
        open.forEach(seen::set);
        while (!open.isEmpty()) {
            for (int task : needs.get(open.remove())) {
                if (!seen.get(task)) {
                    seen.set(task);
                    open.add(task);
                }
            }
        }
        return seen;
    }

    private Stage stage(int number, HoldPoint hold, BitSet wanted) {
        List<Integer> tasks = wanted.stream()
                .boxed()
                .sorted(Comparator.comparingInt(
                                (Integer task) -> net.tasks().get(task).turn())
                        .thenComparing(task -> net.tasks().get(task).kind() == StepKind.PHOTO)
                        .thenComparing(Comparator.naturalOrder()))
                .toList();
        List<Place> places =
                tasks.stream().map(task -> place(net.tasks().get(task))).toList();
        Work work = Work.of(places);
        Map<Integer, Integer> numbers = new LinkedHashMap<>();
        for (int i = 0; i < tasks.size(); i++) {
            numbers.put(tasks.get(i), i);
        }
        for (int i = 0; i < tasks.size(); i++) {
            for (int need : needs.get(tasks.get(i))) {
                if (wanted.get(need)) {
                    work.before(numbers.getOrDefault(need, i), i);
                }
            }
        }
        Place before = at;
        List<Integer> order = SetupOrder.of(work, Moving.USUAL, before);
        List<Integer> plain = work.plain();
        at = work.end(order, before);
        return new Stage(
                number,
                hold.stage(),
                hold,
                order.stream().map(tasks::get).toList(),
                before.side(),
                work.minutes(order, Moving.USUAL, before),
                work.minutes(plain, Moving.USUAL, before));
    }

    private Place place(Task task) {
        int zone = task.zone().isEmpty() ? Place.ANYWHERE : zones.computeIfAbsent(task.zone(), key -> zones.size());
        return new Place(zone, task.side());
    }
}
