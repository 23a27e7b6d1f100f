package ringout.check.power;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ringout.check.form.Situation;
import ringout.finding.Draft;
import ringout.graph.Gap;
import ringout.graph.Wire;
import ringout.graph.Wiring;
import ringout.solve.Resistivity;
import ringout.solve.power.PowerFlow;

/** The main return beside a conductor: the one that carries most of what the same unit sends back over the same net. */
final class ParallelReturn {
    private ParallelReturn() {}

    /** The conductor beside which another one takes its share; none when the current of the unit has no larger way back. */
    static Optional<Wire> main(Situation at, PowerFlow flow, Wire thin) {
        Wiring wiring = at.wiring();
        double amps = flow.amps(thin);
        int leaving = amps > 0 ? thin.fromPin() : thin.toPin();
        int net = at.circuit().nets().of(leaving);
        int unit = wiring.unitOf(leaving);
        Wire main = thin;
        for (int pin = wiring.firstPin(unit); pin < wiring.endPin(unit); pin++) {
            if (flow.intoPin(pin) < 0 && at.circuit().nets().of(pin) == net) {
                for (int w : wiring.wiresAt(pin)) {
                    Wire other = wiring.wires().get(w);
                    main = Math.abs(flow.amps(other)) > Math.abs(flow.amps(main)) ? other : main;
                }
            }
        }
        return main.index() == thin.index() || main.leadIndex() == thin.leadIndex()
                ? Optional.empty()
                : Optional.of(main);
    }

    /** Data that the share of a conductor beside a larger one rests on and nobody gave. */
    static List<Gap> guessed(Situation at, PowerFlow flow, Wire thin) {
        return main(at, flow, thin).map(main -> open(at, main)).orElse(List.of());
    }

    /** Says of a finding about a conductor that its current comes from the main return beside it, where there is one. */
    static void tell(Situation at, PowerFlow flow, Wire thin, Draft draft) {
        main(at, flow, thin).ifPresent(main -> {
            String id = main.lead().id();
            draft.cause(id);
            draft.seen(main.lead());
            draft.why("it takes a share of the return of " + id + " beside it, which is no business of "
                            + thin.lead().id())
                    .fix("clean or renew the contacts of " + id + ", the main return beside "
                            + thin.lead().id() + ", or take a thicker or shorter " + id);
        });
    }

    /** Data of a conductor and its contacts that nobody gave. */
    static List<Gap> open(Situation at, Wire main) {
        Wiring wiring = at.wiring();
        List<Gap> open = new ArrayList<>();
        for (int pin : new int[] {main.fromPin(), main.toPin()}) {
            if (!Resistivity.contactKnown(wiring, pin)) {
                int unit = wiring.unitOf(pin);
                String name = at.directory().isJoint(unit)
                        ? at.directory().name(unit)
                        : wiring.plugName(unit, wiring.plugIndex(pin));
                open.add(new Gap(PowerData.CONTACT, name));
            }
        }
        if (!main.areaMm2().isKnown()) {
            open.add(new Gap("wire size", main.lead().id()));
        }
        if (!main.lengthMm().isKnown()) {
            open.add(new Gap("length", main.lead().id()));
        }
        return open;
    }
}
