package ringout.draw.harness;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import ringout.graph.Circuit;
import ringout.graph.Wire;
import ringout.graph.Wiring;
import ringout.graph.signal.NetRoles;
import ringout.model.PinRole;
import ringout.model.UnitKind;

/**
 * Cuts the list into portions by system: what turns the propellers, supplies, buses, signals. A portion has at most 60
 * conductors; a larger system is cut between rows, in the order of the list, so that what belongs together stays together.
 */
final class Cut {
    /** Most conductors on one sheet. */
    static final int MOST = 60;

    /** The systems, in the order of their sheets. */
    private enum Section {
        POWER("power distribution"),
        MOTORS("motors and speed controllers"),
        BUSES("buses"),
        SIGNALS("signals and payload");

        private final String title;

        Section(String title) {
            this.title = title;
        }
    }

    private static final long POWER = NetRoles.SUPPLIES | NetRoles.bits(PinRole.ZERO_V, PinRole.PACK_MINUS);
    private static final long BUS = NetRoles.bits(PinRole.CAN_H, PinRole.CAN_L);

    private final Circuit circuit;
    private final List<List<Wire>> wiresOf = new ArrayList<>();

    private Cut(Circuit circuit) {
        this.circuit = circuit;
        circuit.wiring().aircraft().leads().forEach(lead -> wiresOf.add(new ArrayList<>()));
        circuit.wiring().wires().forEach(wire -> wiresOf.get(wire.leadIndex()).add(wire));
    }

    /** The portions of an aircraft. */
    static List<Portion> of(Circuit circuit) {
        return new Cut(circuit).portions();
    }

    private List<Portion> portions() {
        Map<Section, List<Integer>> systems = new EnumMap<>(Section.class);
        for (int lead = 0; lead < wiresOf.size(); lead++) {
            if (!wiresOf.get(lead).isEmpty()) {
                systems.computeIfAbsent(system(wiresOf.get(lead)), key -> new ArrayList<>())
                        .add(lead);
            }
        }
        List<Portion> portions = new ArrayList<>();
        systems.forEach((system, leads) -> portions.addAll(chunks(system.title, leads)));
        return portions;
    }

    private List<Portion> chunks(String title, List<Integer> leads) {
        int total = leads.stream().mapToInt(this::conductors).sum();
        int pieces = (total + MOST - 1) / MOST;
        List<Portion> chunks = new ArrayList<>();
        List<Integer> chunk = new ArrayList<>();
        int count = 0;
        int done = 0;
        for (int lead : leads) {
            int fair = (total - done + pieces - chunks.size() - 1) / Math.max(1, pieces - chunks.size());
            boolean over = count + conductors(lead) > MOST || (count >= fair && chunks.size() < pieces - 1);
            if (over && !chunk.isEmpty()) {
                chunks.add(new Portion(title, List.copyOf(chunk)));
                done += count;
                chunk.clear();
                count = 0;
            }
            chunk.add(lead);
            count += conductors(lead);
        }
        chunks.add(new Portion(title, List.copyOf(chunk)));
        return chunks;
    }

    private int conductors(int lead) {
        return wiresOf.get(lead).size();
    }

    private Section system(List<Wire> wires) {
        NetRoles roles = NetRoles.of(circuit);
        boolean onlyPower = true;
        boolean bus = false;
        for (Wire wire : wires) {
            int net = circuit.nets().of(wire.fromPin());
            if (driven(wire.fromPin()) || driven(wire.toPin()) || drives(roles, net)) {
                return Section.MOTORS;
            }
            bus |= roles.any(net, BUS);
            onlyPower &= roles.any(net, POWER);
        }
        if (bus) {
            return Section.BUSES;
        }
        return onlyPower ? Section.POWER : Section.SIGNALS;
    }

    private boolean driven(int pin) {
        Wiring wiring = circuit.wiring();
        return wiring.is(pin, PinRole.PHASE) || motor(pin);
    }

    private boolean motor(int pin) {
        int unit = circuit.wiring().unitOf(pin);
        return circuit.wiring().directory().type(unit).kind().is(UnitKind.MOTOR)
                || (circuit.wiring().directory().type(unit).kind().is(UnitKind.SPEED_CONTROLLER) && !onBus(pin));
    }

    private boolean onBus(int pin) {
        Wiring wiring = circuit.wiring();
        return wiring.is(pin, PinRole.CAN_H) || wiring.is(pin, PinRole.CAN_L) || busPlug(pin);
    }

    private boolean busPlug(int pin) {
        Wiring wiring = circuit.wiring();
        int unit = wiring.unitOf(pin);
        int plug = wiring.plugIndex(pin);
        for (int p = wiring.firstPin(unit, plug); p < wiring.endPin(unit, plug); p++) {
            if (wiring.is(p, PinRole.CAN_H)) {
                return true;
            }
        }
        return false;
    }

    private boolean drives(NetRoles roles, int net) {
        if (!roles.has(net, PinRole.PULSE_IN)) {
            return false;
        }
        return roles.pins(net, NetRoles.bits(PinRole.PULSE_IN)).stream().anyMatch(this::motor);
    }
}
