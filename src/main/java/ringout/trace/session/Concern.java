package ringout.trace.session;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import ringout.graph.Circuit;
import ringout.graph.Wire;
import ringout.graph.Wiring;
import ringout.trace.candidate.Candidate;
import ringout.trace.predict.Predictions;
import ringout.trace.predict.Signature;
import ringout.trace.predict.TestCard;

/** The units, plugs and leads that some suspects have to do with; tests elsewhere tell nothing of them. */
final class Concern {
    private final Wiring wiring;
    private final Set<Integer> units = new HashSet<>();
    private final Set<List<Integer>> plugs = new HashSet<>();
    private final Set<String> leads = new HashSet<>();

    Concern(Circuit circuit, Scene scene, List<Candidate> suspects) {
        this.wiring = circuit.wiring();
        Predictions predictions = Predictions.of(circuit);
        scene.silent().forEach(this::unit);
        scene.dark().forEach(this::unit);
        for (Candidate suspect : suspects) {
            leads.addAll(suspect.rows());
            Signature seen = predictions.signature(suspect);
            seen.silent().forEach(this::unit);
            seen.erratic().forEach(this::unit);
            seen.dark().forEach(this::unit);
        }
        for (Wire wire : wiring.wires()) {
            if (leads.contains(wire.lead().id())) {
                plug(wire.fromPin());
                plug(wire.toPin());
            }
        }
    }

    private void unit(String name) {
        wiring.directory().find(name).ifPresent(units::add);
    }

    private void plug(int pin) {
        plugs.add(List.of(wiring.unitOf(pin), wiring.plugIndex(pin)));
        units.add(wiring.unitOf(pin));
    }

    /** Whether a test is made at any of them. */
    boolean has(TestCard card) {
        CardPlace at = CardPlace.of(wiring, card.test());
        if (at.everywhere()) {
            return true;
        }
        if (!at.lead().isEmpty()) {
            return leads.contains(at.lead());
        }
        return at.plug() < 0 ? units.contains(at.unit()) : plugs.contains(List.of(at.unit(), at.plug()));
    }
}
