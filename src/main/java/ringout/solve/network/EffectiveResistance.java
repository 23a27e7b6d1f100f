package ringout.solve.network;

/**
 * Ohms between any two nodes of a network whose power is off: every source counts as its internal resistance and no
 * current is injected. Many pairs are answered on one factorisation; one pair costs two walks up the elimination tree.
 *
 * <p>The resistance is the power that one ampere from node to node dissipates, a sum of squares over the eliminations it
 * passes. A sum of squares does not cancel; where rounding of the currents in it would still show, the pair is solved
 * once more with its second node as datum, which involves no subtraction at all.
 *
 * <p>Holds working space, so an instance is for one thread at a time; instances on the same factorisation are cheap.
 */
public final class EffectiveResistance {

    /** A hundred units in the last place are about 1e-14, well within what any meter or any tolerance needs. */
    private static final double AMPLIFICATION_LIMIT = 100;

    private final FactorisedNetwork factorised;
    private final PathWalk walk;

    private EffectiveResistance(FactorisedNetwork factorised) {
        this.factorised = factorised;
        walk = new PathWalk(factorised.factor());
    }

    /** {@return the ohmmeter of a factorised network} */
    public static EffectiveResistance of(FactorisedNetwork factorised) {
        return new EffectiveResistance(factorised);
    }

    /** {@return the ohmmeter of a network} */
    public static EffectiveResistance of(ResistiveNetwork network) {
        return of(FactorisedNetwork.of(network));
    }

    /** {@return what an ideal ohmmeter shows between two nodes} */
    public Resistance between(int a, int b) {
        if (!factorised.connected(a, b)) {
            return new Resistance.Open();
        }
        NetworkStructure structure = factorised.structure();
        if (structure.point(a) == structure.point(b)) {
            return new Resistance.Ohms(0);
        }
        walk.run(structure.position(a), structure.position(b));
        boolean sound = walk.amplification() <= AMPLIFICATION_LIMIT;
        return new Resistance.Ohms(sound ? walk.resistance() : withoutSubtraction(a, b));
    }

    /** One ampere from the second node, which is the datum, to the first: the voltage in volts is the resistance. */
    private double withoutSubtraction(int a, int b) {
        ResistiveNetwork network = factorised.network();
        NetworkBuilder again = ResistiveNetwork.builder(network.nodes());
        for (int e = 0; e < network.elements(); e++) {
            again.resistor(network.from(e), network.to(e), network.ohms(e));
        }
        again.inject(b, a, 1);
        again.reference(b);
        return FactorisedNetwork.of(again.build()).solve().potential(a);
    }
}
