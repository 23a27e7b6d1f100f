package ringout.trace.session;

import java.util.Collection;
import java.util.Map;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import ringout.trace.predict.Behaviour;
import ringout.trace.predict.Signature;

/**
 * How likely what is seen is with a fault, by what the fault makes the modules do. Figures are judgement, no source: a unit that comes and
 * goes is found silent about as often as not, and that others come and go with it
 * is overlooked a little more often than not.
 */
final class SceneFit {
    /** Below this a fault does not explain what is seen. */
    static final double EXPLAINS = 0.02;

    /** Chance that a unit is seen to do what the fault makes it do. Judgement, no source. */
    private static final double AS_PREDICTED = 0.97;

    /** The same for its contrary. Judgement, no source. */
    private static final double AGAINST = 0.01;

    /** Chance that a silent unit nobody asked after is taken to respond. Judgement, no source. */
    private static final double OVERLOOKED = 0.1;

    /** Chance that a unit that comes and goes is found silent, and that others that do are not noticed. Judgement, no source. */
    private static final double COMES_AND_GOES = 0.4;

    private static final double UNNOTICED = 0.6;

    private final Scene scene;
    private final SortedSet<String> alive;
    private final SortedSet<String> assumed;

    /**
     * Prepares.
     *
     * @param modules all that can respond on the healthy aircraft
     * @param behind for a unit, what is commanded through it
     */
    SceneFit(Scene scene, Collection<String> modules, Map<String, Set<String>> behind) {
        this.scene = scene;
        this.alive = new TreeSet<>(scene.alive());
        this.assumed = new TreeSet<>(modules);
        for (String unit : scene.silent()) {
            assumed.removeAll(behind.getOrDefault(unit, Set.of()));
        }
        assumed.removeAll(scene.silent());
        if (scene.others() == Scene.Others.RESPOND) {
            alive.addAll(assumed);
        }
        assumed.removeAll(alive);
        if (scene.others() == Scene.Others.UNKNOWN) {
            assumed.clear();
        }
    }

    /** Units known to respond, those not named included where all others do. */
    SortedSet<String> alive() {
        return alive;
    }

    /** Likelihood of all that is seen. */
    double of(Signature signature) {
        return silent(signature) * alive(signature) * lights(signature);
    }

    /** Whether a fault explains at least one thing that is seen, and speaks against no unit that responds or is lit. */
    boolean part(Signature signature) {
        boolean silence = scene.silent().stream().anyMatch(unit -> silent(signature, unit) > EXPLAINS);
        boolean darkness =
                scene.dark().stream().anyMatch(unit -> signature.dark().contains(unit));
        return (silence || darkness) && !against(signature);
    }

    /** Whether a fault would silence a unit that responds, or put out a light that is on. */
    boolean against(Signature signature) {
        return alive.stream().anyMatch(unit -> signature.silent().contains(unit))
                || assumed.stream().anyMatch(unit -> signature.silent().contains(unit))
                || scene.lit().stream().anyMatch(unit -> signature.dark().contains(unit));
    }

    /** Likelihood of the silence of one unit. */
    double silent(Signature signature, String unit) {
        return signature.silent().contains(unit)
                ? AS_PREDICTED
                : signature.erratic().contains(unit) ? COMES_AND_GOES : AGAINST;
    }

    private double silent(Signature signature) {
        double likelihood = 1;
        boolean unsteady = false;
        for (String unit : scene.silent()) {
            boolean erratic =
                    !signature.silent().contains(unit) && signature.erratic().contains(unit);
            // One cause lets all its units come and go together: counted once.
            likelihood *= erratic && unsteady ? 1 : silent(signature, unit);
            unsteady |= erratic;
        }
        return likelihood;
    }

    private double alive(Signature signature) {
        double likelihood = 1;
        boolean unsteady = false;
        for (String unit : alive) {
            likelihood *= signature.silent().contains(unit) ? AGAINST : 1;
            unsteady |= signature.erratic().contains(unit);
        }
        for (String unit : assumed) {
            likelihood *= signature.silent().contains(unit) ? OVERLOOKED : 1;
            unsteady |= signature.erratic().contains(unit);
        }
        return likelihood * (unsteady ? UNNOTICED : 1);
    }

    private double lights(Signature signature) {
        double likelihood = 1;
        for (String unit : scene.lit()) {
            likelihood *= signature.dark().contains(unit) ? AGAINST : 1;
        }
        for (String unit : scene.dark()) {
            likelihood *= signature.dark().contains(unit) ? 1 : AGAINST;
        }
        return likelihood;
    }

    /** What is commanded through each silent unit: what a dead one takes along. */
    static Set<String> behind(Behaviour behaviour, Signature dead) {
        Set<String> behind = new TreeSet<>(dead.silent());
        behind.retainAll(behaviour.modules());
        return behind;
    }
}
