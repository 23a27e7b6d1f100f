package ringout.plan;

import java.util.List;
import ringout.plan.late.Exposure;
import ringout.plan.late.LastChance;
import ringout.plan.power.PowerUp;
import ringout.plan.task.Task;
import ringout.plan.task.TaskNet;

/**
 * The plan of a build.
 *
 * @param net all tasks, and what must come before what
 * @param rings tasks that waited for each other, with the way out taken
 * @param stages stages in their order; none when some ring has no way out
 * @param lastChances what each lid hides for the first time, in the order in which lids are closed
 * @param exposure what is at stake under lids, as written and as planned
 * @param powerUp the first power-up
 */
public record StagedPlan(
        TaskNet net,
        List<Ring> rings,
        List<Stage> stages,
        List<LastChance> lastChances,
        Exposure exposure,
        PowerUp powerUp) {
    /** {@return a task by its number} */
    public Task task(int number) {
        return net.tasks().get(number);
    }

    /** {@return all tasks in the order of the plan} */
    public List<Integer> order() {
        return stages.stream().flatMap(stage -> stage.tasks().stream()).toList();
    }
}
