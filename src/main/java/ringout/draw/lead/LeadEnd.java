package ringout.draw.lead;

import ringout.draw.face.Face;

/**
 * An end of a lead.
 *
 * @param label what is printed on its label; empty when none is told
 * @param face the plug
 */
public record LeadEnd(String label, Face face) {
    /** {@return the plug of the unit it goes into, or the joint} */
    public String plug() {
        return face.plug();
    }
}
