package ringout.check.topology;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Predicate;
import ringout.check.form.Situation;
import ringout.graph.TypeLayout;
import ringout.model.Pin;
import ringout.model.PinRole;
import ringout.model.Plug;
import ringout.model.SerialPort;
import ringout.model.UnitKind;
import ringout.model.UnitType;

/**
 * Which plugs of a type must be connected: as the type says, or when it marks no plug at all, the usual ones: supply,
 * command receiver, battery sensing, first bus socket.
 */
final class RequiredPlugs {
    private static final String COMMAND = "command";

    private final UnitType type;
    private final List<List<Integer>> groups = new ArrayList<>();
    private final List<Integer> unknown = new ArrayList<>();
    private final boolean said;

    /** What is required of each type, found once a circuit. */
    private record ByType(Map<TypeLayout, RequiredPlugs> known) {}

    /** The required plugs of a unit. */
    static RequiredPlugs of(Situation at, int unit) {
        return at.circuit()
                .know(ByType.class, circuit -> new ByType(new HashMap<>()))
                .known()
                .computeIfAbsent(at.directory().layout(unit), RequiredPlugs::new);
    }

    private RequiredPlugs(TypeLayout layout) {
        this.type = layout.type();
        this.said = type.plugs().stream()
                .anyMatch(plug -> !(plug.must() instanceof ringout.model.Datum.NotAsked)
                        || plug.oneOf().isKnown());
        if (said) {
            marked();
        } else {
            usual();
        }
    }

    /** Groups of plugs, of each of which one at least must be connected. */
    List<List<Integer>> groups() {
        return groups;
    }

    /** Plugs of which it is not known whether they must be connected. */
    List<Integer> unknown() {
        return unknown;
    }

    /** Whether the type itself says so. */
    boolean said() {
        return said;
    }

    private void marked() {
        Map<String, List<Integer>> byGroup = new LinkedHashMap<>();
        for (int plug = 0; plug < type.plugs().size(); plug++) {
            Plug record = type.plugs().get(plug);
            if (record.oneOf().isKnown()) {
                byGroup.computeIfAbsent(record.oneOf().or(""), key -> new ArrayList<>())
                        .add(plug);
            }
            if (record.must().is(true)) {
                groups.add(List.of(plug));
            } else if (record.must() instanceof ringout.model.Datum.Unknown) {
                unknown.add(plug);
            }
        }
        groups.addAll(byGroup.values());
    }

    private void usual() {
        supplies();
        boolean controller = type.kind().is(UnitKind.CONTROLLER);
        if (type.kind().is(UnitKind.COMMAND_RECEIVER)) {
            group(pin -> pin.role().is(PinRole.SERIAL_OUT) || pin.role().is(PinRole.PULSE_OUT));
        }
        if (controller) {
            command();
            each(pin -> pin.role().is(PinRole.SENSE_IN));
        } else {
            group(pin -> pin.role().is(PinRole.CAN_H) || pin.role().is(PinRole.CAN_L));
        }
    }

    /** Each supply input by one of the plugs that bring it. */
    private void supplies() {
        Map<String, List<Integer>> byRail = new LinkedHashMap<>();
        for (int plug = 0; plug < type.plugs().size(); plug++) {
            for (Pin pin : type.plugs().get(plug).pins()) {
                boolean pack = pin.role().is(PinRole.PACK_PLUS) || pin.role().is(PinRole.PACK_MINUS);
                if (pack || pin.role().is(PinRole.SUPPLY_IN)) {
                    String rail = pack ? "plug " + plug : pin.inside().or("plug " + plug);
                    List<Integer> plugs = byRail.computeIfAbsent(rail, key -> new ArrayList<>());
                    if (!plugs.contains(plug)) {
                        plugs.add(plug);
                    }
                }
            }
        }
        groups.addAll(byRail.values());
    }

    private void command() {
        for (SerialPort serial : type.serials()) {
            boolean command = serial.protocols().stream()
                    .anyMatch(name -> name.toLowerCase(Locale.ROOT).startsWith(COMMAND));
            for (int plug = 0; plug < type.plugs().size(); plug++) {
                if (command && type.plugs().get(plug).name().equals(serial.name())) {
                    groups.add(List.of(plug));
                }
            }
        }
    }

    private void group(Predicate<Pin> wanted) {
        List<Integer> found = plugsWith(wanted);
        if (!found.isEmpty() && !groups.contains(found)) {
            groups.add(found);
        }
    }

    private void each(Predicate<Pin> wanted) {
        plugsWith(wanted).stream()
                .map(List::of)
                .filter(group -> !groups.contains(group))
                .forEach(groups::add);
    }

    private List<Integer> plugsWith(Predicate<Pin> wanted) {
        List<Integer> found = new ArrayList<>();
        for (int plug = 0; plug < type.plugs().size(); plug++) {
            if (type.plugs().get(plug).pins().stream().anyMatch(wanted)) {
                found.add(plug);
            }
        }
        return found;
    }
}
