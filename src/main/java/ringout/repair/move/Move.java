package ringout.repair.move;

import java.util.Optional;
import java.util.stream.Stream;
import ringout.model.edit.Edit;
import ringout.model.edit.EditLine;
import ringout.model.edit.Path;
import ringout.model.edit.Told;
import ringout.text.Span;

/** One kind of change. */
interface Move {
    /** The changes of this kind around a mistake. */
    Stream<Candidate> around(Fault fault);

    /** A field set to a value written as in a cell; nothing where the model has no such field there. */
    static Optional<Edit> set(Path path, String value) {
        return EditLine.parse("set " + path + " " + value, Span.NONE) instanceof Told.Right<Edit> right
                ? Optional.of(right.value())
                : Optional.empty();
    }

    /** A field emptied. */
    static Optional<Edit> clear(Path path) {
        return EditLine.parse("clear " + path, Span.NONE) instanceof Told.Right<Edit> right
                ? Optional.of(right.value())
                : Optional.empty();
    }

    /** One field set, as a candidate. */
    static Stream<Candidate> setting(Path path, String value, int cost) {
        return set(path, value).map(edit -> Candidate.of(edit, cost)).stream();
    }

    /** The way to a lead. */
    static Path lead(String id) {
        return Path.of("leads").at(id);
    }

    /** The way to a unit. */
    static Path unit(String ref) {
        return Path.of("units").at(ref);
    }

    /** The way to a port setting of a unit. */
    static Path port(String ref, String port) {
        return unit(ref).then("ports").at(port);
    }
}
