package ringout.read;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import ringout.model.Aircraft;
import ringout.model.seal.Seal;
import ringout.model.shape.Shape;
import ringout.model.shape.Slot;
import ringout.read.bind.Bag;
import ringout.read.bind.Completeness;
import ringout.read.cells.SheetCells;
import ringout.read.cells.Workbooks;
import ringout.read.draft.Draft;
import ringout.read.intake.Answers;
import ringout.read.intake.Intake;
import ringout.read.json.FrozenMark;
import ringout.read.source.DiskFolder;
import ringout.read.source.Folder;
import ringout.read.table.Table;
import ringout.text.Problems;
import ringout.text.Span;

/** Reads an aircraft from a folder or a file. Bad input never throws: all of it is told at once in the result. */
public final class AircraftReader {
    private static final Shape<Aircraft> AIRCRAFT = Shape.of(Aircraft.class);
    private static final Slot NAME = AIRCRAFT.slot("name").orElseThrow();

    private static final Slot LIBRARY = AIRCRAFT.slot("library").orElseThrow();

    private final Folder folder;
    private final Problems problems = new Problems();
    private final Intake intake;
    private final Bag bag = new Bag(AIRCRAFT, Span.NONE);
    private Optional<FrozenMark> frozen = Optional.empty();

    private AircraftReader(Folder folder, Answers answers) {
        this.folder = folder;
        this.intake = new Intake(answers);
    }

    /** Reads a folder, a JSON file, a workbook, or one table. */
    public static ReadResult read(Path path) {
        return read(path, Answers.NONE);
    }

    /** The same, with answers to what was asked before. */
    public static ReadResult read(Path path, Answers answers) {
        if (Files.isDirectory(path)) {
            return read(new DiskFolder(path));
        }
        Path whole = path.toAbsolutePath().normalize();
        Path parent = whole.getParent();
        Path name = whole.getFileName();
        return parent == null || name == null
                ? read(new DiskFolder(whole))
                : read(new DiskFolder(parent), name.toString(), answers);
    }

    /** Reads a folder: tables, or {@code aircraft.json}, or both together; or the changes against another list. */
    public static ReadResult read(Folder folder) {
        return folder.files("").contains(ChangedList.FILE)
                ? new ChangedList(folder).read(ChangedList.FILE)
                : inside(folder, "");
    }

    /** Reads a folder within a folder. */
    static ReadResult inside(Folder folder, String path) {
        AircraftReader reader = new AircraftReader(folder, Answers.NONE);
        Sources sources = new Sources(folder, reader.problems, reader.intake);
        sources.folder(path, reader.bag);
        reader.frozen = sources.frozen();
        return reader.finish(folder.title(), List.of());
    }

    /** Reads one file of a folder: JSON, changes, a workbook, or a table of leads when neither name nor heads tell another kind. */
    public static ReadResult read(Folder folder, String file) {
        return read(folder, file, Answers.NONE);
    }

    /** The same, with answers to what was asked before. */
    public static ReadResult read(Folder folder, String file, Answers answers) {
        if (file.endsWith(ChangedList.ENDING)) {
            return new ChangedList(folder).read(file);
        }
        AircraftReader reader = new AircraftReader(folder, answers);
        Sources sources = new Sources(folder, reader.problems, reader.intake);
        String title = file.substring(Folder.parent(file).length()).replaceFirst("\\.[^.]*$", "");
        if (!Table.isTableFile(file) && !Workbooks.isWorkbook(file)) {
            sources.json(file, reader.bag);
            reader.frozen = sources.frozen();
            return reader.finish(title, List.of());
        }
        ListReader list = new ListReader(file, reader.problems, reader.intake);
        List<SheetCells> sheets = sources.load(file).map(list::sheets).orElse(List.of());
        if (!sheets.isEmpty()) {
            list.read(sheets, reader.bag);
        }
        return reader.finish(title, sheets);
    }

    private ReadResult finish(String title, List<SheetCells> sheets) {
        Set<String> shared = new Libraries(folder, problems, intake).addTo(bag);
        if (!sheets.isEmpty() && !bag.has(LIBRARY)) {
            Draft.complete(bag, intake);
        }
        Completeness.check(bag, problems, sheets.isEmpty() ? (at, field) -> at : intake::cell);
        if (!bag.has(NAME)) {
            bag.put(NAME, title);
        }
        Aircraft aircraft = (Aircraft) bag.build();
        frozen.ifPresent(mark -> verify(mark, aircraft));
        problems.sorted().forEach(intake::block);
        return new ReadResult(aircraft, problems.sorted(), shared, intake.questions(), intake.assumptions(), sheets);
    }

    /** A frozen revision says what it said when it was frozen. */
    private void verify(FrozenMark mark, Aircraft aircraft) {
        if (problems.isEmpty() && !Seal.ofAll(aircraft).hex().equals(mark.all())) {
            String before = new Seal(mark.list()).mark();
            String now = Seal.ofList(aircraft).mark();
            problems.add(
                    bag.at(),
                    "this revision was altered after it was frozen as " + before
                            + (now.equals(before) ? ": the list is the same, the record is not" : ": it is now " + now),
                    "take the frozen file from its archive; to work on, remove the field $frozen and freeze it anew");
        }
    }
}
