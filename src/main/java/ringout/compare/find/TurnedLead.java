package ringout.compare.find;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import ringout.model.Datum;
import ringout.model.FuseEnd;
import ringout.model.Lead;
import ringout.model.Shield;
import ringout.model.shape.Shape;

/** A row written from its other end: the same lead. */
final class TurnedLead {
    private static final Shape<Lead> SHAPE = Shape.of(Lead.class);
    private static final Map<String, String> ENDS = Map.of(
            "fromLabel", "toLabel",
            "fromFamily", "toFamily",
            "fromKey", "toKey",
            "fromHalf", "toHalf",
            "fromPlating", "toPlating");

    private TurnedLead() {}

    /** The row as it would be written from its other end. */
    static Lead of(Lead lead) {
        Lead turned = lead;
        for (Map.Entry<String, String> end : ENDS.entrySet()) {
            turned = SHAPE.with(turned, end.getKey(), value(lead, end.getValue()));
            turned = SHAPE.with(turned, end.getValue(), value(lead, end.getKey()));
        }
        turned = SHAPE.with(turned, "shield", lead.shield().is(Shield.FROM) ? Datum.of(Shield.TO) : shield(lead));
        turned = SHAPE.with(turned, "route", reversed(lead.route()));
        boolean atTo = lead.fuseAt().is(FuseEnd.TO);
        return lead.fuseA().isKnown()
                ? SHAPE.with(turned, "fuseAt", Datum.of(atTo ? FuseEnd.FROM : FuseEnd.TO))
                : turned;
    }

    private static Datum<Shield> shield(Lead lead) {
        return lead.shield().is(Shield.TO) ? Datum.of(Shield.FROM) : lead.shield();
    }

    private static Object value(Lead lead, String field) {
        return SHAPE.slot(field).orElseThrow().get(lead);
    }

    private static <T> List<T> reversed(List<T> list) {
        List<T> copy = new ArrayList<>(list);
        Collections.reverse(copy);
        return List.copyOf(copy);
    }
}
