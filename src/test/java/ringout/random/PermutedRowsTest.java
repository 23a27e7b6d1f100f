package ringout.random;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import org.junit.jupiter.api.Test;
import ringout.finding.Finding;
import ringout.finding.Report;
import ringout.model.Aircraft;
import ringout.model.Datum;
import ringout.model.Lead;
import ringout.model.PinMap;
import ringout.model.Plug;
import ringout.model.UnitType;
import ringout.model.shape.Shape;
import ringout.present.text.TextReport;
import ringout.read.AircraftReader;

/**
 * The order of the rows says nothing, nor does that of the contacts of a plug or of the conductors of a lead: the same findings
 * come out, of the same weight, in the same states. When only rows move, they also read the same.
 */
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
        Report as = Told.review(aircraft);
        Aircraft rows = rows(aircraft, random);
        assertEquals(told(as, true), told(Told.review(rows), true));
        assertEquals(told(as, false), told(Told.review(inside(rows, random)), false));
    }

    private static Aircraft rows(Aircraft aircraft, Random random) {
        Shape<Aircraft> shape = Shape.of(Aircraft.class);
        Aircraft now = aircraft;
        for (String list : List.of("types", "units", "leads", "joints")) {
            now = shape.with(now, list, mixed(now, list, random));
        }
        return now;
    }

    private static Aircraft inside(Aircraft aircraft, Random random) {
        Shape<Aircraft> shape = Shape.of(Aircraft.class);
        Shape<UnitType> types = Shape.of(UnitType.class);
        List<UnitType> mixed = aircraft.types().stream()
                .map(type -> types.with(
                        type,
                        "plugs",
                        type.plugs().stream().map(plug -> pins(plug, random)).toList()))
                .toList();
        List<Lead> leads =
                aircraft.leads().stream().map(lead -> conductors(lead, random)).toList();
        return shape.with(shape.with(aircraft, "types", mixed), "leads", leads);
    }

    /** The contacts of a plug in another order; they keep their numbers. */
    private static Plug pins(Plug plug, Random random) {
        return Shape.of(Plug.class).with(plug, "pins", mixed(plug, "pins", random));
    }

    /** The conductors of a lead in another order. */
    private static Lead conductors(Lead lead, Random random) {
        Shape<Lead> shape = Shape.of(Lead.class);
        Lead now = shape.with(lead, "conductors", mixed(lead, "conductors", random));
        return lead.pins()
                .known()
                .map(map -> {
                    List<PinMap.Pair> pairs = new ArrayList<>(map.pairs());
                    Collections.shuffle(pairs, random);
                    return shape.with(now, "pins", Datum.of(new PinMap(List.copyOf(pairs))));
                })
                .orElse(now);
    }

    @SuppressWarnings("unchecked")
    private static <R> List<?> mixed(R record, String list, Random random) {
        Shape<R> shape = Shape.of((Class<R>) record.getClass());
        List<?> rows = new ArrayList<>((List<?>) shape.slot(list).orElseThrow().get(record));
        Collections.shuffle(rows, random);
        return List.copyOf(rows);
    }

    private static String told(Report report, boolean inFull) {
        TreeSet<String> lines = new TreeSet<>();
        report.headlines().forEach(headline -> {
            lines.add("head " + text(headline.finding(), report, inFull));
            headline.alsoExplains()
                    .forEach(finding ->
                            lines.add(headline.finding().id() + " explains " + text(finding, report, inFull)));
        });
        report.cannotTell().forEach(open -> lines.add("open " + words(TextReport.of(open))));
        return String.join("\n", lines);
    }

    /**
     * What is said of a finding. Names in a list stand in the order of the rows, and where the rows stand may differ. What is
     * found of several units, or of several contacts, shows the first of them: there the example may be another.
     */
    private static String text(Finding finding, Report report, boolean inFull) {
        String common = finding.severity() + " " + finding.id() + " " + new TreeSet<>(finding.objects())
                + finding.states() + new TreeSet<>(finding.explains());
        return !inFull || finding.objects().size() > 1
                ? common
                : common + "\n" + words(TextReport.of(finding, report.states()));
    }

    private static String words(String text) {
        return text.replaceAll("line \\d+, column \\d+", "row")
                .lines()
                .map(line -> String.join(
                        " ", Stream.of(line.split("[ ,;:()|=]+")).sorted().toList()))
                .sorted()
                .collect(Collectors.joining("\n"));
    }
}
