package ringout.model.edit;

import java.util.Optional;
import ringout.model.shape.CellForm;
import ringout.model.shape.Identity;
import ringout.model.shape.Parsed;
import ringout.model.shape.Shape;
import ringout.model.shape.Slot;
import ringout.text.Nearest;
import ringout.text.Span;

/**
 * One edit as one line of text: {@code set PATH VALUE}, {@code clear PATH}, {@code remove PATH}, {@code add PATH RECORD}.
 * Values are written as in a cell of a table.
 */
public final class EditLine {
    private static final java.util.List<String> VERBS = java.util.List.of("set", "clear", "remove", "add");

    private EditLine() {}

    /** Makes the record of an {@code add} from its text. */
    @FunctionalInterface
    public interface RecordReader {
        /** The record, or what is wrong with the text. */
        Told<Object> read(Shape<?> shape, String text);
    }

    /** Reads {@code set}, {@code clear} and {@code remove}. */
    public static Told<Edit> parse(String line, Span at) {
        return parse(line, at, (shape, text) -> Told.wrong("records are not read here", ""));
    }

    /** Reads any line. */
    public static Told<Edit> parse(String line, Span at, RecordReader records) {
        String plain = line.strip();
        int blank = plain.indexOf(' ');
        String verb = blank < 0 ? plain : plain.substring(0, blank);
        if (!VERBS.contains(verb)) {
            String hint = Nearest.hint(verb, VERBS);
            return Told.wrong("'" + verb + "' is not an edit", hint.isEmpty() ? String.join(", ", VERBS) : hint);
        }
        PathText text = new PathText(blank < 0 ? "" : plain.substring(blank).strip());
        Optional<Path> path = text.path();
        if (path.isEmpty()) {
            return Told.wrong("no path after '" + verb + "'", "such as units[LOG].zone");
        }
        return Place.of(path.get()).then(place -> edit(verb, place, path.get(), text.rest(), at, records));
    }

    private static Told<Edit> edit(String verb, Place place, Path path, String rest, Span at, RecordReader records) {
        boolean picked = path.steps().get(path.steps().size() - 1).pick().given();
        boolean list = place.slot().kind() == Slot.Kind.RECORDS;
        return switch (verb) {
            case "remove" ->
                picked && rest.isEmpty()
                        ? Told.right(new Edit.Remove(at, path))
                        : Told.wrong("remove takes one record", "such as leads[W63]");
            case "add" ->
                list && !picked
                        ? records.read(Shape.of(place.slot().type()), rest)
                                .then(item -> Told.right(new Edit.Add(at, path, item)))
                        : Told.wrong("add takes a list and a record", "such as leads {...}");
            case "clear" ->
                !picked && rest.isEmpty()
                        ? clear(place, path, at)
                        : Told.wrong("clear takes one field", "such as units[LOG].zone");
            default -> picked ? Told.wrong("set takes a field", "such as units[LOG].zone") : set(place, path, rest, at);
        };
    }

    private static Told<Edit> clear(Place place, Path path, Span at) {
        return place.slot().kind() == Slot.Kind.REQUIRED
                        && !(place.owner().isKey(place.slot()) && Identity.mayBeEmpty(place.owner()))
                ? Told.wrong("`" + place.slot().name() + "` cannot be empty", "write ? when it is not known")
                : Told.right(new Edit.Set(at, path, Shape.absent(place.slot())));
    }

    private static Told<Edit> set(Place place, Path path, String rest, Span at) {
        if (rest.isEmpty()) {
            return Told.wrong("no value for `" + place.slot().name() + "`", "clear empties a field");
        }
        Parsed parsed = CellForm.parse(place.slot(), rest);
        if (parsed instanceof Parsed.Good good) {
            return Told.right(new Edit.Set(at, path, good.value()));
        }
        Parsed.Bad bad = (Parsed.Bad) parsed;
        return Told.wrong("`" + place.slot().name() + "` " + bad.why(), bad.hint());
    }
}
