package ringout.read.bind;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiFunction;
import ringout.model.shape.Identity;
import ringout.model.shape.Slot;
import ringout.text.Problem;
import ringout.text.Problems;
import ringout.text.Span;

/** Tells required fields that no file gave, and names given to two things. Runs when all files are in. */
public final class Completeness {
    private final Problems problems;
    private final BiFunction<Span, String, Span> cell;

    private Completeness(Problems problems, BiFunction<Span, String, Span> cell) {
        this.problems = problems;
        this.cell = cell;
    }

    /** Looks through a record and all inside it. */
    public static void check(Bag bag, Problems problems) {
        check(bag, problems, (at, field) -> at);
    }

    /**
     * The same.
     *
     * @param cell where a field of a record stands, by the place of the record and the name of the field
     */
    public static void check(Bag bag, Problems problems, BiFunction<Span, String, Span> cell) {
        new Completeness(problems, cell).record(bag);
    }

    private void record(Bag bag) {
        if (bag.isSettled()) {
            return;
        }
        bag.shape().needed().forEach(slot -> required(bag, slot));
        for (Slot slot : bag.shape().records()) {
            if (bag.has(slot)) {
                if (slot.kind() == Slot.Kind.RECORD) {
                    record(bag.child(slot));
                } else {
                    list(bag, slot);
                }
            }
        }
    }

    private void required(Bag bag, Slot slot) {
        Object value = bag.get(slot).orElse("");
        if (!bag.isSpoilt(slot) && value.toString().isBlank()) {
            problems.add(new Problem(
                    cell.apply(bag.at(), slot.name()),
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
