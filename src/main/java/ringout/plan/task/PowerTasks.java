package ringout.plan.task;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import ringout.graph.order.LeadEnd;
import ringout.graph.order.PlanStep;
import ringout.graph.order.StepKind;
import ringout.model.UnitKind;
import ringout.plan.order.Side;
import ringout.plan.power.PlugOrder;
import ringout.plan.power.PowerStage;
import ringout.plan.power.PowerUp;

/** The first power-up as tasks: propellers off, tests before power, stage after stage, pack plugs in their order, motors. */
final class PowerTasks {
    /** A bench supply with an open lid. Judgement. */
    private static final double OPEN_LID_MINUTES = 5;

    private final TaskList list;
    private final PowerUp powerUp;
    private final List<Integer> stages = new ArrayList<>();
    private final Set<LeadEnd> late = new LinkedHashSet<>();
    private int off = -1;
    private int packs = -1;
    private int motors = -1;
    private final List<Integer> propellers = new ArrayList<>();

    private PowerTasks(TaskList list, PowerUp powerUp) {
        this.list = list;
        this.powerUp = powerUp;
    }

    /** Adds the tasks of the power-up and links them with each other. */
    static PowerTasks addTo(TaskList list, PowerUp powerUp) {
        PowerTasks power = new PowerTasks(list, powerUp);
        power.stages();
        power.lids();
        power.plugs();
        power.fitPropellers();
        return power;
    }

    /** Ends that are made after the first power. */
    Set<LeadEnd> late() {
        return late;
    }

    /** Task of the first power; -1 when nothing is told of it. */
    int first() {
        return stages.size() > 1 ? stages.get(1) : -1;
    }

    /** Task in which motors turn; -1 when there is none. */
    int motors() {
        return motors;
    }

    /** Tasks that fit propellers. */
    List<Integer> propellers() {
        return propellers;
    }

    private void stages() {
        int last = -1;
        off = list.add(StepKind.CHECK, "propellers off: look at every motor", "", Side.EITHER);
        for (PowerStage stage : powerUp.stages()) {
            if (stage.kind() == PowerStage.Kind.HOVER) {
                continue;
            }
            int task = task(stage);
            if (last >= 0) {
                list.before(last, task, "stage by stage: what is proved stays proved");
            } else {
                list.before(off, task, "propellers are off before any power");
            }
            if (stage.kind() == PowerStage.Kind.PACKS) {
                packs = task;
            } else if (stage.kind() == PowerStage.Kind.MOTORS) {
                motors = task;
            }
            before(stage, task);
            plugged(stage, last, task);
            stages.add(task);
            last = task;
        }
    }

    private int task(PowerStage stage) {
        Optional<Integer> written =
                list.procedure.step(stage.step()).flatMap(step -> list.taskOf(step, StepKind.ENERGISE));
        if (written.isPresent()) {
            reword(written.get(), words(stage));
            return written.get();
        }
        boolean ohms = stage.kind() == PowerStage.Kind.OHMS;
        return list.add(ohms ? StepKind.CHECK : StepKind.ENERGISE, words(stage), "", Side.UPRIGHT);
    }

    private static String words(PowerStage stage) {
        return "stage " + stage.id() + ", " + stage.what() + ", as the power-up sheet says";
    }

    /** What types ask for before power: the step that looks at it, or a task of its own. */
    private void before(PowerStage stage, int task) {
        for (String asked : stage.before()) {
            if (stage.units().isEmpty() || asked.startsWith("propellers off")) {
                continue;
            }
            String condition = asked.substring(0, asked.lastIndexOf(": "));
            List<String> units =
                    List.of(asked.substring(asked.lastIndexOf(": ") + 2).split(", "));
            List<Integer> written = new ArrayList<>();
            for (PlanStep step : list.procedure.steps(StepKind.CHECK)) {
                boolean same = step.step()
                        .attribute()
                        .or("")
                        .toLowerCase(Locale.ROOT)
                        .contains(condition.toLowerCase(Locale.ROOT));
                if (same && step.step().objects().stream().anyMatch(units::contains)) {
                    list.taskOf(step, StepKind.CHECK).ifPresent(written::add);
                }
            }
            if (written.isEmpty()) {
                String zone = list.wiring
                        .directory()
                        .find(units.get(0))
                        .map(list::zone)
                        .orElse("");
                written.add(list.add(StepKind.CHECK, asked, zone, Side.EITHER));
            }
            written.forEach(check -> list.before(check, task, "it powers " + String.join(", ", units)));
        }
    }

