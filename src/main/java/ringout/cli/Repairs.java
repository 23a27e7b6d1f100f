package ringout.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ringout.model.Aircraft;
import ringout.model.edit.Edits;
import ringout.present.csv.AircraftTables;
import ringout.present.json.AircraftJson;
import ringout.present.lines.LineChange;
import ringout.present.lines.RepairChange;
import ringout.read.ReadResult;
import ringout.repair.Mending;
import ringout.repair.Repair;
import ringout.text.Problem;

/** Repairs brought into the user's own files. */
final class Repairs {
    private final ReadResult read;
    private final Path from;
    private final Mending mending;

    Repairs(ReadResult read, Path from, Mending mending) {
        this.read = read;
        this.from = from;
        this.mending = mending;
    }

    Mending mending() {
        return mending;
    }

    /** Writes the mended list; what is wrong when it cannot be written. */
    Optional<List<Problem>> write(Path to) {
        Conversion.Outcome outcome =
                Conversion.write(read, mending.mended(), from, to, new Conversion.Options(false, false));
        return outcome instanceof Conversion.Outcome.Refused refused
                ? Optional.of(refused.problems())
                : Optional.empty();
    }

    /** Lines that differ between the list and the mended one: of the user's own files where these can be changed in place. */
    List<LineChange> difference() {
        return inPlace(mending.mended())
                .orElseGet(() -> LineChange.between(whole(read.aircraft()), whole(mending.mended())));
    }

    private Map<String, String> whole(Aircraft aircraft) {
        return Files.isDirectory(from)
                ? AircraftTables.of(aircraft)
                : Map.of(String.valueOf(from.getFileName()), AircraftJson.of(aircraft));
    }

    /** Each repair with the lines it changes alone. */
    List<RepairChange> changes() {
        return mending.repairs().stream().map(this::change).toList();
    }

    private RepairChange change(Repair repair) {
        Aircraft alone = Edits.apply(read.aircraft(), repair.edits()).aircraft();
        return new RepairChange(repair, inPlace(alone).orElse(List.of()));
    }

    private Optional<List<LineChange>> inPlace(Aircraft mended) {
        try {
            return Files.isDirectory(from)
                    ? MendedList.of(from, read.aircraft(), mended).map(texts -> LineChange.between(ownTexts(), texts))
                    : Optional.empty();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private Map<String, String> ownTexts() {
        try {
            return MendedList.texts(from);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
