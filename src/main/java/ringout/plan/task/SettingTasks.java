package ringout.plan.task;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import ringout.check.build.HandSettings;
import ringout.graph.order.BuildPlan;
import ringout.graph.order.LeadEnd;
import ringout.graph.order.PlanStep;
import ringout.graph.order.StepKind;
import ringout.model.BusPort;
import ringout.model.PinRole;
import ringout.model.PortSetting;
import ringout.plan.order.Side;

/** Settings of units: on the bench before they are fitted, units of equal factory address one at a time. */
final class SettingTasks {
    private final TaskList list;

    private SettingTasks(TaskList list) {
        this.list = list;
    }

    /** Adds what no step sets, and links what is set. {@return all tasks that set something} */
    static List<Integer> addTo(TaskList list) {
        return new SettingTasks(list).add();
    }

    private List<Integer> add() {
        List<Integer> all = new ArrayList<>();
        for (PlanStep step : list.procedure.steps(StepKind.SET)) {
            list.taskOf(step, StepKind.SET).ifPresent(all::add);
        }
        for (int unit = 0; unit < list.wiring.directory().count(); unit++) {
            if (!list.wiring.directory().isJoint(unit) && list.circuit.aboard(unit)) {
                for (HandSettings.Setting setting : HandSettings.of(list.at, unit)) {
                    int task = written(unit, setting).orElse(-1);
                    if (task < 0) {
                        task = added(unit, setting);
                        all.add(task);
                    }
                    link(unit, setting, task);
                }
            }
        }
        return all.stream().distinct().toList();
    }

    private Optional<Integer> written(int unit, HandSettings.Setting setting) {
        return list.procedure.steps(StepKind.SET).stream()
                .filter(step -> BuildPlan.names(step, unit))
                .filter(step ->
                        step.step().attribute().or("").toLowerCase(Locale.ROOT).contains(setting.word()))
                .findFirst()
                .flatMap(step -> list.taskOf(step, StepKind.SET));
    }

    private int added(int unit, HandSettings.Setting setting) {
        String name = list.wiring.directory().name(unit);
        String value = value(unit, setting);
        return list.add(
                StepKind.SET,
                setting.name() + " on " + name + (value.isEmpty() ? "" : ": " + value),
                TaskList.BENCH,
                Side.EITHER);
    }

    /** What the list says the setting must be. */
    private String value(int unit, HandSettings.Setting setting) {
        for (PortSetting port : list.wiring.directory().unit(unit).ports()) {
            boolean named = port.port().isEmpty() || setting.name().endsWith(" of " + port.port());
            if (named && setting.word().equals("terminator")) {
                return port.terminator()
                        .known()
                        .map(state -> state.words().get(0))
                        .orElse("");
            }
            if (named && setting.word().equals("address")) {
                return port.address()
                        .known()
                        .map(String::valueOf)
                        .orElse(port.i2cAddress().or(""));
            }
        }
        return "";
    }

    private void link(int unit, HandSettings.Setting setting, int task) {
        String name = list.wiring.directory().name(unit);
        for (int cover = 0; cover < list.covers.all().size(); cover++) {
            if (!setting.needsNoHand() && list.covers.hidesUnit(cover, unit)) {
                list.underLid(task, setting.name() + " on " + name, cover);
            }
        }
        if (setting.word().equals("address")) {
            for (BusPort port : list.wiring.directory().type(unit).ports()) {
                clash(unit, port).ifPresent(other -> alone(unit, port, task, other));
            }
        }
    }

    /** Another unit that leaves the factory with, or is set to, the address this one leaves the factory with. */
    private Optional<String> clash(int unit, BusPort port) {
        if (!port.defaultAddress().isKnown()) {
            return Optional.empty();
        }
        for (int other = 0; other < list.wiring.directory().count(); other++) {
            if (other != unit && !list.wiring.directory().isJoint(other)) {
                boolean same = list.wiring.directory().type(other).ports().stream()
                        .anyMatch(one -> one.kind().equals(port.kind())
                                && one.name().equals(port.name())
                                && one.defaultAddress()
                                        .known()
                                        .equals(port.defaultAddress().known()));
                if (same) {
                    return Optional.of(list.wiring.directory().name(other));
                }
            }
        }
        return Optional.empty();
    }

    private void alone(int unit, BusPort port, int task, String other) {
        String name = list.wiring.directory().name(unit);
        list.order.makes().forEach((end, make) -> {
            if (end.unit() == unit && onPort(end, port)) {
                list.before(
                        task,
                        make,
                        name + " and " + other + " leave the factory with address "
                                + port.defaultAddress()
                                        .known()
                                        .map(String::valueOf)
                                        .orElse("?")
                                + ": one at a time on the bus until it is set",
                        "set " + name + " with the plugs of all others off",
                        TaskList.ASK_MINUTES);
            }
        });
    }

    private boolean onPort(LeadEnd end, BusPort port) {
        int last = list.wiring.endPin(end.unit(), end.plug());
        for (int pin = list.wiring.firstPin(end.unit(), end.plug()); pin < last; pin++) {
            boolean leg = list.wiring.is(pin, PinRole.CAN_H) || list.wiring.is(pin, PinRole.CAN_L);
            if (leg && list.wiring.pin(pin).inside().or(port.name()).equals(port.name())) {
                return true;
            }
        }
        return false;
    }
}
