package ringout.solve.network;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import ringout.solve.network.EdgeChange.Added;
import ringout.solve.network.EdgeChange.Changed;
import ringout.solve.network.EdgeChange.Opened;

/** A list of changes sorted into elements with new resistances and added resistances, checked against the network. */
final class Edits {

    private final ResistiveNetwork network;
    private final List<Changed> changed = new ArrayList<>();
    private final List<Added> added = new ArrayList<>();

    Edits(ResistiveNetwork network, List<EdgeChange> changes) {
        this.network = network;
        for (EdgeChange change : changes) {
            if (change instanceof Opened o) {
                change(new Changed(o.element(), Double.POSITIVE_INFINITY));
            } else if (change instanceof Changed c) {
                change(c);
            } else if (change instanceof Added a) {
                NetworkBuilder.requireOhms(a.ohms(), false);
                requireNode(a.a());
                requireNode(a.b());
                added.add(a);
            }
        }
    }

    private void change(Changed c) {
        if (c.element() < 0 || c.element() >= network.elements()) {
            throw new IllegalArgumentException("element " + c.element() + " of " + network.elements());
        }
        if (find(c.element()) != null) {
            throw new IllegalArgumentException("element " + c.element() + " is changed twice");
        }
        NetworkBuilder.requireOhms(c.ohms(), network.emf(c.element()) != 0);
        changed.add(c);
    }

    private void requireNode(int node) {
        if (node < 0 || node >= network.nodes()) {
            throw new IllegalArgumentException("node " + node + " in a network of " + network.nodes());
        }
    }

    private @Nullable Changed find(int element) {
        for (Changed c : changed) {
            if (c.element() == element) {
                return c;
            }
        }
        return null;
    }

    /** {@return elements with new resistances} */
    List<Changed> changed() {
        return changed;
    }

    /** {@return added resistances} */
    List<Added> added() {
        return added;
    }

    /** {@return the resistance of an element of the network after the changes} */
    double ohms(int element) {
        Changed c = find(element);
        return c == null ? network.ohms(element) : c.ohms();
    }

    /** {@return whether 0 Ω is given or taken, so that other nodes than before are one point} */
    boolean regroupsPoints() {
        for (Changed c : changed) {
            if ((c.ohms() == 0) != (network.ohms(c.element()) == 0)) {
                return true;
            }
        }
        return false;
    }

    /**
     * The changed network, built anew with the added resistances behind the elements it had.
     *
     * @param excitation gives the source voltages and the injected currents
     */
    ResistiveNetwork rebuilt(ResistiveNetwork excitation) {
        NetworkBuilder b = ResistiveNetwork.builder(network.nodes());
        for (int e = 0; e < network.elements(); e++) {
            if (excitation.emf(e) == 0) {
                b.resistor(network.from(e), network.to(e), ohms(e));
            } else {
                b.source(network.from(e), network.to(e), excitation.emf(e), ohms(e));
            }
        }
        for (Added a : added) {
            b.resistor(a.a(), a.b(), a.ohms());
        }
        for (int i = 0; i < excitation.injections(); i++) {
            b.inject(excitation.injectionFrom(i), excitation.injectionTo(i), excitation.injectionAmps(i));
        }
        for (int r = 0; r < network.references(); r++) {
            b.reference(network.reference(r));
        }
        return b.build();
    }
}