    private void plugged(PowerStage stage, int last, int task) {
        list.order.makes().forEach((end, make) -> {
            String plug = list.wiring.plugName(end.unit(), end.plug());
            if (stage.plugged().contains(plug)) {
                late.add(end);
                list.before(
                        last,
                        make,
                        plug + " stays open until " + stage.id() + "; supply off and rails below 5 V first");
                list.before(make, task, stage.id() + " powers what hangs on " + plug);
            }
        });
    }

    /** Lids are on before the first power unless the procedure powers with the lid open. */
    private void lids() {
        int first = first();
        if (first < 0) {
            return;
        }
        for (int cover = 0; cover < list.order.closes().size(); cover++) {
            int close = list.order.closes().get(cover);
            Task lid = list.tasks.get(close);
            Task power = list.tasks.get(first);
            boolean openInProcedure = lid.written() && power.written() && lid.turn() > power.turn();
            if (!openInProcedure) {
                list.before(
                        close,
                        first,
                        "lids are on before the first power, so that nothing falls in and no hand reaches in",
                        "power up on a bench supply lead with the " + list.covers.name(cover) + " open",
                        OPEN_LID_MINUTES);
            }
        }
    }

    /** The plugs of the packs, each in its turn after the last bench stage. */
    private void plugs() {
        if (packs < 0) {
            return;
        }
        int last = stages.get(stages.indexOf(packs) - 1);
        for (PlugOrder.Act act : powerUp.plugs().making()) {
            List<Integer> now = new ArrayList<>();
            if (act instanceof PlugOrder.Make make) {
                for (Map.Entry<LeadEnd, Integer> end : list.order.makes().entrySet()) {
                    if (list.wiring
                            .plugName(end.getKey().unit(), end.getKey().plug())
                            .equals(make.plug())) {
                        late.add(end.getKey());
                        now.add(end.getValue());
                    }
                }
            } else if (act instanceof PlugOrder.Compare compare) {
                now.add(compare(compare));
            }
            for (int task : now) {
                list.before(last, task, "packs come after the bench supply, plug after plug");
                list.before(task, packs, "it is a plug of the packs");
                last = task;
            }
        }
    }

    /** The step that compares the voltages of packs, or a task of its own. */
    private int compare(PlugOrder.Compare compare) {
        Optional<Integer> written = list.procedure.steps(StepKind.CHECK).stream()
                .filter(step ->
                        step.step().attribute().or("").toLowerCase(Locale.ROOT).contains("volt")
                                && compare.packs().stream().allMatch(step.step().objects()::contains))
                .findFirst()
                .flatMap(step -> list.taskOf(step, StepKind.CHECK));
        if (written.isEmpty()) {
            return list.add(StepKind.CHECK, compare.words(), "", Side.EITHER);
        }
        reword(written.get(), compare.words());
        return written.get();
    }

    private void reword(int task, String words) {
        Task old = list.tasks.get(task);
        list.tasks.set(task, new Task(old.kind(), words, old.zone(), old.side(), old.step(), old.turn()));
    }

    private void fitPropellers() {
        if (motors < 0) {
            return;
        }
        List<Integer> fits = new ArrayList<>();
        for (PlanStep step : list.procedure.steps(StepKind.FIT)) {
            boolean propeller =
                    step.step().attribute().or("").toLowerCase(Locale.ROOT).contains("propeller");
            if (propeller) {
                list.taskOf(step, StepKind.FIT).ifPresent(fits::add);
            }
        }
        boolean turns = java.util.stream.IntStream.range(
                        0, list.wiring.directory().count())
                .anyMatch(unit -> !list.wiring.directory().isJoint(unit)
                        && list.wiring.directory().type(unit).kind().is(UnitKind.MOTOR));
        if (fits.isEmpty() && turns) {
            fits.add(list.add(StepKind.FIT, "propellers, each of the hand its motor is marked for", "", Side.UPRIGHT));
        }
        for (int fit : fits) {
            list.before(motors, fit, "propellers come after the motor test");
        }
        propellers.addAll(fits);
    }

    /** All that is made is made, and all that is tested is tested, before the first power; but what waits for its stage. */
    void complete(List<Integer> tests) {
        int first = first();
        if (first < 0) {
            return;
        }
        int ohms = stages.get(0);
        list.order.makes().forEach((end, make) -> {
            if (!late.contains(end)) {
                list.before(make, ohms, "a loose end under power touches something");
            }
        });
        list.order.fits().forEach((unit, fit) -> {
            boolean pack = list.wiring.directory().type(unit).kind().is(UnitKind.PACK);
            list.before(fit, pack && packs >= 0 ? packs : ohms, "it is fitted before it gets power");
            if (list.wiring.directory().type(unit).kind().is(UnitKind.MOTOR)) {
                list.before(fit, off, "every motor is looked at");
            }
        });
        tests.forEach(test -> list.before(test, ohms, "shorts and polarity are proved before power"));
    }
}
