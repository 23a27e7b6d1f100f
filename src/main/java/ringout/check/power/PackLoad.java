package ringout.check.power;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import ringout.check.form.Situation;
import ringout.graph.power.PlacedLoad;
import ringout.graph.power.PowerSource;
import ringout.graph.power.SourceReach;
import ringout.model.Datum;
import ringout.model.Lead;
import ringout.model.PinRole;

/**
 * What a pack has to give.
 *
 * @param at the situation
 * @param pack the pack
 * @param flow what flows with all loads at their average
 * @param highest the case of peaks in which it gives most
 */
record PackLoad(Situation at, PowerSource pack, Flowing flow, OutputLoad.Peak highest) {
    /** The loads it may have to feed. */
    List<PlacedLoad> loads() {
        return SourceReach.of(at.circuit()).loads(pack);
    }

    /** Its current in A in the case of peaks. */
    double peakA() {
        return highest.flow().amps(pack);
    }

    /** The part of its average that rests on assumed figures. */
    double averageRests() {
        return flow.assumedPart(loads(), LoadGaps::averageFigures);
    }

    /** The part of its peak that rests on assumed figures. */
    double peakRests() {
        return highest.flow().assumedPart(loads(), LoadGaps::peakFigures);
    }

    /** The contacts of the pack that carry its current and have a conductor. */
    List<Integer> pins() {
        List<Integer> pins = new ArrayList<>();
        for (int pin = at.wiring().firstPin(pack.unit()); pin < at.wiring().endPin(pack.unit()); pin++) {
            PinRole role = at.wiring().pin(pin).role().or(PinRole.NONE);
            boolean pole = role == PinRole.PACK_PLUS || role == PinRole.PACK_MINUS;
            if (pole && Supplies.wired(at, pin)) {
                pins.add(pin);
            }
        }
        return pins;
    }

    /** Name of the plug of a contact. */
    String plug(int pin) {
        return at.wiring().plugName(pack.unit(), at.wiring().plugIndex(pin));
    }

    /** Average current of a contact in A. */
    double average(int pin) {
        return Math.abs(flow.flow().intoPin(pin));
    }

    /** Its current in A in the case of peaks. */
    double peak(int pin) {
        return Math.abs(highest.flow().flow().intoPin(pin));
    }

    /** How long the peak lasts in s: as the row of the lead at a contact says, else as the loads and events say. */
    OptionalDouble seconds(int pin) {
        if (!untimed(pin).isEmpty()) {
            return OptionalDouble.empty();
        }
        OptionalDouble row = Supplies.leadsAt(at, List.of(pin)).stream()
                .map(Lead::peakS)
                .filter(seconds -> seconds.isKnown())
                .mapToDouble(seconds -> seconds.or(0.0))
                .max();
        return row.isPresent() ? row : FuseBelowLoad.longest(at, loads(), highest.of());
    }

    /** Rows at a contact that are marked as not knowing how long the peak lasts. */
    List<String> untimed(int pin) {
        return Supplies.leadsAt(at, List.of(pin)).stream()
                .filter(lead -> lead.peakS() instanceof Datum.Unknown)
                .map(Lead::id)
                .toList();
    }
}
