package ringout.check.power;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import ringout.check.build.MadeOrder;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.finding.Draft;
import ringout.finding.Place;
import ringout.finding.Severity;
import ringout.graph.Wiring;
import ringout.model.PinRole;

/** The turn of the tap plugs of a pack in the order in which its plugs are made. */
final class TapTurn {
    private final Situation at;
    private final Outcomes out;
    private final MadeOrder order;

    TapTurn(Situation at, Outcomes out) {
        this.at = at;
        this.out = out;
        this.order = MadeOrder.of(at);
    }

    void judge(Pack pack) {
        List<Integer> taps = new ArrayList<>();
        List<Integer> mains = new ArrayList<>();
        sort(pack.source().unit(), taps, mains);
        if (taps.isEmpty() || mains.isEmpty()) {
            return;
        }
        if (order.all().isEmpty()) {
            out.cannotTell("order in which the pack plugs are made", "write it down as it is done", 2, pack.name());
            return;
        }
        List<String> untold = new ArrayList<>();
        for (int pin : taps) {
            if (turn(pin) < 0) {
                untold.add(plug(pin));
            } else {
                mains.stream().filter(main -> turn(main) < 0).map(this::plug).forEach(untold::add);
                tap(pack, pin, mains);
            }
        }
        if (!untold.isEmpty()) {
            String[] names = new TreeSet<>(untold).toArray(new String[0]);
            out.cannotTell(
                    "turn of " + String.join(", ", names) + " in the order in which the pack plugs are made",
                    "write it down as it is done",
                    2,
                    names);
        }
    }

    /** The first wired pin of each made tap plug and of each made main plug. */
    private void sort(int unit, List<Integer> taps, List<Integer> mains) {
        Wiring wiring = at.wiring();
        int last = -1;
        for (int pin = wiring.firstPin(unit); pin < wiring.endPin(unit); pin++) {
            int plug = wiring.plugIndex(pin);
            if (plug == last || wiring.wiresAt(pin).length == 0 || !at.circuit().mated(pin)) {
                continue;
            }
            if (MadeOrder.isTap(wiring.plug(pin))) {
                taps.add(pin);
                last = plug;
            } else if (wiring.is(pin, PinRole.PACK_PLUS) || wiring.is(pin, PinRole.PACK_MINUS)) {
                mains.add(pin);
                last = plug;
            }
        }
    }

    private void tap(Pack pack, int tap, List<Integer> mains) {
        int turn = turn(tap);
        List<String> later =
                mains.stream().filter(main -> turn(main) > turn).map(this::plug).toList();
        if (later.isEmpty()) {
            if (mains.stream().allMatch(main -> turn(main) >= 0)) {
                out.looked();
            }
            return;
        }
        List<String> all = order.all().stream().map(MadeOrder.Made::name).toList();
        String mates = String.join(", ", later);
        out.finding(Draft.of(
                        Severity.S1,
                        "tap before main: " + plug(tap) + " of " + pack.name() + " is made before " + mates)
                .about(pack.name(), plug(tap))
                .at(place(order.all().get(turn)))
                .sum("made in this order: " + String.join(", ", all))
                .why("with a main contact open the current of the loads takes the thin tap leads and the unit behind"
                        + " them: they burn")
                .fix("make " + plug(tap) + " after " + mates + " and break it first"));
    }

    private Place place(MadeOrder.Made made) {
        return made.place().span().known()
                ? made.place()
                : new Place(at.aircraft().airframe().at(), "plug order", "plug order of the airframe");
    }

    /** The turn of the plug of a pin, told at the pack or at the other end of its lead; -1 when neither is told. */
    private int turn(int pin) {
        Wiring wiring = at.wiring();
        int turn = told(plug(pin));
        for (int wire : wiring.wiresAt(pin)) {
            int far = wiring.wires().get(wire).otherPin(pin);
            turn = turn >= 0 || at.directory().isJoint(wiring.unitOf(far)) ? turn : told(plug(far));
        }
        return turn;
    }

    private int told(String plug) {
        List<MadeOrder.Made> all = order.all();
        for (int i = 0; i < all.size(); i++) {
            if (all.get(i).name().equals(plug)) {
                return i;
            }
        }
        return -1;
    }

    private String plug(int pin) {
        return at.wiring().plugName(at.wiring().unitOf(pin), at.wiring().plugIndex(pin));
    }
}
