package ringout.check.record;

import ringout.check.form.Situation;
import ringout.finding.Draft;
import ringout.finding.Place;
import ringout.graph.order.Item;
import ringout.graph.order.Items;
import ringout.graph.order.PlanStep;
import ringout.model.ListedValue;

/** Places of rows that records point to. */
final class Rows {
    private Rows() {}

    /** Shows the row of a unit or lead. */
    static void see(Situation at, Item item, Draft draft) {
        if (item instanceof Item.OfLead lead) {
            Items.of(at.circuit())
                    .rows(lead.id())
                    .forEach(row -> draft.seen(at.aircraft().leads().get(row)));
        } else if (item instanceof Item.OfUnit of && !at.directory().isJoint(of.unit())) {
            draft.seen(at.directory().unit(of.unit()));
        } else if (item instanceof Item.OfPlug on && !at.directory().isJoint(on.unit())) {
            draft.seen(at.directory().unit(on.unit()));
        }
    }

    /** Where a step stands. */
    static Place place(PlanStep step) {
        return new Place(step.step().at(), step.step().id(), step.words());
    }

    /** Where a value on record stands. */
    static Place place(ListedValue value, String kind) {
        return new Place(
                value.at(),
                value.item(),
                kind + ": " + value.item() + " " + value.field().or("?"));
    }
}
