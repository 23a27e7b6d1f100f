package ringout.random;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.SortedSet;
import java.util.TreeSet;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import org.junit.jupiter.api.Test;
import ringout.finding.Finding;
import ringout.finding.Report;
import ringout.model.Aircraft;
import ringout.model.shape.Shape;
import ringout.read.AircraftReader;

/** The order of the rows says nothing: the same findings under the same identities, of the same weight, come out. */
class PermutedRowsTest {
    private static final int SHUFFLES = 20;

    @Property(seed = "20261125", tries = 40, shrinking = ShrinkingMode.OFF)
    void findingsStayTheSame(@ForAll Random random) {
        Craft craft = Craft.of(random.nextLong());
        same(craft.aircraft(), random);
        List<Kind> kinds = Kinds.all();
        for (int i = 0; i < 5; i++) {
            Optional<Fault> fault = kinds.get(random.nextInt(kinds.size())).in(craft);
            fault.ifPresent(one -> same(craft.with(one.edits()), random));
        }
    }

    @Test
    void findingsOfTheReviewSampleStayTheSame() {
        Aircraft sample =
                AircraftReader.read(Path.of("samples", "linewarden-review")).aircraft();
        Random random = new Random(20261125);
        for (int i = 0; i < SHUFFLES; i++) {
            same(sample, random);
        }
    }

    private static void same(Aircraft aircraft, Random random) {
        assertEquals(told(Told.review(aircraft)), told(Told.review(shuffled(aircraft, random))));
    }

    private static Aircraft shuffled(Aircraft aircraft, Random random) {
        Shape<Aircraft> shape = Shape.of(Aircraft.class);
        Aircraft now = aircraft;
        for (String list : List.of("types", "units", "leads", "joints")) {
            List<?> rows =
                    new ArrayList<>((List<?>) shape.slot(list).orElseThrow().get(aircraft));
            Collections.shuffle(rows, random);
            now = shape.with(now, list, List.copyOf(rows));
        }
        return now;
    }

    private static SortedSet<String> told(Report report) {
        TreeSet<String> lines = new TreeSet<>();
        report.headlines().forEach(headline -> {
            lines.add("head " + line(headline.finding()));
            headline.alsoExplains()
                    .forEach(finding -> lines.add(headline.finding().id() + " explains " + line(finding)));
        });
        report.cannotTell().forEach(open -> lines.add("open " + open.code() + " " + new TreeSet<>(open.objects())));
        return lines;
    }

    private static String line(Finding finding) {
        return finding.severity() + " " + finding.id() + " " + new TreeSet<>(finding.objects());
    }
}
