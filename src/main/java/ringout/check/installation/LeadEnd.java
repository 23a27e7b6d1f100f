package ringout.check.installation;

import java.util.List;
import java.util.function.Consumer;
import ringout.check.form.Situation;
import ringout.graph.Site;
import ringout.graph.Wiring;
import ringout.model.ContactHalf;
import ringout.model.Datum;
import ringout.model.Lead;
import ringout.model.Plug;

/**
 * One end of a lead and the plug of the unit it goes to.
 *
 * @param lead the lead
 * @param from whether it is the from end
 * @param unit number of the unit
 * @param plugIndex number of the plug in its type
 * @param plug the plug on the unit
 */
record LeadEnd(Lead lead, boolean from, int unit, int plugIndex, Plug plug) {
    /** All ends at plugs of units whose type is known, in the order of the rows; joints have no plug. */
    static void each(Situation at, Consumer<LeadEnd> use) {
        Wiring wiring = at.wiring();
        List<Lead> leads = at.aircraft().leads();
        for (int i = 0; i < leads.size(); i++) {
            tell(at, leads.get(i), true, wiring.from(i), use);
            tell(at, leads.get(i), false, wiring.to(i), use);
        }
    }

    private static void tell(Situation at, Lead lead, boolean from, Site site, Consumer<LeadEnd> use) {
        int unit = -1;
        int plug = -1;
        if (site instanceof Site.OnPlug on) {
            unit = on.unit();
            plug = on.plug();
        } else if (site instanceof Site.OnPin on) {
            unit = on.unit();
            plug = on.plug();
        }
        if (unit >= 0 && !at.directory().isJoint(unit) && at.directory().typeKnown(unit)) {
            Plug on = at.directory().type(unit).plugs().get(plug);
            use.accept(new LeadEnd(lead, from, unit, plug, on));
        }
    }

    /** UNIT-PLUG. */
    String name(Situation at) {
        return at.wiring().plugName(unit, plugIndex);
    }

    /** Plug family of the lead here. */
    Datum<String> family() {
        return from ? lead.fromFamily() : lead.toFamily();
    }

    /** Key code of the lead's plug here. */
    Datum<String> key() {
        return from ? lead.fromKey() : lead.toKey();
    }

    /** Contacts of the lead's plug here. */
    Datum<ContactHalf> half() {
        return from ? lead.fromHalf() : lead.toHalf();
    }

    /** Plating of the lead's contacts here. */
    Datum<String> plating() {
        return from ? lead.fromPlating() : lead.toPlating();
    }

    /** Field of the lead that holds something of this end. */
    String field(String what) {
        return lead.id() + (from ? " from " : " to ") + what;
    }
}
