package ringout.compare.match;

import java.util.Arrays;
import java.util.Locale;
import ringout.graph.Directory;
import ringout.graph.Wiring;

/**
 * Which unit or joint of one aircraft is which of another. Equal names come first; what is left is matched by how it is wired
 * to what is matched already (colour refinement), then by the most connections in common, at last by what its row says.
 */
final class UnitMatch {
    private static final int NONE = -1;

    private final Wiring base;
    private final Wiring other;
    private final int[] to;
    private final int[] back;
    private int pairs;

    private UnitMatch(Wiring base, Wiring other) {
        this.base = base;
        this.other = other;
        to = filled(base.directory().count());
        back = filled(other.directory().count());
    }

    private static int[] filled(int size) {
        int[] all = new int[size];
        Arrays.fill(all, NONE);
        return all;
    }

    /** Matches two aircraft. */
    static UnitMatch of(Wiring base, Wiring other) {
        UnitMatch match = new UnitMatch(base, other);
        match.byName();
        if (!match.settled()) {
            match.byConnection();
        }
        return match;
    }

    private void byName() {
        for (int unit = 0; unit < to.length; unit++) {
            Directory there = other.directory();
            int found = there.find(base.directory().name(unit)).orElse(NONE);
            if (found >= 0
                    && back[found] < 0
                    && there.isJoint(found) == base.directory().isJoint(unit)) {
                pair(unit, found);
            }
        }
    }

    private void byConnection() {
        int before;
        do {
            before = pairs;
            Refinement colours = new Refinement(this).run();
            new Votes(this).run(false);
            if (pairs == before) {
                new Twins(this).pair(colours.classes());
            }
            if (pairs == before) {
                new Votes(this).run(true);
            }
        } while (pairs > before && !settled());
    }

    private boolean settled() {
        return pairs == to.length || pairs == back.length;
    }

    void pair(int unit, int found) {
        to[unit] = found;
        back[found] = unit;
        pairs++;
    }

    Wiring base() {
        return base;
    }

    Wiring other() {
        return other;
    }

    /** The unit of the other aircraft, or -1. */
    int to(int unit) {
        return to[unit];
    }

    /** The unit of the base, or -1. */
    int back(int unit) {
        return back[unit];
    }

    int[] to() {
        return to.clone();
    }

    int[] back() {
        return back.clone();
    }

    /** What a unit is by itself: the name of its type, or that it is a joint. */
    static String type(Wiring wiring, int unit) {
        Directory directory = wiring.directory();
        return directory.isJoint(unit)
                ? ""
                : directory.unit(unit).type().strip().toUpperCase(Locale.ROOT);
    }
}
