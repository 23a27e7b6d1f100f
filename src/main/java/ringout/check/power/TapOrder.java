package ringout.check.power;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import ringout.check.form.Check;
import ringout.check.form.CheckInfo;
import ringout.check.form.Gaps;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.finding.Severity;
import ringout.graph.Nets;
import ringout.graph.Wiring;
import ringout.model.Pin;
import ringout.model.PinRole;

/**
 * A balance or tap lead whose contacts are not in the order of the cells, or that is made before the main contacts.
 *
 * <p>Why it matters: a crossed tap lead shorts whole cells through a thin wire as soon as it is plugged; one that is made while a main
 * contact is open carries the current of all loads.
 *
 * <p>Condition: tap contacts on one net must tap the same cell end, counted from pack minus, which is 0. For a pack above others in
 * series the number at the other unit may be higher by the cells below, the same for all its contacts. A tap plug must be made
 * after plus and minus of its pack.
 *
 * <p>Does not see: fuses in the tap leads; taps of two packs of one stack joined with each other; the order in which a tap plug with
 * the main contacts in the same shell mates.
 *
 * <p>Reference: common practice, no source.
 */
@CheckInfo(
        code = "P38",
        name = "tap-order",
        severity = Severity.S1,
        since = "0.2",
        needs = {
            "cell end each contact of a tap plug taps",
            "cells of packs in series",
            "order in which pack plugs are made"
        })
public final class TapOrder implements Check {
    private static final String TAP = "number of the cell end";

    @Override
    public void look(Situation at, Outcomes out) {
        Gaps gaps = new Gaps();
        TapTurn turn = new TapTurn(at, out);
        for (List<Pack> stack : Pack.stacks(at)) {
            for (int place = 0; place < stack.size(); place++) {
                Pack pack = stack.get(place);
                for (TapPair pair : pairs(at, gaps, stack, pack).values()) {
                    judge(out, gaps, pair, stack.subList(0, place));
                }
                turn.judge(pack);
            }
        }
        gaps.tell(
                out,
                datum -> datum.equals(TAP)
                        ? new Gaps.Way("look it up in the pin-out, or measure it from pack minus", 2)
                        : PowerData.way(datum));
    }

    private static void judge(Outcomes out, Gaps gaps, TapPair pair, List<Pack> below) {
        List<Integer> shifts = new ArrayList<>();
        int cells = 0;
        for (Pack pack : below) {
            cells += pack.cells().or(0);
            shifts.add(cells);
        }
        int shift = pair.shift(shifts);
        if (pair.keeps(shift)) {
            out.looked();
        } else if (below.stream().allMatch(pack -> pack.cells().isKnown())) {
            out.finding(pair.draft(shift));
        } else {
            below.stream()
                    .filter(pack -> !pack.cells().isKnown())
                    .forEach(pack -> gaps.add(PowerData.CELLS, pack.name()));
        }
    }

    /** The units whose tap contacts are joined with those of a pack, and in {@code gaps} the contacts of unknown number. */
    private static Map<Integer, TapPair> pairs(Situation at, Gaps gaps, List<Pack> stack, Pack pack) {
        Wiring wiring = at.wiring();
        Nets nets = at.circuit().nets();
        int own = pack.source().unit();
        Map<Integer, TapPair> pairs = new TreeMap<>();
        for (int mine = wiring.firstPin(own); mine < wiring.endPin(own); mine++) {
            if (wiring.wiresAt(mine).length == 0 || !tapped(wiring.pin(mine))) {
                continue;
            }
            for (int other : nets.pins(nets.of(mine))) {
                int unit = wiring.unitOf(other);
                boolean tap = onTapPlug(wiring, mine) || onTapPlug(wiring, other);
                if (tap && !at.directory().isJoint(unit) && counts(at, stack, own, mine, other)) {
                    join(at, gaps, pairs.computeIfAbsent(unit, key -> new TapPair(at, pack, key)), mine, other);
                }
            }
        }
        pairs.values().removeIf(TapPair::isEmpty);
        return pairs;
    }

    /** Whether a pin may be a tap: all but the main contacts and those said to tap nothing. */
    private static boolean tapped(Pin pin) {
        boolean main = pin.role().is(PinRole.PACK_PLUS) || pin.role().is(PinRole.PACK_MINUS);
        return pin.cellTap().isKnown()
                || !(main || pin.cellTap().isNotApplicable() || pin.role().is(PinRole.NONE));
    }

    /** Whether a contact is to be held against one of a pack: each pair once, and none with a pack of the same stack. */
    private static boolean counts(Situation at, List<Pack> stack, int own, int mine, int other) {
        int unit = at.wiring().unitOf(other);
        if (unit == own) {
            return mine < other && at.wiring().pin(other).cellTap().isKnown();
        }
        boolean pack = Pack.stacks(at).stream()
                .flatMap(List::stream)
                .anyMatch(one -> one.source().unit() == unit);
        boolean beside = stack.stream().anyMatch(one -> one.source().unit() == unit);
        boolean zero = at.wiring().is(other, PinRole.ZERO_V) && !onTapPlug(at.wiring(), other);
        return tapped(at.wiring().pin(other)) && !beside && !zero && !(pack && unit < own);
    }

    private static boolean onTapPlug(Wiring wiring, int pin) {
        return wiring.plug(pin).pins().stream().anyMatch(one -> one.cellTap().isKnown());
    }

    private static void join(Situation at, Gaps gaps, TapPair pair, int mine, int other) {
        int myEnd = end(at.wiring().pin(mine));
        int otherEnd = end(at.wiring().pin(other));
        if (myEnd < 0) {
            gaps.add(TAP, at.wiring().name(mine));
        }
        if (otherEnd < 0) {
            gaps.add(TAP, at.wiring().name(other));
        }
        if (myEnd >= 0 && otherEnd >= 0) {
            pair.add(mine, myEnd, other, otherEnd);
        }
    }

    /** The cell end a contact taps; 0V of a tap plug is end 0; -1 when not known. */
    private static int end(Pin pin) {
        return pin.cellTap().or(pin.role().is(PinRole.ZERO_V) ? 0 : -1);
    }
}
