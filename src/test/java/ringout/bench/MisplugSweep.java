package ringout.bench;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import ringout.check.Catalogue;
import ringout.check.Review;
import ringout.check.form.Check;
import ringout.graph.Circuit;
import ringout.graph.Wiring;
import ringout.model.Aircraft;
import ringout.read.AircraftReader;

/**
 * What it costs to try every wrong way to plug: processor time of a review with all checks, and of one without those that try
 * changes, medians of the same run, taken in turn. Arguments: folders of aircraft; the two samples when none is given.
 */
public final class MisplugSweep {
    private static final int WARM = 60;
    private static final int COUNTED = 60;

    private MisplugSweep() {}

    /** Measures; see the class. */
    public static void main(String[] arguments) throws Exception {
        List<String> folders =
                arguments.length == 0 ? List.of("samples/linewarden", "samples/dewmaker") : List.of(arguments);
        for (String folder : folders) {
            Aircraft aircraft = AircraftReader.read(Path.of(folder)).aircraft();
            Rounds rounds = new Rounds(true);
            for (int i = 0; i < WARM + COUNTED; i++) {
                if (i == WARM) {
                    rounds.forget();
                }
                rounds.time("with", () -> review(aircraft, Catalogue.all()));
                rounds.time("without", () -> review(aircraft, Catalogue.looking()));
            }
            print(String.format(
                    Locale.ROOT,
                    "%s: %d conductors, %.1f ms without the sweep, %.1f ms with it, ratio %.1f",
                    folder,
                    Wiring.of(aircraft).wires().size(),
                    rounds.median("without"),
                    rounds.median("with"),
                    rounds.median("with") / rounds.median("without")));
        }
    }

    private static int review(Aircraft aircraft, List<Check> checks) {
        return Review.of(Circuit.all(Wiring.of(aircraft)), checks, Review.NO_DAY)
                .headlines()
                .size();
    }

    @SuppressWarnings("SystemOut") // a command of its own
    private static void print(String line) {
        System.out.println(line);
    }
}
