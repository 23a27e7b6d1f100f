package ringout.read.bind;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import ringout.model.Datum;
import ringout.model.Origin;
import ringout.model.shape.Identity;
import ringout.model.shape.Slot;
import ringout.text.Problem;
import ringout.text.Problems;

/**
 * Puts what two files say of one aircraft together. Records meet by their key; the n-th of a key meets the n-th of that
 * key in the other file. A field given in both with different values is told, never chosen.
 */
public final class Merge {
    private final Problems problems;

    private Merge(Problems problems) {
        this.problems = problems;
    }

    /** Adds to one record what another says of the same thing. */
    public static void into(Bag base, Bag more, Problems problems) {
        new Merge(problems).merge(base, more);
    }

    /** The key of a record as it is compared. */
    public static String fold(Bag bag) {
        return Identity.fold(bag.shape(), bag.key());
    }

    private void merge(Bag base, Bag more) {
        if (!base.at().known()) {
            base.at(more.at());
        }
        for (Slot slot : base.shape().slots()) {
            more.get(slot).ifPresent(value -> merge(slot, base, more, value));
        }
    }

    private void merge(Slot slot, Bag base, Bag more, Object value) {
        Object own = base.get(slot).orElse(null);
        if (Alike.blank(own)) {
            base.put(slot, value);
        } else if (slot.kind() == Slot.Kind.RECORD) {
            merge(base.child(slot), more.child(slot));
        } else if (slot.kind() == Slot.Kind.RECORDS) {
            lists(slot, base, more);
        } else if (own != null && !Alike.blank(value)) {
            scalar(slot, base, more, own, value);
        }
    }

    private void scalar(Slot slot, Bag base, Bag more, Object own, Object value) {
        if (base.shape().isKey(slot) || own.equals(value)) {
            return;
        }
        if (own instanceof Datum.Known<?> a
                && value instanceof Datum.Known<?> b
                && a.value().equals(b.value())) {
            if (a.origin() == Origin.LIST && a.date().isEmpty()) {
                base.put(slot, value);
                return;
            }
            if (b.origin() == Origin.LIST && b.date().isEmpty()) {
                return;
            }
        }
        problems.add(new Problem(
                more.at(),
                "`" + slot.name() + "` of " + Naming.of(base) + " is " + Naming.value(value) + " here and "
                        + Naming.value(own) + " in " + base.at().words(),
                "keep one of them"));
    }

    private void lists(Slot slot, Bag base, Bag more) {
        List<Bag> own = base.children(slot);
        List<Bag> extra = more.children(slot);
        if (extra.isEmpty()) {
            return;
        }
        if (extra.get(0).shape().key().isEmpty()) {
            keyless(slot, base, more);
            return;
        }
        Map<String, Bag> byKey = numbered(own);
        Map<String, Integer> count = new HashMap<>();
        for (Bag bag : extra) {
            Bag match = byKey.get(nth(bag, count));
            if (match == null) {
                own.add(bag);
            } else {
                merge(match, bag);
            }
        }
    }

    private void keyless(Slot slot, Bag base, Bag more) {
        Alike.difference(slot, base, more)
                .ifPresent(where -> problems.add(new Problem(
                        more.at(),
                        "`" + slot.name() + "` of " + Naming.of(base) + " is given here and in "
                                + base.at().words() + ", with a difference in " + where,
                        "keep one of them")));
    }

    private static Map<String, Bag> numbered(List<Bag> bags) {
        Map<String, Bag> byKey = new HashMap<>();
        Map<String, Integer> count = new HashMap<>();
        for (Bag bag : bags) {
            byKey.put(nth(bag, count), bag);
        }
        return byKey;
    }

    private static String nth(Bag bag, Map<String, Integer> count) {
        String key = fold(bag);
        return key + "\n" + count.merge(key, 1, Integer::sum);
    }
}
