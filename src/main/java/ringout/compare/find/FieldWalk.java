package ringout.compare.find;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import ringout.model.Datum;
import ringout.model.shape.Identity;
import ringout.model.shape.Shape;
import ringout.model.shape.Slot;
import ringout.text.Span;

/** Walks two records of one shape and tells every field that differs, records within records included. */
final class FieldWalk {
    private static final Set<String> REMARKS = Set.of("note", "at");
    private static final Set<String> SEQUENCES = Set.of("route", "steps");

    private final Values values;
    private final List<FieldChange> found = new ArrayList<>();

    FieldWalk(Values values) {
        this.values = values;
    }

    /** The fields that differ, of those that are wanted; remarks never are, nor what the records are known by. */
    List<FieldChange> of(Object here, Object there, Predicate<Slot> wanted) {
        walk(here, there, wanted, "", "");
        return List.copyOf(found);
    }

    private void walk(Object here, Object there, Predicate<Slot> wanted, String group, String prefix) {
        Shape<?> shape = Shape.of(here.getClass());
        for (Slot slot : shape.slots()) {
            if (slot.kind() == Slot.Kind.SPAN
                    || REMARKS.contains(slot.name())
                    || shape.isKey(slot)
                    || !wanted.test(slot)) {
                continue;
            }
            Object a = slot.get(here);
            Object b = slot.get(there);
            if (a == b) {
                continue;
            }
            String within = group.isEmpty() ? slot.name() : group;
            switch (slot.kind()) {
                case RECORD -> walk(a, b, any -> true, within, prefix + Values.words(slot.name()) + " ");
                case RECORDS -> lists(slot, (List<?>) a, (List<?>) b, group, prefix);
                default -> {
                    if (!values.same(slot, a, b)) {
                        found.add(new FieldChange(
                                within,
                                slot.name(),
                                prefix + Values.words(slot.name()),
                                Values.write(slot, a),
                                Values.write(slot, b),
                                at(here),
                                at(there)));
                    }
                }
            }
        }
    }

    /** Records meet by what they are known by; equal ones first, so that a row more is a row more and not ten that moved. */
    private void lists(Slot slot, List<?> here, List<?> there, String group, String prefix) {
        if (values.plain() && Plainly.same(here, there)) {
            return;
        }
        Map<String, List<Object>> a = keyed(here, true);
        Map<String, List<Object>> b = keyed(there, false);
        Set<String> keys = new LinkedHashSet<>(a.keySet());
        keys.addAll(b.keySet());
        for (String key : keys) {
            List<Object> mine = a.getOrDefault(key, new ArrayList<>());
            List<Object> theirs = b.getOrDefault(key, new ArrayList<>());
            cancel(mine, theirs);
            String name = mine.isEmpty() && theirs.isEmpty() ? "" : name(mine.isEmpty() ? theirs.get(0) : mine.get(0));
            String within = group.isEmpty() ? slot.name() + "[" + key + "]" : group;
            String words = prefix + (name.isEmpty() ? Values.words(slot.name()) : name) + " ";
            for (int i = 0; i < Math.max(mine.size(), theirs.size()); i++) {
                if (i >= mine.size()) {
                    only(slot, within, words, theirs.get(i), false);
                } else if (i >= theirs.size()) {
                    only(slot, within, words, mine.get(i), true);
                } else {
                    walk(mine.get(i), theirs.get(i), any -> true, within, words);
                }
            }
        }
        if (SEQUENCES.contains(slot.name()) && keys.size() == here.size() && order(a, b)) {
            found.add(new FieldChange(
                    slot.name(),
                    "",
                    prefix + "order of " + Values.words(slot.name()),
                    "one",
                    "another",
                    Span.NONE,
                    Span.NONE));
        }
    }

    /** Whether what both have stands in another order. */
    private static boolean order(Map<String, List<Object>> here, Map<String, List<Object>> there) {
        List<String> a = here.keySet().stream().filter(there::containsKey).toList();
        List<String> b = there.keySet().stream().filter(here::containsKey).toList();
        return !a.equals(b);
    }

    private void cancel(List<Object> mine, List<Object> theirs) {
        if (mine.size() == 1 && theirs.size() == 1) {
            return;
        }
        for (Object item : List.copyOf(mine)) {
            theirs.stream()
                    .filter(twin ->
                            new FieldWalk(values).of(item, twin, any -> true).isEmpty())
                    .findFirst()
                    .ifPresent(twin -> {
                        mine.remove(item);
                        theirs.remove(twin);
                    });
        }
    }

    private void only(Slot slot, String group, String words, Object record, boolean here) {
        String summary = summary(record);
        found.add(new FieldChange(
                group,
                "",
                words + Values.words(slot.name()),
                here ? summary : "",
                here ? "" : summary,
                here ? at(record) : Span.NONE,
                here ? Span.NONE : at(record)));
    }

    private Map<String, List<Object>> keyed(List<?> records, boolean here) {
        Map<String, List<Object>> byKey = new LinkedHashMap<>();
        for (Object record : records) {
            String key = Identity.fold(Shape.of(record.getClass()), values.key(name(record), here));
            byKey.computeIfAbsent(key, any -> new ArrayList<>()).add(record);
        }
        return byKey;
    }

    /** What a record is known by: its first scalar. */
    private static String name(Object record) {
        for (Slot slot : Shape.of(record.getClass()).slots()) {
            if (slot.kind() == Slot.Kind.REQUIRED || slot.kind() == Slot.Kind.DATUM) {
                return Values.write(slot, slot.get(record));
            }
        }
        return "";
    }

    private static String summary(Object record) {
        Set<String> words = new TreeSet<>();
        StringBuilder text = new StringBuilder();
        for (Slot slot : Shape.of(record.getClass()).slots()) {
            Object value = slot.kind() == Slot.Kind.SPAN || slot.kind() == Slot.Kind.RECORDS ? "" : slot.get(record);
            boolean said =
                    slot.kind() == Slot.Kind.DATUM ? ((Datum<?>) value).isKnown() : slot.kind() == Slot.Kind.REQUIRED;
            if (said && words.size() < 5 && words.add(slot.name())) {
                text.append(text.isEmpty() ? "" : ", ")
                        .append(Values.words(slot.name()))
                        .append(' ')
                        .append(Values.write(slot, value));
            }
        }
        return text.toString();
    }

    private static Span at(Object record) {
        return Shape.of(record.getClass()).slots().get(0).get(record) instanceof Span span ? span : Span.NONE;
    }
}
