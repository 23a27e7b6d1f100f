package ringout.sheet.page;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import ringout.graph.Circuit;
import ringout.graph.Trail;
import ringout.graph.Wire;
import ringout.graph.Wiring;
import ringout.graph.index.BreadthFirst;
import ringout.graph.signal.References;
import ringout.solve.meter.MeterNetwork;
import ringout.solve.meter.Reading;
import ringout.solve.power.LoadCase;
import ringout.solve.power.OperatingPoint;
import ringout.solve.power.PackCharge;
import ringout.solve.power.PowerFlow;

/** The page of one state. */
final class StatePages {
    private final Circuit circuit;
    private final Wiring wiring;
    private final OperatingPoint point;
    private final int[] number;
    private final List<PageNet> nets = new ArrayList<>();

    private StatePages(Circuit circuit) {
        this.circuit = circuit;
        wiring = circuit.wiring();
        point = OperatingPoint.of(circuit, LoadCase.IDLE.with(PackCharge.MEASURED));
        number = new int[circuit.nets().count()];
        for (Wire wire : wiring.wires()) {
            int net = circuit.nets().of(wire.fromEnd());
            if (number[net] == 0) {
                nets.add(net(wire));
                number[net] = nets.size();
            }
        }
    }

    static PageState of(Circuit circuit, List<PageBooks.PlugPlace> plugs) {
        return new StatePages(circuit).page(plugs);
    }

    private PageState page(List<PageBooks.PlugPlace> plugs) {
        List<Integer> netOf = new ArrayList<>();
        List<Reading> ohms = new ArrayList<>();
        MeterNetwork meter = MeterNetwork.of(circuit);
        for (Wire wire : wiring.wires()) {
            netOf.add(number[circuit.nets().of(wire.fromEnd())] - 1);
            ohms.add(meter.reading(wire.fromPin(), wire.toPin()));
        }
        List<String> absent = new ArrayList<>();
        for (int unit = 0; unit < wiring.directory().count(); unit++) {
            if (!circuit.aboard(unit)) {
                absent.add(wiring.directory().name(unit));
            }
        }
        Pulls pulls = Pulls.of(circuit);
        return new PageState(
                circuit.state().name(),
                absent,
                circuit.state().pulled(),
                netOf,
                List.copyOf(nets),
                ohms,
                pulls.buses(),
                pulls.all(plugs),
                noVolts());
    }

    private String noVolts() {
        if (point instanceof PowerFlow) {
            return "";
        }
        return point instanceof OperatingPoint.Collapse
                ? "the loads pull the supply down"
                : "the currents could not be computed";
    }

    private PageNet net(Wire wire) {
        int net = circuit.nets().of(wire.fromEnd());
        List<String> pins = new ArrayList<>();
        int first = -1;
        OptionalDouble volts = OptionalDouble.empty();
        String against = "";
        for (int pin : circuit.nets().pins(net)) {
            if (wiring.wiresAt(pin).length > 0) {
                pins.add(wiring.name(pin));
                first = first < 0 ? pin : first;
                int zero = References.of(circuit).zeroPin(pin);
                if (volts.isEmpty() && zero >= 0 && circuit.nets().of(zero) != net && point instanceof PowerFlow flow) {
                    volts = flow.volts(pin, zero);
                    against = volts.isPresent() ? wiring.name(zero) : "";
                }
            }
        }
        String way = first < 0
                ? ""
                : circuit.trail(first, farthest(first)).map(Trail::words).orElse("");
        return new PageNet(pins.isEmpty() ? wire.lead().id() : pins.get(0), pins, way, volts, against);
    }

    private int farthest(int pin) {
        BreadthFirst near = BreadthFirst.from(circuit.nets().graph(), pin);
        for (int i = near.reachedCount() - 1; i > 0; i--) {
            int vertex = near.vertexAt(i);
            if (wiring.isPin(vertex) && wiring.wiresAt(vertex).length > 0) {
                return vertex;
            }
        }
        return pin;
    }
}
