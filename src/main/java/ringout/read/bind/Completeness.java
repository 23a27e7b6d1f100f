package ringout.read.bind;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import ringout.model.Aircraft;
import ringout.model.HiddenDevice;
import ringout.model.Lead;
import ringout.model.Message;
import ringout.model.PortSetting;
import ringout.model.shape.Slot;
import ringout.text.Problem;
import ringout.text.Problems;

/** Tells required fields that no file gave, and names given to two things. Runs when all files are in. */
public final class Completeness {
    /** The names of these fields tell one record from its siblings. */
    private static final Set<String> IDENTITIES = Set.of("id", "ref", "name", "number", "output", "port");

    /** A lead may have a row for each wire; several equal devices or messages are usual. */
    private static final Set<Class<?>> REPEATED = Set.of(Lead.class, HiddenDevice.class, Message.class);

    /** A unit with one port needs no port name; an aircraft without a name is called as its file. */
    private static final Set<Class<?>> MAY_BE_EMPTY = Set.of(PortSetting.class, Aircraft.class);

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
        Class<?> type = bag.shape().type();
        Object value = bag.get(slot).orElse("");
        if (!MAY_BE_EMPTY.contains(type) && value.toString().isBlank()) {
            problems.add(new Problem(
                    bag.at(),
                    Naming.of(bag) + " has no `" + slot.name() + "`",
                    "give it, or write ? when it is not known"));
        }
    }

    private void list(Bag parent, Slot slot) {
        List<Bag> children = parent.children(slot);
        children.forEach(this::record);
        if (children.isEmpty() || !unique(children.get(0))) {
            return;
        }
        Map<String, Bag> seen = new HashMap<>();
        for (Bag child : children) {
            boolean nameless = child.key().isBlank()
                    && !MAY_BE_EMPTY.contains(child.shape().type());
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

    private static boolean unique(Bag bag) {
        return !REPEATED.contains(bag.shape().type())
                && bag.shape()
                        .key()
                        .map(Slot::name)
                        .filter(IDENTITIES::contains)
                        .isPresent();
    }
}
