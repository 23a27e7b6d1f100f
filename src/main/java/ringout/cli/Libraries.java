package ringout.cli;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import ringout.model.Aircraft;
import ringout.model.shape.Shape;

/** Names of libraries seen from another folder. */
final class Libraries {
    private Libraries() {}

    /** The aircraft with its libraries named from the folder it goes to. */
    static Aircraft rebased(Aircraft aircraft, Path from, Path to) {
        List<String> names =
                aircraft.library().stream().map(name -> rebased(name, from, to)).toList();
        return Shape.of(Aircraft.class).with(aircraft, "library", names);
    }

    private static String rebased(String name, Path from, Path to) {
        try {
            Path file = from.resolve(name).normalize();
            return Path.of(name).isAbsolute()
                    ? name
                    : to.relativize(file).toString().replace('\\', '/');
        } catch (InvalidPathException e) {
            return name;
        } catch (IllegalArgumentException otherRoot) {
            return from.resolve(name).normalize().toString();
        }
    }
}
