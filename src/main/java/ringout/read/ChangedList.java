package ringout.read;

import java.nio.charset.StandardCharsets;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Set;
import ringout.model.Aircraft;
import ringout.model.edit.Edit;
import ringout.model.edit.Edited;
import ringout.model.edit.Edits;
import ringout.model.edit.Path;
import ringout.model.shape.Shape;
import ringout.read.edit.EditReader;
import ringout.read.source.Folder;
import ringout.read.source.Loaded;
import ringout.text.Problem;
import ringout.text.Problems;
import ringout.text.Span;

/**
 * A list told by what differs from another one: a tail of a type, a later revision. The first line names the other list, each
 * further line is one change; blank lines and lines that start with # are skipped.
 *
 * <pre>
 * from ../../linewarden
 * set tail 3
 * set units[LOG].ports[CAN2].terminator on
 * </pre>
 *
 * <p>A row that is changed stands, from then on, at its last change.
 */
final class ChangedList {
    /** Name of the file in a folder. */
    static final String FILE = "changes.edit";

    /** Ending of such files. */
    static final String ENDING = ".edit";

    private static final String FROM = "from ";
    private static final int DEEPEST = 8;

    private final Folder folder;

    ChangedList(Folder folder) {
        this.folder = folder;
    }

    /** The list with its changes made; what is wrong in either is told. */
    ReadResult read(String file) {
        return read(file, 0);
    }

    private ReadResult read(String file, int depth) {
        if (!(folder.load(file) instanceof Loaded.Bytes bytes)) {
            return failed(file, "the file cannot be opened", "");
        }
        List<String> lines = new ArrayList<>(
                new String(bytes.content(), StandardCharsets.UTF_8).lines().toList());
        int head = 0;
        while (head < lines.size() && skipped(lines.get(head))) {
            head++;
        }
        if (head == lines.size() || !lines.get(head).strip().startsWith(FROM)) {
            return failed(file, "the first line does not name the list it changes", "such as from ../linewarden");
        }
        if (depth > DEEPEST) {
            return failed(file, "lists change each other in a ring, or too deep", "name a whole list");
        }
        String name = lines.set(head, "").strip().substring(FROM.length()).strip();
        ReadResult base = base(Folder.parent(file) + name, depth);
        return base.ok() ? changed(base, Folder.parent(file) + name, file, String.join("\n", lines)) : base;
    }

    private static boolean skipped(String line) {
        return line.isBlank() || line.strip().startsWith("#");
    }

    private static ReadResult failed(String file, String why, String hint) {
        Problems problems = new Problems();
        problems.add(new Span(file, 1, 0, ""), why, hint);
        return new ReadResult(
                Shape.of(Aircraft.class).empty(), problems.sorted(), Set.of(), List.of(), List.of(), List.of());
    }

    private ReadResult base(String path, int depth) {
        boolean inside = folder.isFolder(path);
        String within = inside && !path.endsWith("/") ? path + "/" : path;
        if (inside && folder.files(path).contains(FILE)) {
            return read(within + FILE, depth + 1);
        }
        if (path.endsWith(ENDING)) {
            return read(path, depth + 1);
        }
        return inside ? AircraftReader.inside(folder, within) : AircraftReader.read(folder, path);
    }

    private static ReadResult changed(ReadResult base, String path, String file, String text) {
        EditReader.Result read = EditReader.read(file, text);
        Edited edited = Edits.apply(base.aircraft(), read.edits());
        List<Problem> problems = new ArrayList<>(read.problems());
        problems.addAll(edited.problems());
        List<Edit> places = new ArrayList<>();
        read.edits().forEach(edit -> place(edit, places));
        Aircraft placed = Edits.apply(edited.aircraft(), places).aircraft();
        return new ReadResult(
                moved(placed, path),
                List.copyOf(problems),
                base.libraryTypes(),
                base.questions(),
                base.assumptions(),
                List.of());
    }

    /** The row that is changed now stands where the change is written. */
    private static void place(Edit edit, List<Edit> edits) {
        Path.Step row = edit.path().steps().get(0);
        boolean within = row.pick().given() && edit.path().steps().size() > 1;
        boolean named = !edit.path().toString().endsWith(".id")
                && !edit.path().toString().endsWith(".ref");
        if (within && named) {
            edits.add(new Edit.Set(edit.at(), new Path(List.of(row)).then("at"), edit.at()));
        }
    }

    /** The libraries, seen from the file of the changes. */
    private static Aircraft moved(Aircraft aircraft, String path) {
        List<String> library = aircraft.library().stream()
                .map(name -> plain(path + "/" + name))
                .toList();
        return Shape.of(Aircraft.class).with(aircraft, "library", library);
    }

    /** A path without steps that go down and up again. */
    private static String plain(String path) {
        Deque<String> steps = new ArrayDeque<>();
        for (String step : path.split("/", -1)) {
            boolean back =
                    step.equals("..") && !steps.isEmpty() && !steps.getLast().equals("..");
            if (back) {
                steps.removeLast();
            } else if (!step.isEmpty() && !step.equals(".")) {
                steps.add(step);
            }
        }
        return String.join("/", steps);
    }
}
