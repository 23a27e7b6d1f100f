package ringout.read.take;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import ringout.model.Aircraft;
import ringout.model.AsBuilt;
import ringout.model.Datum;
import ringout.model.Lead;
import ringout.model.Photo;
import ringout.model.Reading;
import ringout.model.RecordNote;
import ringout.model.Signature;
import ringout.model.TakenEntry;
import ringout.model.TakenFile;
import ringout.model.Tick;
import ringout.model.seal.Seal;
import ringout.model.shape.Shape;
import ringout.model.shape.Slot;

/**
 * Puts entries on record. What is there already word for word is not put there twice; what says something else of the same
 * thing is put beside it, and told.
 */
final class Taking {
    private final Aircraft aircraft;
    private final Seal now;
    private final Set<String> leads;
    private final Map<String, List<Object>> lists = new LinkedHashMap<>();
    private final List<String> conflicts = new ArrayList<>();
    private int added;
    private int known;

    Taking(Aircraft aircraft, Seal now) {
        this.aircraft = aircraft;
        this.now = now;
        this.leads = aircraft.leads().stream().map(Lead::id).map(Taking::fold).collect(Collectors.toSet());
        Stream.of("ticks", "readings", "signatures", "photos", "notes")
                .forEach(list -> lists.put(list, onRecord(list)));
    }

    private List<Object> onRecord(String list) {
        Slot slot = Shape.of(AsBuilt.class).slot(list).orElseThrow();
        return new ArrayList<>((List<?>) slot.get(aircraft.record()));
    }

    void add(TakenFile file) {
        String mark = mark(file.hash().or(""));
        if (!mark.isEmpty() && !mark.equals(now.mark())) {
            conflicts.add(file.at().file() + ": written on pages of " + mark + ", the list is now " + now.mark()
                    + "; what it says is kept under its own mark");
        }
        file.entries().forEach(entry -> entry(entry, mark));
    }

    /** The first eight digits of a hash, or all of a shorter one. */
    private static String mark(String hash) {
        return hash.substring(0, Math.min(8, hash.length())).toLowerCase(Locale.ROOT);
    }

    private void entry(TakenEntry entry, String mark) {
        Datum<String> revision = mark.isEmpty() ? Datum.notAsked() : Datum.of(mark);
        switch (entry.kind()) {
            case "tick" -> {
                if (!leads.contains(fold(entry.item()))) {
                    conflicts.add(
                            entry.at().words() + ": a tick of " + entry.item() + ", and no such lead is in the list");
                }
                put(
                        "ticks",
                        Tick.class,
                        entry,
                        List.of("lead", "end", "what"),
                        Map.of(
                                "lead",
                                entry.item(),
                                "end",
                                entry.end(),
                                "what",
                                entry.what(),
                                "note",
                                entry.text(),
                                "revision",
                                revision));
            }
            case "reading" ->
                put(
                        "readings",
                        Reading.class,
                        entry,
                        List.of("where", "quantity", "state", "pulled"),
                        Map.of(
                                "where",
                                entry.item(),
                                "quantity",
                                entry.quantity(),
                                "state",
                                entry.state(),
                                "pulled",
                                entry.pulled(),
                                "value",
                                entry.value(),
                                "instrument",
                                entry.instrument(),
                                "note",
                                entry.text(),
                                "revision",
                                revision));
            case "signature" ->
                put(
                        "signatures",
                        Signature.class,
                        entry,
                        List.of("item", "role"),
                        Map.of("item", entry.item(), "role", entry.role(), "page", entry.page(), "revision", revision));
            case "photo" ->
                put(
                        "photos",
                        Photo.class,
                        entry,
                        List.of("item", "file"),
                        Map.of("item", entry.item(), "file", entry.file(), "hash", entry.hash()));
            default ->
                put(
                        "notes",
                        RecordNote.class,
                        entry,
                        List.of("item", "text"),
                        Map.of("item", entry.item(), "text", entry.text(), "revision", revision));
        }
    }

    private <R> void put(
            String list, Class<R> type, TakenEntry entry, List<String> subject, Map<String, Object> fields) {
        Shape<R> shape = Shape.of(type);
        Object[] values = shape.absentValues().clone();
        fields.forEach((name, value) -> values[shape.slot(name).orElseThrow().index()] = value);
        values[0] = entry.at();
        values[shape.slot("by").orElseThrow().index()] = entry.by();
        values[shape.slot("date").orElseThrow().index()] = entry.date();
        R record = shape.make(values);
        List<Object> there = lists.getOrDefault(list, new ArrayList<>());
        if (there.stream().anyMatch(other -> same(shape, all(shape), other, record))) {
            known++;
            return;
        }
        there.stream()
                .filter(other -> same(shape, subject, other, record))
                .findFirst()
                .ifPresent(other -> conflicts.add(entry.at().words() + ": " + entry.kind() + " of " + entry.item()
                        + " says " + words(shape, record, subject) + ", on record is " + words(shape, other, subject)
                        + "; both are kept"));
        there.add(record);
        added++;
    }

    private static List<String> all(Shape<?> shape) {
        return shape.slots().stream()
                .filter(slot -> slot.kind() != Slot.Kind.SPAN)
                .map(Slot::name)
                .toList();
    }

    private static boolean same(Shape<?> shape, List<String> fields, Object one, Object other) {
        return fields.stream().allMatch(field -> {
            Slot slot = shape.slot(field).orElseThrow();
            return text(slot.get(one)).equals(text(slot.get(other)));
        });
    }

    private static String text(Object value) {
        return fold(
                value instanceof Datum<?> datum
                        ? datum.known().map(Object::toString).orElse("")
                        : value.toString());
    }

    /** What a record says beyond its subject. */
    private static String words(Shape<?> shape, Object record, List<String> subject) {
        return shape.slots().stream()
                .filter(slot -> slot.kind() == Slot.Kind.DATUM && !subject.contains(slot.name()))
                .filter(slot -> !text(slot.get(record)).isEmpty())
                .map(slot -> slot.name() + " "
                        + ((Datum<?>) slot.get(record))
                                .known()
                                .map(Object::toString)
                                .orElse(""))
                .collect(Collectors.joining(", "));
    }

    private static String fold(String text) {
        return text.strip().toLowerCase(Locale.ROOT);
    }

    Taken done() {
        Shape<AsBuilt> shape = Shape.of(AsBuilt.class);
        AsBuilt record = aircraft.record();
        for (Map.Entry<String, List<Object>> list : lists.entrySet()) {
            record = shape.with(record, list.getKey(), List.copyOf(list.getValue()));
        }
        return new Taken(
                Shape.of(Aircraft.class).with(aircraft, "record", record),
                added,
                known,
                List.copyOf(conflicts),
                List.of());
    }
}
