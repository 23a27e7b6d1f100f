package ringout.read.take;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import ringout.model.Aircraft;
import ringout.model.Datum;
import ringout.model.TakenEntry;
import ringout.model.TakenFile;
import ringout.model.seal.Seal;
import ringout.model.shape.Shape;
import ringout.read.bind.Bag;
import ringout.read.bind.Completeness;
import ringout.read.json.JsonReader;
import ringout.read.source.Folder;
import ringout.read.source.Loaded;
import ringout.text.Nearest;
import ringout.text.Problems;
import ringout.text.Span;

/** Reads files written by pages (schemas/taken.schema.json) and puts what they say on record. */
public final class TakenReader {
    private static final List<String> KINDS = List.of("tick", "reading", "signature", "photo", "note");
    private static final Shape<TakenFile> FILE = Shape.of(TakenFile.class);

    private final Problems problems = new Problems();
    private final List<TakenFile> files = new ArrayList<>();

    private TakenReader() {}

    /**
     * Takes files into the record of an aircraft, in their order.
     *
     * @param aircraft the aircraft as it is on record
     * @param folder where the files are
     * @param names names of the files
     */
    public static Taken take(Aircraft aircraft, Folder folder, List<String> names) {
        TakenReader reader = new TakenReader();
        names.forEach(name -> reader.read(folder, name));
        reader.files.forEach(file -> reader.check(file, aircraft));
        if (!reader.problems.isEmpty()) {
            return new Taken(aircraft, 0, 0, List.of(), reader.problems.sorted());
        }
        Taking taking = new Taking(aircraft, Seal.ofList(aircraft));
        reader.files.forEach(taking::add);
        return taking.done();
    }

    private void read(Folder folder, String name) {
        Loaded loaded = folder.load(name);
        if (loaded instanceof Loaded.Bytes bytes) {
            Bag bag = JsonReader.read(name, bytes.content(), FILE, problems);
            Completeness.check(bag, problems);
            files.add((TakenFile) bag.build());
        } else {
            problems.add(new Span(name, 0, 0, ""), ((Loaded.Absent) loaded).why(), "");
        }
    }

    private void check(TakenFile file, Aircraft aircraft) {
        List<String> names =
                List.of(fold(aircraft.name()), fold(aircraft.designation().or(aircraft.name())));
        if (!file.aircraft().isBlank() && !names.contains(fold(file.aircraft()))) {
            problems.add(
                    file.at(),
                    "these pages are of " + file.aircraft() + ", not of " + aircraft.name(),
                    "take them into the record of their own aircraft");
        }
        boolean tails = file.tail().isKnown() && aircraft.tail().isKnown();
        if (tails && !fold(file.tail().or("")).equals(fold(aircraft.tail().or("")))) {
            problems.add(
                    file.at(),
                    "these pages are of tail " + file.tail().or("") + ", not of tail "
                            + aircraft.tail().or(""),
                    "take them into the record of their own tail");
        }
        file.entries().forEach(this::check);
    }

    private void check(TakenEntry entry) {
        if (!KINDS.contains(entry.kind())) {
            String near = Nearest.hint(entry.kind(), KINDS);
            problems.add(
                    entry.at(),
                    "'" + entry.kind() + "' is no kind of entry",
                    near.isEmpty() ? "one of " + String.join(", ", KINDS) : near);
            return;
        }
        missing(
                entry,
                switch (entry.kind()) {
                    case "tick" -> entry.end();
                    case "reading" -> entry.value();
                    case "signature" -> entry.role();
                    case "photo" -> entry.file();
                    default -> entry.text();
                });
    }

    private void missing(TakenEntry entry, Datum<?> needed) {
        if (needed.isMissing()) {
            String field =
                    switch (entry.kind()) {
                        case "tick" -> "end";
                        case "reading" -> "value";
                        case "signature" -> "role";
                        case "photo" -> "file";
                        default -> "text";
                    };
            problems.add(entry.at(), "this " + entry.kind() + " has no `" + field + "`", "");
        }
    }

    private static String fold(String name) {
        return name.strip().toLowerCase(Locale.ROOT);
    }
}
