package ringout.check.power;

import java.util.ArrayList;
import java.util.List;
import ringout.check.form.Figures;
import ringout.check.form.Situation;
import ringout.finding.Draft;
import ringout.finding.Severity;
import ringout.graph.Trail;
import ringout.model.Datum;

/** A pack and another unit whose tap contacts are joined. */
final class TapPair {
    private static final int SHOWN = 2;

    /** A tap contact of the pack, one of the other unit on the same net, and the cell ends they tap. */
    private record Joined(int mine, int myEnd, int other, int otherEnd) {
        int shift() {
            return otherEnd - myEnd;
        }
    }

    private final Situation at;
    private final Pack pack;
    private final int unit;
    private final List<Joined> joined = new ArrayList<>();

    TapPair(Situation at, Pack pack, int unit) {
        this.at = at;
        this.pack = pack;
        this.unit = unit;
    }

    void add(int mine, int myEnd, int other, int otherEnd) {
        joined.add(new Joined(mine, myEnd, other, otherEnd));
    }

    boolean isEmpty() {
        return joined.isEmpty();
    }

    /** The shift of the numbers, of those that can be right, that most of the joined contacts keep; 0 where none is better. */
    int shift(List<Integer> possible) {
        int best = 0;
        for (int shift : possible) {
            if (kept(shift) > kept(best)) {
                best = shift;
            }
        }
        return best;
    }

    private long kept(int shift) {
        return joined.stream().filter(one -> one.shift() == shift).count();
    }

    boolean keeps(int shift) {
        return kept(shift) == joined.size();
    }

    Draft draft(int shift) {
        List<Joined> wrong = joined.stream().filter(one -> one.shift() != shift).toList();
        String other = at.directory().name(unit);
        Joined first = wrong.get(0);
        List<String> shown =
                wrong.stream().limit(SHOWN).map(one -> words(one, shift)).toList();
        String more = wrong.size() > SHOWN ? ", and " + (wrong.size() - SHOWN) + " more" : "";
        Draft draft = Draft.of(
                        Severity.S1,
                        "tap leads out of order from " + pack.name() + " to " + other + ": " + String.join(", ", shown)
                                + more)
                .about(pack.name(), other)
                .path(at.circuit().trail(first.mine, first.other).orElse(Trail.NONE))
                .sum(name(first.mine) + ": " + sum(first.myEnd) + ", " + name(first.other) + ": "
                        + sum(first.otherEnd - shift))
                .why(
                        "whole cells are shorted through thin tap leads as soon as the plug is made, or the monitor reads and"
                                + " balances the wrong cell")
                .meter("plug out at " + other + ": volts from minus of " + pack.name()
                        + " to each tap contact, one cell more from contact to contact")
                .fix("join equal cell ends: "
                        + String.join(
                                ", ",
                                wrong.stream()
                                        .map(one -> name(one.mine) + " to the contact of " + other + " for cell end "
                                                + (one.myEnd + shift))
                                        .toList()))
                .input(pack.rating().nominalV());
        wrong.forEach(one -> rows(draft, one));
        return draft;
    }

    private void rows(Draft draft, Joined one) {
        for (int wire : at.wiring().wiresAt(one.mine)) {
            draft.at(at.wiring().wires().get(wire).lead());
        }
    }

    private String words(Joined one, int shift) {
        return name(one.mine) + " at " + potential(one.myEnd) + " on " + name(one.other) + " for "
                + potential(one.otherEnd - shift);
    }

    private String potential(int cells) {
        Datum<Double> nominal = pack.rating().nominalV();
        return nominal.isKnown() ? Figures.of(cells * nominal.or(0.0)) + " V" : "cell end " + cells;
    }

    private String sum(int cells) {
        Datum<Double> nominal = pack.rating().nominalV();
        return nominal.isKnown()
                ? cells + " x " + Figures.of(nominal.or(0.0)) + " V = " + potential(cells)
                : potential(cells);
    }

    private String name(int pin) {
        return at.wiring().name(pin);
    }
}
