package ringout.trace.session;

import java.util.Collection;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * What one sees and knows before a tool is touched. Names as the list writes them.
 *
 * @param silent units that do not respond
 * @param alive units that respond
 * @param others what is known of the units not named, but for those commanded through a silent one
 * @param lit units with a light on
 * @param dark units with every light out
 * @param touched rows, plugs and units that were worked on last
 * @param crash whether it began after a crash, a hard landing, a surge or water
 * @param update whether it began after an update of firmware or settings
 */
public record Scene(
        SortedSet<String> silent,
        SortedSet<String> alive,
        Others others,
        SortedSet<String> lit,
        SortedSet<String> dark,
        SortedSet<String> touched,
        boolean crash,
        boolean update) {
    /** What is known of the units that are not named. */
    public enum Others {
        /** Nothing. */
        UNKNOWN,
        /** Nothing was said, so they are taken to respond; one may have been overlooked. */
        ASSUMED,
        /** All respond. */
        RESPOND
    }

    /** Keeps its own copies. */
    public Scene {
        silent = Names.copy(silent);
        alive = Names.copy(alive);
        lit = Names.copy(lit);
        dark = Names.copy(dark);
        touched = Names.copy(touched);
    }

    /** Some units are silent; nothing else is told. */
    public static Scene silent(Collection<String> units) {
        Set<String> none = Set.of();
        return new Scene(
                Names.copy(units),
                Names.copy(none),
                Others.UNKNOWN,
                Names.copy(none),
                Names.copy(none),
                Names.copy(none),
                false,
                false);
    }

    /** The same with these units silent too. */
    public Scene withSilent(Collection<String> units) {
        return new Scene(plus(silent, units), alive, others, lit, dark, touched, crash, update);
    }

    /** The same with these units known to respond. */
    public Scene withAlive(Collection<String> units) {
        return new Scene(silent, plus(alive, units), others, lit, dark, touched, crash, update);
    }

    /** The same, all others responding. */
    public Scene withOthersAlive() {
        return withOthers(Others.RESPOND);
    }

    /** The same with what is known of all others. */
    public Scene withOthers(Others known) {
        return new Scene(silent, alive, known, lit, dark, touched, crash, update);
    }

    /** The same with these units lit. */
    public Scene withLit(Collection<String> units) {
        return new Scene(silent, alive, others, plus(lit, units), dark, touched, crash, update);
    }

    /** The same with these units dark. */
    public Scene withDark(Collection<String> units) {
        return new Scene(silent, alive, others, lit, plus(dark, units), touched, crash, update);
    }

    /** The same with what changed last. */
    public Scene changed(Collection<String> objects, boolean afterCrash, boolean afterUpdate) {
        return new Scene(
                silent, alive, others, lit, dark, plus(touched, objects), crash || afterCrash, update || afterUpdate);
    }

    private static SortedSet<String> plus(SortedSet<String> some, Collection<String> more) {
        SortedSet<String> all = new TreeSet<>(some);
        all.addAll(more);
        return all;
    }

    /** Whether anything is told of what changed last. */
    public boolean tellsOfChange() {
        return !touched.isEmpty() || crash || update;
    }
}
