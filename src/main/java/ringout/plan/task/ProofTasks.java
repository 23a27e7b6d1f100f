package ringout.plan.task;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import ringout.check.build.HiddenSpots;
import ringout.graph.order.BuildPlan;
import ringout.graph.order.LeadEnd;
import ringout.graph.order.PlanStep;
import ringout.graph.order.StepKind;
import ringout.model.Hole;
import ringout.plan.order.Side;

/** What must be proved and photographed of every plug and joint before a lid hides it. */
final class ProofTasks {
    private static final int TOLD = 4;

    private final TaskList list;

    /** A unit under a lid: its plugs are photographed together. */
    private record Shot(int unit, int cover) {}

    private final Map<Shot, Integer> shots = new HashMap<>();

    private ProofTasks(TaskList list) {
        this.list = list;
    }

    /** Adds what no step proves, and links it. {@return the joints under lids} */
    static List<HiddenJoint> addTo(TaskList list) {
        return HiddenSpots.all(list.at).stream()
                .map(new ProofTasks(list)::joint)
                .toList();
    }

    private HiddenJoint joint(HiddenSpots.Spot spot) {
        List<Integer> makes = new ArrayList<>();
        TreeSet<String> leads = new TreeSet<>();
        list.order.makes().forEach((end, make) -> {
            if (end.unit() == spot.unit() && end.plug() == spot.plug()) {
                makes.add(make);
                leads.add(id(end));
            }
        });
        boolean screwed = spot.screwed(list.at);
        List<Integer> checks = written(spot, StepKind.CHECK);
        if (checks.isEmpty()) {
            checks = List.of(add(spot, StepKind.CHECK, check(spot, leads, screwed)));
        }
        List<Integer> photos = written(spot, StepKind.PHOTO);
        if (photos.isEmpty()) {
            photos = List.of(shots.computeIfAbsent(
                    new Shot(spot.unit(), spot.cover()),
                    key -> add(spot, StepKind.PHOTO, list.wiring.directory().name(spot.unit()) + ", every plug")));
        }
        for (int make : makes) {
            checks.forEach(check -> list.before(
                    make,
                    check,
                    "it proves " + spot.name(),
                    "prove " + spot.name() + " again later",
                    TaskList.AGAIN_MINUTES));
            photos.forEach(photo -> list.before(
                    make,
                    photo,
                    "it shows " + spot.name(),
                    "photograph " + spot.name() + " again later",
                    TaskList.AGAIN_MINUTES));
        }
        checks.forEach(check -> list.underLid(check, spot.name(), spot.cover()));
        photos.forEach(photo -> list.underLid(photo, spot.name(), spot.cover()));
        return new HiddenJoint(spot, List.copyOf(leads), screwed, checks, photos);
    }

    private String id(LeadEnd end) {
        return list.wiring.aircraft().leads().get(end.row()).id();
    }

    private int add(HiddenSpots.Spot spot, StepKind kind, String what) {
        return list.add(kind, what, list.zone(spot.unit()), list.side(spot.unit(), spot.plug()));
    }

    private static String check(HiddenSpots.Spot spot, Set<String> leads, boolean screwed) {
        String named = leads.size() > TOLD ? leads.size() + " leads" : String.join(", ", leads);
        return screwed
                ? spot.name() + ": torque, witness mark, pull " + named + ", ring it out"
                : spot.name() + ": latched, tug " + named + ", ring it out";
    }

    /** Steps that look at a plug before the lid is closed for the first time. */
    private List<Integer> written(HiddenSpots.Spot spot, StepKind kind) {
        int close = list.tasks.get(list.order.closes().get(spot.cover())).turn();
        List<Integer> found = new ArrayList<>();
        for (PlanStep step : list.procedure.steps(kind)) {
            if (step.index() < close && list.names(step, spot.unit(), spot.plug())) {
                list.taskOf(step, kind).ifPresent(found::add);
            }
        }
        return List.copyOf(found);
    }

    /** Adds leads that pass a hole: threaded before the lid is on and before their plug beyond it is made. */
    static void threads(TaskList list) {
        for (Hole hole : list.wiring.aircraft().airframe().holes()) {
            int cover = list.covers.find(hole.name()).orElse(-1);
            for (String lead : hole.leads()) {
                thread(list, hole.name(), lead, cover);
            }
        }
    }

    private static void thread(TaskList list, String hole, String lead, int cover) {
        List<LeadEnd> ends = new ArrayList<>();
        list.items.rows(lead).forEach(row -> ends.addAll(BuildPlan.ends(list.wiring, row)));
        if (ends.isEmpty()) {
            return;
        }
        LeadEnd beyond = ends.stream()
                .filter(end -> cover < 0 || !list.covers.hides(cover, end.unit(), end.plug()))
                .reduce((first, second) -> second)
                .orElse(ends.get(ends.size() - 1));
        int task = list.add(
                StepKind.OTHER,
                "thread " + lead + " through the hole \"" + hole + "\"",
                list.zone(ends.get(0).unit()),
                Side.UPRIGHT);
        if (cover >= 0) {
            list.underLid(task, "where " + lead + " passes", cover);
        }
        list.before(task, list.order.makes().getOrDefault(beyond, task), "a made plug does not pass the hole");
    }
}
