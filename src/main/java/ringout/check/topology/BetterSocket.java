package ringout.check.topology;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import ringout.check.form.Situation;
import ringout.graph.Site;
import ringout.graph.TypeLayout;
import ringout.graph.Wire;
import ringout.graph.Wiring;
import ringout.model.PinRole;

/** Open sockets of the two units of a lead in which one of its ends would fit, pin by pin. */
final class BetterSocket {
    private record Spot(int unit, int plug, String name, String now) {}

    private final List<Spot> spots = new ArrayList<>();

    private BetterSocket() {}

    static BetterSocket of(Situation at, Wire wire) {
        BetterSocket better = new BetterSocket();
        Site from = at.wiring().from(wire.leadIndex());
        Site to = at.wiring().to(wire.leadIndex());
        if (from instanceof Site.OnPlug a && to instanceof Site.OnPlug b) {
            better.look(at, wire.leadIndex(), a, true);
            better.look(at, wire.leadIndex(), b, false);
        }
        return better;
    }

    private void look(Situation at, int row, Site.OnPlug here, boolean from) {
        int count = at.directory().type(here.unit()).plugs().size();
        for (int plug = 0; plug < count; plug++) {
            if (plug != here.plug() && !OpenPlugs.wired(at, here.unit(), plug) && fits(at, row, here, plug, from)) {
                Wiring wiring = at.wiring();
                spots.add(new Spot(
                        here.unit(),
                        plug,
                        wiring.plugName(here.unit(), plug),
                        wiring.plugName(here.unit(), here.plug())));
            }
        }
    }

    /** Whether every conductor of a row would find a pin there that it may meet, and at least one the same signal. */
    private static boolean fits(Situation at, int row, Site.OnPlug here, int plug, boolean from) {
        Wiring wiring = at.wiring();
        TypeLayout layout = at.directory().layout(here.unit());
        boolean signal = false;
        for (int near = wiring.firstPin(here.unit(), here.plug());
                near < wiring.endPin(here.unit(), here.plug());
                near++) {
            for (int w : wiring.wiresAt(near)) {
                Wire wire = wiring.wires().get(w);
                if (wire.leadIndex() == row && near == (from ? wire.fromPin() : wire.toPin())) {
                    int pin = layout.pin(plug, wiring.pin(near).number());
                    PinRole far = wiring.role(wire.otherPin(near)).orElse(PinRole.NONE);
                    PinRole role = pin < 0
                            ? PinRole.NONE
                            : layout.pin(pin).role().known().orElse(PinRole.NONE);
                    if (pin < 0 || RolesThatMeet.verdict(role, far) != RolesThatMeet.Verdict.FINE) {
                        return false;
                    }
                    signal |= signal(role) && signal(far);
                }
            }
        }
        return signal;
    }

    private static boolean signal(PinRole role) {
        return role != PinRole.NONE && role != PinRole.PASSIVE && role != PinRole.ZERO_V && !RolesThatMeet.supply(role);
    }

    /** What to do with the leads. */
    String words(String ids) {
        Map<String, List<String>> byEnd = new LinkedHashMap<>();
        spots.forEach(spot ->
                byEnd.computeIfAbsent(spot.now(), key -> new ArrayList<>()).add(spot.name()));
        List<String> moves = new ArrayList<>();
        byEnd.forEach((end, names) -> moves.add(
                "the end of " + ids + " at " + end + " to " + String.join(" or ", names) + ", open and fitting"));
        return moves.isEmpty()
                ? "move " + ids + " to the right socket, or correct its pins"
                : "move " + String.join("; or ", moves);
    }

    /** The tokens of those sockets as open plugs. */
    List<String> causes(Situation at) {
        return spots.stream()
                .map(spot -> OpenPlugs.cause(at, spot.unit(), spot.plug()))
                .toList();
    }
}
