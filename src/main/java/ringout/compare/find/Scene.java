package ringout.compare.find;

import ringout.compare.match.Cable;
import ringout.compare.match.Match;
import ringout.finding.Place;
import ringout.graph.Circuit;
import ringout.graph.Wiring;
import ringout.model.Lead;
import ringout.model.Unit;

/**
 * Two aircraft as the finders look at them.
 *
 * @param match what of one is what of the other
 * @param here the base with everything plugged
 * @param there the other aircraft with everything plugged
 * @param names whether texts name the same
 * @param values whether values say the same
 */
record Scene(Match match, Circuit here, Circuit there, Names names, Values values) {
    static Scene of(Circuit base, Circuit other) {
        Match match = Match.of(base.wiring(), other.wiring());
        Names names = new Names(match);
        return new Scene(match, base.whole(), other.whole(), names, new Values(names));
    }

    static Place place(Lead lead) {
        return new Place(lead.at(), lead.id(), lead.id() + ": " + lead.from() + " to " + lead.to());
    }

    static Place place(Cable cable) {
        return place(cable.row());
    }

    static Place place(Unit unit) {
        return new Place(unit.at(), unit.ref(), unit.ref() + ": " + unit.what().or(unit.type()));
    }

    /** Name of a contact of the other aircraft, in the names of the base as far as it has it. */
    String there(int pin) {
        int known = match.pinBack(pin);
        return known >= 0 ? match.base().name(known) : match.other().name(pin);
    }

    /** Name of the plug of a contact of the other aircraft, in the names of the base as far as it has the unit. */
    String plugThere(int pin) {
        Wiring other = match.other();
        int unit = match.unitBack(other.unitOf(pin));
        String own = other.plugName(other.unitOf(pin), other.plugIndex(pin));
        if (unit < 0) {
            return own;
        }
        String name = match.base().directory().name(unit);
        return other.directory().isJoint(other.unitOf(pin))
                ? name
                : name + "-" + other.plug(pin).name();
    }

    String plugHere(int pin) {
        return match.base().plugName(match.base().unitOf(pin), match.base().plugIndex(pin));
    }
}
