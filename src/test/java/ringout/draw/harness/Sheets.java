package ringout.draw.harness;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import ringout.check.Catalogue;
import ringout.check.Review;
import ringout.draw.SvgPage;
import ringout.draw.ink.StyledSheet;
import ringout.finding.Report;
import ringout.graph.Circuit;
import ringout.graph.Wiring;
import ringout.present.svg.SvgOutcome;
import ringout.read.AircraftReader;

/** The samples and their reports, reviewed once for all tests of sheets. */
final class Sheets {
    private static final Map<String, Reviewed> KNOWN = new HashMap<>();

    private Sheets() {}

    /** A sample in the first of its states, and what is found of it in all. */
    record Reviewed(Circuit circuit, Report report) {}

    static synchronized Reviewed sample(String name) {
        return KNOWN.computeIfAbsent(name, key -> {
            List<Circuit> circuits = Circuit.all(
                    Wiring.of(AircraftReader.read(Path.of("samples", key)).aircraft()));
            return new Reviewed(circuits.get(0), Review.of(circuits, Catalogue.all(), Review.NO_DAY));
        });
    }

    /** The text of a sheet that the verifier passes. */
    static String verified(StyledSheet sheet) {
        SvgOutcome outcome = SvgOutcome.of(sheet);
        assertTrue(outcome instanceof SvgOutcome.Verified, outcome.toString());
        return ((SvgOutcome.Verified) outcome).text();
    }

    static SvgPage page(StyledSheet sheet) {
        return SvgPage.of(verified(sheet));
    }
}
