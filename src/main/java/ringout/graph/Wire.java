package ringout.graph;

import java.util.Optional;
import ringout.model.Awg;
import ringout.model.Conductor;
import ringout.model.Datum;
import ringout.model.Lead;

/**
 * One conductor of a lead.
 *
 * @param index number among all wires
 * @param leadIndex number of its row in the list
 * @param lead its lead
 * @param own what of it differs from the lead, if anything
 * @param fromPin vertex of the pin at the from end
 * @param toPin vertex of the pin at the to end
 * @param fromEnd vertex of the wire end there, on the lead's side of the contact
 * @param toEnd vertex of the wire end at the other side
 */
public record Wire(
        int index, int leadIndex, Lead lead, Optional<Conductor> own, int fromPin, int toPin, int fromEnd, int toEnd) {

    /** Wire size as a gauge; not known where the number is no gauge there is. */
    public Datum<Awg> awg() {
        Datum<Awg> listed = own.isPresent() ? own.get().awg().orElse(lead.awg()) : lead.awg();
        return listed instanceof Datum.Known<Awg> known && !known.value().isUsual() ? Datum.unknown() : listed;
    }

    /** Cross-section in mm2: as listed, or from the gauge (ASTM B258). */
    public Datum<Double> areaMm2() {
        Datum<Double> listed = own.isPresent() ? own.get().areaMm2().orElse(lead.areaMm2()) : lead.areaMm2();
        if (listed.isKnown() || !(awg() instanceof Datum.Known<Awg> known)) {
            return listed;
        }
        return new Datum.Known<>(known.value().areaMm2(), known.origin(), known.date());
    }

    /** Cut length in mm. */
    public Datum<Double> lengthMm() {
        return own.isPresent() ? own.get().lengthMm().orElse(lead.lengthMm()) : lead.lengthMm();
    }

    /** The pin at the other end. */
    public int otherPin(int pin) {
        return pin == fromPin ? toPin : fromPin;
    }

    /** The wire end mated with a pin. */
    public int endAt(int pin) {
        return pin == fromPin ? fromEnd : toEnd;
    }

    // Its number among the wires says which it is; comparing every field of its lead would cost far more.
    @Override
    public boolean equals(Object other) {
        return this == other || (other instanceof Wire that && index == that.index && lead.equals(that.lead));
    }

    @Override
    public int hashCode() {
        return index;
    }
}
