package ringout.read;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import ringout.model.Aircraft;
import ringout.model.TypeLibrary;
import ringout.model.shape.Shape;
import ringout.model.shape.Slot;
import ringout.read.bind.Alike;
import ringout.read.bind.Bag;
import ringout.read.bind.Merge;
import ringout.read.intake.Intake;
import ringout.read.source.Folder;
import ringout.read.table.Table;
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

    private static final Slot SHARED = SHAPE.slot("types").orElseThrow();

    private final Folder folder;
    private final Problems problems;
    private final Sources sources;

    Libraries(Folder folder, Problems problems, Intake intake) {
        this.folder = folder;
        this.problems = problems;
        this.sources = new Sources(folder, problems, intake);
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
        String path = Folder.parent(at.file()) + name;
        if (!folder.isFolder(path)) {
            return opened.add(path) ? file(path, at) : List.of();
        }
        String inside = path.isEmpty() || path.endsWith("/") ? path : path + "/";
        Bag tables = new Bag(AIRCRAFT, Span.NONE);
        sources.tables(inside, ofTypes(folder.files(inside)), tables);
        List<Bag> types = new ArrayList<>(tables.children(TYPES));
        for (String file : folder.files(inside)) {
            if (file.endsWith(".json") && opened.add(inside + file)) {
                types.addAll(file(inside + file, at));
            }
        }
        return types;
    }

    private static List<String> ofTypes(List<String> files) {
        return files.stream()
                .filter(file -> Table.ofFile(file).filter(Table::ofTypes).isPresent())
                .toList();
    }

    private List<Bag> file(String file, Span at) {
        return sources.json(file, SHAPE, why -> Problem.of(at, "library '" + file + "': " + why))
                .map(bag -> bag.children(SHARED))
                .orElse(List.of());
    }
}
