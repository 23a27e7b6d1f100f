package ringout.solve.meter;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import ringout.graph.Gap;
import ringout.graph.Part;
import ringout.graph.Terminators;
import ringout.graph.Wire;
import ringout.graph.Wiring;
import ringout.graph.bus.BusHub;
import ringout.graph.bus.Buses;
import ringout.model.BusPort;
import ringout.model.Datum;
import ringout.solve.MeterElement;

/** What the reading rests on and the list does not give. */
final class Gaps {
    private static final double NOTABLE = 0.001;

    private final Probed probed;
    private final Wiring wiring;
    private final Set<Gap> gaps = new LinkedHashSet<>();

    private Gaps(Probed probed) {
        this.probed = probed;
        this.wiring = probed.wiring();
    }

    static List<Gap> of(Probed probed) {
        Gaps found = new Gaps(probed);
        if (probed.connected()) {
            found.conductors();
        }
        found.terminators();
        found.inputs();
        return List.copyOf(found.gaps);
    }

    private void conductors() {
        for (Island.Member member : probed.island().members()) {
            if (member.element().piece() instanceof MeterElement.OfWire of && probed.load(member.number()) > NOTABLE) {
                conductor(of.wire());
            }
        }
    }

    private void conductor(Wire wire) {
        if (!wire.lengthMm().isKnown()) {
            gaps.add(new Gap("length", wire.lead().id()));
        }
        if (!wire.areaMm2().isKnown()) {
            gaps.add(new Gap("wire size", wire.lead().id()));
        }
    }

    private void terminators() {
        for (Part part : wiring.parts()) {
            if (part.origin() instanceof Part.Terminator terminator
                    && Terminators.state(probed.circuit(), terminator) == Terminators.Seen.UNKNOWN
                    && probed.joinMatters(part.from(), part.to())) {
                gaps.add(new Gap("terminator on or off", wiring.directory().name(terminator.unit())));
            }
        }
    }

    private void inputs() {
        for (BusHub hub : Buses.of(probed.circuit()).hubs()) {
            if (hub.member() && hub.high() >= 0 && hub.low() >= 0 && probed.joinMatters(hub.high(), hub.low())) {
                Datum<Double> ohm = wiring.directory()
                        .layout(hub.unit())
                        .port(hub.typePort())
                        .map(BusPort::nodeOhm)
                        .orElse(Datum.notAsked());
                if (ohm.isMissing()) {
                    gaps.add(new Gap("node input", wiring.directory().name(hub.unit())));
                }
            }
        }
    }
}
