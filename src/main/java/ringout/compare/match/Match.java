package ringout.compare.match;

import java.util.ArrayList;
import java.util.List;
import ringout.graph.Wiring;

/**
 * Which unit, contact and lead of one aircraft is which of another. Running time: linear in contacts and conductors where
 * names agree; colour refinement, O((n + m) log n), of the units whose names do not.
 */
public final class Match {
    private final Wiring base;
    private final Wiring other;
    private final UnitMatch units;
    private final PinMatch pins;
    private final List<Cable> cables;
    private final List<Cable> otherCables;
    private final CableMatch matched;

    private Match(Wiring base, Wiring other) {
        this.base = base;
        this.other = other;
        this.units = UnitMatch.of(base, other);
        this.pins = new PinMatch(units);
        this.cables = Cables.of(base);
        this.otherCables = Cables.of(other);
        this.matched = new CableMatch(base, other, cables, otherCables, pins);
    }

    /** Two leads that are one and the same. */
    public record Pair(Cable base, Cable other, boolean joinsSame) {}

    /** Matches two aircraft. */
    public static Match of(Wiring base, Wiring other) {
        return new Match(base, other);
    }

    /** The aircraft compared with. */
    public Wiring base() {
        return base;
    }

    /** The aircraft compared. */
    public Wiring other() {
        return other;
    }

    /** The leads of the base, in the order of its list. */
    public List<Cable> cables() {
        return cables;
    }

    /** The leads of the other aircraft, in the order of its list. */
    public List<Cable> otherCables() {
        return otherCables;
    }

    /** Number in the other aircraft of a unit or joint of the base, or -1. */
    public int unit(int unit) {
        return units.to(unit);
    }

    /** Number in the base of a unit or joint of the other aircraft, or -1. */
    public int unitBack(int unit) {
        return units.back(unit);
    }

    /** Contact of the other aircraft that is a contact of the base, or -1. */
    public int pin(int pin) {
        return pins.to(pin);
    }

    /** Contact of the base that is a contact of the other aircraft, or -1. */
    public int pinBack(int pin) {
        return pins.back(pin);
    }

    /** The leads that are in both, in the order of the base, and whether they join the same contacts. */
    public List<Pair> pairs() {
        List<Pair> pairs = new ArrayList<>(cables.size());
        for (int cable = 0; cable < cables.size(); cable++) {
            if (matched.to(cable) >= 0) {
                pairs.add(new Pair(cables.get(cable), otherCables.get(matched.to(cable)), matched.joinsSame(cable)));
            }
        }
        return pairs;
    }

    /** The leads only the base has. */
    public List<Cable> gone() {
        List<Cable> gone = new ArrayList<>();
        for (int cable = 0; cable < cables.size(); cable++) {
            if (matched.to(cable) < 0) {
                gone.add(cables.get(cable));
            }
        }
        return gone;
    }

    /** The leads only the other aircraft has. */
    public List<Cable> added() {
        List<Cable> added = new ArrayList<>();
        for (int cable = 0; cable < otherCables.size(); cable++) {
            if (matched.back(cable) < 0) {
                added.add(otherCables.get(cable));
            }
        }
        return added;
    }
}
