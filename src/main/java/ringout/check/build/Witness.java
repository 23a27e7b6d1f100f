package ringout.check.build;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import ringout.check.form.Situation;
import ringout.graph.order.BuildPlan;
import ringout.graph.order.Item;
import ringout.graph.order.Items;
import ringout.graph.order.PlanStep;
import ringout.graph.order.Progress;
import ringout.graph.order.StepKind;
import ringout.model.Datum;
import ringout.model.Photo;
import ringout.model.Torque;

/** What is on record of a joint under a lid, or planned before the lid. */
public enum Witness {
    /** There is a witness. */
    THERE,
    /** There is none. */
    NONE,
    /** Something is written of it and nobody knows what. */
    UNKNOWN;

    /** What counts as a witness. */
    public enum Wanted {
        /** A photo alone. */
        PHOTO,
        /** A photo, a torque or a witness mark. */
        TORQUE_OR_PHOTO
    }

    /** The witness of a plug or joint. What is planned counts as long as the lid is not known to be closed. */
    public static Witness of(Situation at, int unit, int plug, Wanted wanted) {
        Witness recorded = recorded(at, unit, plug, wanted);
        if (recorded != NONE) {
            return recorded;
        }
        java.util.BitSet pins = new java.util.BitSet();
        pins.set(at.wiring().firstPin(unit, plug), at.wiring().endPin(unit, plug));
        Optional<Progress.Closed> chance = Progress.of(at.circuit()).lastChance(pins);
        boolean closed = chance.isPresent() && chance.get().by().step().done().isKnown();
        return closed ? NONE : planned(at, unit, plug, wanted, chance);
    }

    private static Witness recorded(Situation at, int unit, int plug, Wanted wanted) {
        Items items = Items.of(at.circuit());
        Witness seen = NONE;
        for (Photo photo : at.aircraft().record().photos()) {
            if (means(items.find(photo.item()), unit, plug)) {
                if (!(photo.file() instanceof Datum.Unknown) || photo.hash().isKnown()) {
                    return THERE;
                }
                seen = UNKNOWN;
            }
        }
        if (wanted == Wanted.TORQUE_OR_PHOTO) {
            for (Torque torque : at.aircraft().record().torques()) {
                if (means(items.find(torque.item()), unit, plug)) {
                    if (torque.newtonMetre().isKnown() || torque.witness().is(true)) {
                        return THERE;
                    }
                    boolean open =
                            torque.newtonMetre().isMissing() && torque.witness().isMissing();
                    seen = open ? UNKNOWN : seen;
                }
            }
        }
        return seen;
    }

    private static Witness planned(Situation at, int unit, int plug, Wanted wanted, Optional<Progress.Closed> chance) {
        List<PlanStep> steps = BuildPlan.of(at.circuit()).steps();
        int end = chance.map(closed -> closed.by().index()).orElse(steps.size());
        Witness seen = NONE;
        for (PlanStep step : steps.subList(0, end)) {
            if (step.items().stream().anyMatch(item -> means(item, unit, plug))) {
                String words = step.step().attribute().or("").toLowerCase(Locale.ROOT);
                boolean torque = step.is(StepKind.CHECK) && (words.contains("torque") || words.contains("witness"));
                if (step.is(StepKind.PHOTO) || (torque && wanted == Wanted.TORQUE_OR_PHOTO)) {
                    return THERE;
                }
                boolean open = step.kind().isEmpty()
                        || (step.is(StepKind.CHECK) && step.step().attribute() instanceof Datum.Unknown);
                seen = open ? UNKNOWN : seen;
            }
        }
        return seen;
    }

    /** Whether an item is a plug, a pin of it, its unit or the joint itself. */
    private static boolean means(Item item, int unit, int plug) {
        return (item instanceof Item.OfUnit of && of.unit() == unit)
                || (item instanceof Item.OfPlug on && on.unit() == unit && on.plug() == plug)
                || (item instanceof Item.OfPin on && on.unit() == unit && on.plug() == plug);
    }
}
