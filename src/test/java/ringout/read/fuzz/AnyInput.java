package ringout.read.fuzz;

import java.util.List;
import ringout.model.edit.Edits;
import ringout.read.AircraftReader;
import ringout.read.ReadResult;
import ringout.read.edit.EditReader;
import ringout.read.source.MemoryFolder;

/** What must hold for any bytes whatever: a result, never an exception; problems told or an aircraft that can be edited. */
final class AnyInput {
    private AnyInput() {}

    static void json(byte[] bytes) {
        check(AircraftReader.read(MemoryFolder.named("x").with("aircraft.json", bytes)));
    }

    static void table(String name, byte[] bytes) {
        check(AircraftReader.read(MemoryFolder.named("x").with(name, bytes)));
    }

    static void edits(String text) {
        EditReader.Result read = EditReader.read("e", text);
        ReadResult none = AircraftReader.read(MemoryFolder.named("x").with("aircraft.json", "{}"));
        Edits.apply(none.aircraft(), read.edits());
    }

    private static void check(ReadResult result) {
        List<String> words = result.problems().stream().map(p -> p.words()).toList();
        for (String line : words) {
            if (line.indexOf('\n') >= 0 || line.length() > 2000) {
                throw new AssertionError("a problem that is not one line: " + line);
            }
        }
        if (result.aircraft().name().isEmpty() && result.ok()) {
            throw new AssertionError("an aircraft without a name");
        }
    }
}
