package ringout.read;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import ringout.model.Aircraft;
import ringout.model.TypeLibrary;
import ringout.model.shape.Shape;
import ringout.model.shape.Slot;
import ringout.read.bind.Alike;
import ringout.read.bind.Bag;
import ringout.read.bind.Merge;
import ringout.read.json.JsonReader;
import ringout.read.source.Folder;
import ringout.read.source.Loaded;
import ringout.text.Problem;
import ringout.text.Problems;
import ringout.text.Span;

/**
 * Adds the unit types of the libraries an aircraft names. Nothing is overridden silently: a type that is given twice
 * must be the same both times, else it is told.
 */
final class Libraries {
    private static final Shape<Aircraft> AIRCRAFT = Shape.of(Aircraft.class);
    private static final Slot LIBRARY = AIRCRAFT.slot("library").orElseThrow();
    private static final Slot TYPES = AIRCRAFT.slot("types").orElseThrow();
    private static final Shape<TypeLibrary> SHAPE = Shape.of(TypeLibrary.class);

    private final Folder folder;
    private final Problems problems;

    Libraries(Folder folder, Problems problems) {
        this.folder = folder;
        this.problems = problems;
    }

    /** Adds the types the aircraft does not have itself; the names of those added. */
    Set<String> addTo(Bag aircraft) {
        Map<String, Bag> known = new LinkedHashMap<>();
        for (Bag own : aircraft.children(TYPES)) {
            known.putIfAbsent(Merge.fold(own), own);
        }
        Set<String> added = new LinkedHashSet<>();
        Set<String> opened = new LinkedHashSet<>();
        for (Object name : aircraft.get(LIBRARY).map(value -> (List<?>) value).orElse(List.of())) {
            for (Bag type : types(aircraft.at(), name.toString(), opened)) {
                Bag first = known.putIfAbsent(Merge.fold(type), type);
                if (first == null) {
                    aircraft.children(TYPES).add(type);
                    added.add(type.key());
                } else {
                    same(first, type);
                }
            }
        }
        return added;
    }

    private void same(Bag first, Bag second) {
        Alike.difference(first, second)
                .ifPresent(where -> problems.add(
                        second.at(),
                        "unit type " + second.key() + " differs in " + where + " from the one in "
                                + first.at().words(),
                        "make them equal or give one another name"));
    }

    private List<Bag> types(Span at, String name, Set<String> opened) {
        String base = Folder.parent(at.file());
        List<Bag> types = new ArrayList<>();
        if (folder.isFolder(base + name)) {
            String inside = base + name + (name.isEmpty() || name.endsWith("/") ? "" : "/");
            for (String file : folder.files(inside)) {
                if (file.endsWith(".json")) {
                    file(at, inside + file, opened).ifPresent(bag -> types.addAll(bag.children(typesOf(bag))));
                }
            }
            return types;
        }
        file(at, base + name, opened).ifPresent(bag -> types.addAll(bag.children(typesOf(bag))));
        return types;
    }

    private static Slot typesOf(Bag bag) {
        return bag.shape().slot("types").orElseThrow();
    }

    private Optional<Bag> file(Span at, String file, Set<String> opened) {
        if (!opened.add(file)) {
            return Optional.empty();
        }
        Loaded loaded = folder.load(file);
        if (loaded instanceof Loaded.Bytes bytes) {
            return Optional.of(JsonReader.read(file, bytes.content(), SHAPE, problems));
        }
        problems.add(Problem.of(at, "library '" + file + "': " + ((Loaded.Absent) loaded).why()));
        return Optional.empty();
    }
}
