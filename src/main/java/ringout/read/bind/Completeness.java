package ringout.read.bind;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import ringout.model.Aircraft;
import ringout.model.shape.Identity;
import ringout.model.shape.Slot;
import ringout.text.Problem;
import ringout.text.Problems;

/** Tells required fields that no file gave, and names given to two things. Runs when all files are in. */
public final class Completeness {
    private final Problems problems;

    private Completeness(Problems problems) {
        this.problems = problems;
    }

    /** Looks through a record and all inside it. */
    public static void check(Bag bag, Problems problems) {
        new Completeness(problems).record(bag);
    }

    private void record(Bag bag) {
        for (Slot slot : bag.shape().slots()) {
            switch (slot.kind()) {
                case REQUIRED -> required(bag, slot);
                case RECORD -> bag.get(slot).ifPresent(child -> record((Bag) child));
                case RECORDS -> {
                    if (bag.has(slot)) {
                        list(bag, slot);
                    }
                }
                default -> {}
            }
        }
    }

    private void required(Bag bag, Slot slot) {
        boolean mayBeEmpty = (bag.shape().isKey(slot) && Identity.mayBeEmpty(bag.shape()))
                || bag.shape().type() == Aircraft.class;
        Object value = bag.get(slot).orElse("");
        if (!mayBeEmpty && !bag.isSpoilt(slot) && value.toString().isBlank()) {
            problems.add(new Problem(
                    bag.at(),
                    Naming.of(bag) + " has no `" + slot.name() + "`",
                    bag.shape().isKey(slot) ? "" : "give it, or write ? when it is not known"));
        }
    }

    private void list(Bag parent, Slot slot) {
        List<Bag> children = parent.children(slot);
        children.forEach(this::record);
        if (children.isEmpty() || !Identity.unique(children.get(0).shape())) {
            return;
        }
        Map<String, Bag> seen = new HashMap<>();
        for (Bag child : children) {
            boolean nameless = child.key().isBlank() && !Identity.mayBeEmpty(child.shape());
            Bag first = nameless ? null : seen.putIfAbsent(Merge.fold(child), child);
            if (first != null) {
                problems.add(new Problem(
                        child.at(),
                        "there are two of " + Naming.of(child) + "; the other is in "
                                + first.at().words(),
                        "give one of them another name"));
            }
        }
    }
}
