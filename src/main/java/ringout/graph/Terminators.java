package ringout.graph;

import ringout.model.BusPort;
import ringout.model.Datum;
import ringout.model.PortSetting;
import ringout.model.StateSetting;
import ringout.model.TerminatorFit;
import ringout.model.TerminatorState;
import ringout.model.Unit;

/** Whether the terminator of a bus node is in the circuit. */
public final class Terminators {
    /** What is known of a terminator. */
    public enum Seen {
        /** In the circuit. */
        ON,
        /** Not in the circuit. */
        OFF,
        /** Not known. */
        UNKNOWN
    }

    private Terminators() {}

    /** The state of a terminator in a circuit: what the state of the aircraft sets, else the unit's setting, else its type. */
    public static Seen state(Circuit circuit, Part.Terminator terminator) {
        Unit unit = circuit.wiring().directory().unit(terminator.unit());
        BusPort port = terminator.port();
        Datum<TerminatorState> set = circuit.setting(terminator.unit(), port.name())
                .map(StateSetting::terminator)
                .filter(told -> told.isKnown() || told instanceof Datum.Unknown)
                .or(() -> PortSettings.of(unit, port.name()).map(PortSetting::terminator))
                .orElse(Datum.notAsked());
        return set.known().map(value -> seen(value, port)).orElseGet(() -> byFit(set, port));
    }

    private static Seen seen(TerminatorState state, BusPort port) {
        return switch (state) {
            case ON, FIXED, PLUG -> Seen.ON;
            case OFF, NONE -> Seen.OFF;
            case AUTO -> byFit(Datum.notAsked(), port);
        };
    }

    private static Seen byFit(Datum<TerminatorState> set, BusPort port) {
        if (set.isNotApplicable() || port.terminator().is(TerminatorFit.NONE)) {
            return Seen.OFF;
        }
        return port.terminator().is(TerminatorFit.FIXED) && !(set instanceof Datum.Unknown) ? Seen.ON : Seen.UNKNOWN;
    }
}
