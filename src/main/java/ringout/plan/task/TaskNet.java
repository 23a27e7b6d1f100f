package ringout.plan.task;

import java.util.ArrayList;
import java.util.List;
import ringout.graph.Circuit;
import ringout.graph.order.Before;
import ringout.plan.power.PowerUp;

/**
 * All tasks of a build and which must come before which: what the order of building knows (units before their plugs, what
 * lies under a lid before the lid), and on top of it proofs and photos before each lid, settings one at a time, leads
 * through holes, the first power-up stage by stage, and hold points.
 *
 * @param tasks all tasks
 * @param links what must come before what, by numbers of tasks
 * @param holds hold points in their order
 * @param joints plugs and joints under lids, and what proves them
 * @param settings tasks that set something
 * @param closes task that closes each lid
 */
public record TaskNet(
        List<Task> tasks,
        List<Before> links,
        List<HoldPoint> holds,
        List<HiddenJoint> joints,
        List<Integer> settings,
        List<Integer> closes) {
    /** What a signature at another time costs in minutes: a need that is no more than that is a matter of paper. */
    public static final double PAPER_MINUTES = HoldTasks.SIGN_MINUTES;

    /** Keeps its own copies. */
    public TaskNet {
        tasks = List.copyOf(tasks);
        links = List.copyOf(links);
        holds = List.copyOf(holds);
        joints = List.copyOf(joints);
        settings = List.copyOf(settings);
        closes = List.copyOf(closes);
    }

    /** {@return the tasks of an aircraft with its first power-up} */
    public static TaskNet of(Circuit circuit, PowerUp powerUp) {
        TaskList list = new TaskList(circuit);
        Acts.addTo(list);
        List<Integer> settings = SettingTasks.addTo(list);
        List<HiddenJoint> joints = ProofTasks.addTo(list);
        ProofTasks.threads(list);
        List<Integer> tests = new ArrayList<>(RingOutTasks.buses(list));
        PowerTasks power = PowerTasks.addTo(list, powerUp);
        tests.addAll(RingOutTasks.open(list, joints, power.late()));
        power.complete(tests);
        List<HoldPoint> holds = HoldTasks.addTo(list, settings, power);
        return new TaskNet(list.tasks, list.links, holds, joints, settings, list.order.closes());
    }
}
