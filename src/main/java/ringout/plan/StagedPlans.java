package ringout.plan;

import java.util.List;
import ringout.graph.Circuit;
import ringout.plan.late.Lateness;
import ringout.plan.power.PowerUp;
import ringout.plan.power.PowerUps;
import ringout.plan.task.TaskNet;

/** Makes the plan of a build. */
public final class StagedPlans {
    private StagedPlans() {}

    /** {@return the plan of an aircraft in a state} */
    public static StagedPlan of(Circuit circuit) {
        PowerUp powerUp = PowerUps.of(circuit);
        TaskNet net = TaskNet.of(circuit, powerUp);
        Rings rings = new Rings(net);
        List<Stage> stages = rings.open() ? Stages.of(net, rings.kept()) : List.of();
        List<Integer> order =
                stages.stream().flatMap(stage -> stage.tasks().stream()).toList();
        int[] stageOf = new int[net.tasks().size()];
        stages.forEach(stage -> stage.tasks().forEach(task -> stageOf[task] = stage.number()));
        return new StagedPlan(
                net,
                rings.rings(),
                stages,
                Lateness.lists(circuit, net, order, stageOf),
                Lateness.exposure(circuit, net, order),
                powerUp);
    }
}
